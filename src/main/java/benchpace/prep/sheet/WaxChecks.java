package benchpace.prep.sheet;

import benchpace.plan.BrimFill;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.Vessel;
import benchpace.plan.kit.Loads;
import benchpace.prep.Caution;
import benchpace.prep.PrepProblem;
import benchpace.prep.Whole;
import benchpace.prep.wax.AllowedLoad;
import benchpace.prep.wax.CandleLine;
import benchpace.prep.wax.Load;
import java.util.ArrayList;
import java.util.List;

/** What is wrong, or to be minded, with what is poured. */
final class WaxChecks {
    private WaxChecks() { }

    static List<PrepProblem> problems(Plan plan, List<CandleLine> candles) {
        List<PrepProblem> problems = new ArrayList<>();
        if (candles.isEmpty()) {
            problems.add(new PrepProblem.NoCandle());
        }
        candles.stream().filter(line -> line.load() == Load.OVER).forEach(line -> problems.add(
                new PrepProblem.LoadOver(line.candle().id(), line.candle().name(), line.candle().fragranceFraction(),
                        line.allowedFraction().getAsDouble())));
        if (candles.stream().anyMatch(CandleLine::scented)) {
            AllowedLoad.of(plan.kit().loads()).wanting()
                    .forEach(figure -> problems.add(new PrepProblem.Wanting(figure, "", "")));
        }
        return problems;
    }

    static List<Caution> cautions(Plan plan, List<CandleLine> candles) {
        List<Caution> cautions = new ArrayList<>();
        Loads loads = plan.kit().loads();
        for (CandleLine line : candles) {
            Candle candle = line.candle();
            loads.flashPointCelsius().ifPresent(flash -> {
                if (line.scented() && candle.pourCelsius() >= flash) {
                    cautions.add(new Caution.AtFlashPoint(candle.id(), candle.name(), candle.pourCelsius(), flash));
                }
            });
            double brim = brimGrams(candle);
            if (Whole.over(candle.fillGrams(), brim)) {
                cautions.add(new Caution.OverTheBrim(candle.id(), candle.name(), candle.fillGrams(), brim));
            }
        }
        return cautions;
    }

    /** What the vessel holds to the brim at the wax's one density, grams: as told, or by its measures. */
    private static double brimGrams(Candle candle) {
        return candle.brim().map(brim -> new BrimFill(brim.brimMillilitres(), 1).grams(candle.wax()))
                .orElseGet(() -> cylinder(candle.vessel()) * candle.wax().densityKgM3() * 1000);
    }

    /** Its volume in cubic metres. */
    private static double cylinder(Vessel vessel) {
        double radius = vessel.innerDiameterMillimetres() / 2000;
        return Math.PI * radius * radius * vessel.brimHeightMillimetres() / 1000;
    }
}

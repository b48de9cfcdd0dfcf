package benchpace.prep.evening;

import benchpace.pace.belief.PacePriors;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Makes the setting that a change leads to. */
final class Changes {
    private Changes() { }

    static Setting made(Change change, Setting setting) {
        Plan plan = setting.plan();
        if (change instanceof Change.FewerSeats c) {
            return setting.withSeats(setting.seats() - c.fewer());
        } else if (change instanceof Change.MoreHelp c) {
            return setting.withBeliefs(helped(setting.beliefs(), c.seenThenMinutes()));
        } else if (change instanceof Change.MoreStations c) {
            return setting.withPlan(withStep(plan, c.step(), s -> withStations(s, c.then())));
        } else if (change instanceof Change.Led c) {
            return setting.withPlan(withStep(plan, c.step(), s -> withOpening(s, Opening.LED)));
        } else if (change instanceof Change.Free c) {
            return setting.withPlan(withStep(plan, c.step(), s -> withOpening(s, Opening.FREE)));
        } else if (change instanceof Change.Beforehand c) {
            List<Step> left = plan.steps().stream().filter(s -> !s.id().equals(c.step())).toList();
            return setting.withPlan(withSteps(plan, left));
        } else if (change instanceof Change.OtherCandle c) {
            return setting.withCandles(Collections.nCopies(setting.seats(), c.candle()));
        } else if (change instanceof Change.SmallerVessels c) {
            return setting.withPlan(withCandles(plan, candle -> smaller(candle, c.fillShare()).orElse(candle)));
        } else if (change instanceof Change.CoolerPour c) {
            return setting.withPlan(withCandles(plan, candle -> cooler(candle, c.kelvin()).orElse(candle)));
        } else if (change instanceof Change.Longer c) {
            return setting.withPromisedMinutes(setting.promisedMinutes() + c.minutes());
        }
        throw new IllegalStateException("a change of no known kind: " + change);
    }

    private static Beliefs helped(Beliefs beliefs, double seenMinutes) {
        PacePriors.Stalls stalls = beliefs.pace().stalls();
        return new Beliefs(beliefs.pace().withStalls(new PacePriors.Stalls(stalls.odds(), stalls.lengths(),
                seenMinutes, stalls.claimOdds())), beliefs.room());
    }

    private static Plan withStep(Plan plan, StepId id, UnaryOperator<Step> with) {
        return withSteps(plan, plan.steps().stream().map(s -> s.id().equals(id) ? with.apply(s) : s).toList());
    }

    private static Plan withSteps(Plan p, List<Step> steps) {
        return new Plan(p.id(), p.name(), p.about(), p.place(), p.usualSeats(), p.table(), steps, p.activities(),
                p.candles(), p.kit());
    }

    private static Plan withCandles(Plan p, UnaryOperator<Candle> with) {
        return new Plan(p.id(), p.name(), p.about(), p.place(), p.usualSeats(), p.table(), p.steps(), p.activities(),
                p.candles().stream().map(with).toList(), p.kit());
    }

    private static Step withOpening(Step s, Opening opening) {
        return new Step(s.id(), s.name(), s.kind(), opening, s.planned(), s.allowance(), s.say(), s.caution(),
                s.wall(), s.stations());
    }

    private static Step withStations(Step s, int atOnce) {
        Stations served = s.stations().orElseThrow();
        return new Step(s.id(), s.name(), s.kind(), s.opening(), s.planned(), s.allowance(), s.say(), s.caution(),
                s.wall(), Optional.of(new Stations(atOnce, served.what(), served.each())));
    }

    /** The same shape with less in it, all lengths by the cube root; empty if no candle is so small. */
    static Optional<Candle> smaller(Candle c, double share) {
        if (c.fillGrams() * share < Candle.LEAST_FILL) {
            return Optional.empty();
        }
        return c.vessel().scaled(Math.cbrt(share)).map(vessel -> new Candle(c.id(), c.name(), vessel, c.wax(),
                c.fillGrams() * share, c.fragranceFraction(), c.roomCelsius(), c.pourCelsius(), c.tableTop()));
    }

    /** The same poured cooler; empty if its wax were not all liquid then. */
    static Optional<Candle> cooler(Candle c, double kelvin) {
        double pour = c.pourCelsius() - kelvin;
        return pour < Math.max(c.wax().liquidusCelsius(), Candle.COLDEST_POUR) ? Optional.empty()
                : Optional.of(new Candle(c.id(), c.name(), c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(),
                        c.roomCelsius(), pour, c.tableTop()));
    }

    /** Whether a step may be changed from led to free: no talk, no pour, and nothing that could hurt. */
    static boolean mayBeFree(Plan plan, Step step) {
        return step.led() && step.kind() != StepKind.TALK && step.kind() != StepKind.POUR && step.caution().isEmpty()
                && plan.indexOf(step.id()) > 0;
    }

    /** Whether a step may be changed from free to led. */
    static boolean mayBeLed(Plan plan, Step step) {
        return !step.led() && step.kind() == StepKind.HANDS_ON && plan.indexOf(step.id()) > 0;
    }
}

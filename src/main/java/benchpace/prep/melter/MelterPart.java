package benchpace.prep.melter;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Melter;
import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.PrepProblem;
import benchpace.prep.Whole;
import benchpace.prep.wax.WaxTotals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Collectors;

/** The melters of a plan, worked out for the wax that a class takes. */
public record MelterPart(List<MelterLine> lines, List<PrepProblem> problems, List<Caution> cautions) {
    public MelterPart {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
        cautions = List.copyOf(cautions);
    }

    public static MelterPart of(Plan plan, WaxTotals totals) {
        List<PrepProblem> problems = new ArrayList<>();
        List<MelterLine> lines = plan.kit().melters().stream()
                .map(melter -> line(melter, plan, totals, problems)).toList();
        return new MelterPart(lines, problems, cautions(lines));
    }

    private static MelterLine line(Melter melter, Plan plan, WaxTotals totals, List<PrepProblem> problems) {
        List<Candle> candles = plan.candles().stream().filter(c -> c.wax().id().equals(melter.wax())).toList();
        if (candles.isEmpty()) {
            problems.add(new PrepProblem.NoCandleOfWax(melter.id(), melter.name(), melter.wax()));
            return new MelterLine(melter, 0, Optional.empty(), OptionalDouble.empty(), OptionalLong.empty(),
                    OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                    List.of());
        }
        WaxTotals.OfWax wax = totals.waxes().stream().filter(w -> w.wax().equals(melter.wax())).findFirst()
                .orElse(new WaxTotals.OfWax(melter.wax(), "", 0, 0, 0));
        double needed = wax.waxGrams()
                + (melter.scentedIn() == Melter.ScentedIn.MELTER ? wax.fragranceGrams() : 0);
        Optional<Melting> melting = melting(melter, candles, plan.kit(), problems);
        wanting(melter, problems);
        OptionalLong fills = OptionalLong.empty();
        OptionalDouble first = OptionalDouble.empty();
        OptionalDouble heat = OptionalDouble.empty();
        OptionalDouble minutes = OptionalDouble.empty();
        OptionalDouble switchOn = OptionalDouble.empty();
        List<Refill> refills = List.of();
        if (melter.capacityGrams().isPresent()) {
            double drawn = melter.capacityGrams().getAsDouble() - melter.heelGrams();
            fills = OptionalLong.of(Whole.up(needed / drawn));
            first = OptionalDouble.of(Math.min(melter.capacityGrams().getAsDouble(), needed + melter.heelGrams()));
            if (melting.isPresent()) {
                heat = OptionalDouble.of(melting.get().kilojoules(first.getAsDouble()));
                refills = refills(melter, melting.get(), needed, fills.getAsLong(), wax.seats());
            }
        }
        if (heat.isPresent() && melter.watts().isPresent() && melter.efficiency().isPresent()) {
            minutes = OptionalDouble.of(melting.get().minutes(first.getAsDouble(), melter.watts().getAsDouble(),
                    melter.efficiency().getAsDouble()));
            switchOn = OptionalDouble.of(minutes.getAsDouble() + plan.kit().readyMarginMinutes());
        }
        return new MelterLine(melter, wax.seats(), melting, OptionalDouble.of(needed), fills, first, heat, minutes,
                switchOn, refills);
    }

    private static void wanting(Melter melter, List<PrepProblem> problems) {
        if (melter.capacityGrams().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.MELTER_CAPACITY, melter.id(), melter.name()));
        }
        if (melter.watts().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.MELTER_WATTS, melter.id(), melter.name()));
        }
        if (melter.efficiency().isEmpty()) {
            problems.add(new PrepProblem.Wanting(Figure.MELTER_EFFICIENCY, melter.id(), melter.name()));
        }
    }

    /** From the coldest room that these candles are planned for, if the plan does not say its own. */
    private static Optional<Melting> melting(Melter melter, List<Candle> candles, Kit kit,
                                             List<PrepProblem> problems) {
        WaxHeat wax = WaxHeat.of(candles.get(0).wax());
        double pour = candles.stream().mapToDouble(Candle::pourCelsius).max().orElseThrow();
        double room = kit.roomCelsius().orElse(candles.stream().mapToDouble(Candle::roomCelsius).min().orElseThrow());
        if (candles.stream().anyMatch(c -> !WaxHeat.of(c.wax()).equals(wax))) {
            problems.add(new PrepProblem.WaxSaidTwoWays(melter.id(), melter.name(), melter.wax()));
            return Optional.empty();
        }
        if (pour < wax.liquidus()) {
            problems.add(new PrepProblem.NotMolten(melter.id(), melter.name(), pour, wax.liquidus()));
            return Optional.empty();
        }
        if (room > wax.solidus()) {
            problems.add(new PrepProblem.NotSolid(melter.id(), melter.name(), room, wax.solidus()));
            return Optional.empty();
        }
        return Optional.of(new Melting(wax, room, pour));
    }

    private static List<Refill> refills(Melter melter, Melting melting, double needed, long fills, int seats) {
        double drawn = melter.capacityGrams().getAsDouble() - melter.heelGrams();
        List<Refill> refills = new ArrayList<>();
        for (int fill = 2; fill <= Math.min(fills, MelterLine.MOST_REFILLS + 1); fill++) {
            double before = (fill - 1) * drawn;
            TopUp topUp = melting.topUp(melter.heelGrams(), Math.min(drawn, needed - before));
            OptionalDouble minutes = melter.watts().isPresent() && melter.efficiency().isPresent()
                    ? OptionalDouble.of(topUp.minutes(melter.watts().getAsDouble(),
                            melter.efficiency().getAsDouble()))
                    : OptionalDouble.empty();
            refills.add(new Refill(fill, (int) Whole.down(before * seats / needed), topUp, minutes));
        }
        return refills;
    }

    private static List<Caution> cautions(List<MelterLine> lines) {
        List<Caution> cautions = new ArrayList<>();
        lines.stream().filter(line -> line.fills().orElse(0) > 1).forEach(line -> cautions.add(
                new Caution.PouringStops(line.melter().id(), line.melter().name(), line.fills().getAsLong())));
        Map<String, List<Melter>> byWax = lines.stream().filter(MelterLine::used).map(MelterLine::melter)
                .collect(Collectors.groupingBy(Melter::wax));
        byWax.entrySet().stream().filter(e -> e.getValue().size() > 1)
                .sorted(Comparator.comparing(Map.Entry::getKey))
                .forEach(e -> cautions.add(new Caution.OneWaxInSeveral(e.getKey(),
                        e.getValue().stream().map(Melter::name).toList())));
        return cautions;
    }
}

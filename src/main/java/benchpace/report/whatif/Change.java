package benchpace.report.whatif;

import benchpace.plan.Plan;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One thing that might have been otherwise in a class, with what the class shows of it. Steps by their index. */
public sealed interface Change {

    /** What it is called in an address, one of its class's: letters, digits and hyphens. @param plan the class's */
    default String key(Plan plan) {
        if (this instanceof Free c) {
            return "free-" + id(plan, c.step());
        } else if (this instanceof Led c) {
            return "led-" + id(plan, c.step());
        } else if (this instanceof Beforehand c) {
            return "beforehand-" + id(plan, c.step());
        } else if (this instanceof MoreStations c) {
            return "station-" + id(plan, c.step());
        } else if (this instanceof Earlier c) {
            return "earlier-" + id(plan, c.step());
        }
        return this instanceof MoreHelp ? "helper" : "smaller";
    }

    /** The steps that it makes otherwise, moved ones by half a minute or more; none if it speaks of no step. */
    default Set<Integer> steps() {
        if (this instanceof Free c) {
            return Set.of(c.step());
        } else if (this instanceof Led c) {
            return Set.of(c.step());
        } else if (this instanceof Beforehand c) {
            return Set.of(c.step());
        } else if (this instanceof MoreStations c) {
            return Set.of(c.step());
        } else if (this instanceof Earlier c) {
            return Stream.concat(Stream.of(c.step()), Stream.of(c.talks(), c.openings())
                            .flatMap(moved -> moved.entrySet().stream()).filter(e -> e.getValue() >= 0.5)
                            .map(Map.Entry::getKey)).collect(Collectors.toUnmodifiableSet());
        }
        return Set.of();
    }

    private static String id(Plan plan, int step) {
        return plan.steps().get(step).id().value();
    }

    /** A helper more, who goes to whoever is flagged. @param flags how many flags there were */
    record MoreHelp(int flags) implements Change { }

    /** A led step is free. @param waitedMinutes for its opening, the seat in the middle of the table */
    record Free(int step, double waitedMinutes) implements Change { }

    /** A free step is led. */
    record Led(int step) implements Change { }

    /**
     * A step is done before the guests come.
     *
     * @param medianMinutes what it took, the seat in the middle
     * @param mostMinutes   what it took the slowest
     * @param seats         for how many seats it has to be done
     */
    record Beforehand(int step, double medianMinutes, double mostMinutes, int seats) implements Change { }

    /**
     * Every vessel keeps its shape and holds less.
     *
     * @param fillShare   of what it held, 0 to 1
     * @param cureMinutes what the last candle took from its pour
     */
    record SmallerVessels(double fillShare, double cureMinutes) implements Change { }

    /**
     * One station more at a step.
     *
     * @param then          how many seats it serves at once then
     * @param waitedMinutes the longest wait for a turn
     */
    record MoreStations(int step, int then, double waitedMinutes) implements Change { }

    /**
     * A step begins earlier, as talks before it are shorter and it or the steps before it are opened sooner.
     *
     * @param minutes       how much earlier, in whole minutes
     * @param medianMinutes what the step took, the seat in the middle
     * @param talks         how much shorter each talk is, minutes, by its index
     * @param openings      how much sooner each led step is opened after all were ready for it, minutes, by its index
     */
    record Earlier(int step, double minutes, double medianMinutes, Map<Integer, Double> talks,
                   Map<Integer, Double> openings) implements Change {
        public Earlier {
            talks = Collections.unmodifiableMap(new TreeMap<>(talks));
            openings = Collections.unmodifiableMap(new TreeMap<>(openings));
        }
    }
}

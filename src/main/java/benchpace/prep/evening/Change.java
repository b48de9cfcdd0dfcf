package benchpace.prep.evening;

import benchpace.plan.StepId;

/** A way in which an evening could be planned otherwise, with what is assumed of it. */
public sealed interface Change {
    /** Fewer seats; the last ones go. */
    record FewerSeats(int fewer) implements Change { }

    /**
     * One more helper, who sees stuck seats sooner; steps take as long, and steps are opened as before.
     *
     * @param seenMinutes      how long a stuck seat waits on average, after its first two minutes, until somebody comes
     *                         by chance
     * @param seenThenMinutes  the same with the helper: half of it, as if one person had gone round alone so far
     */
    record MoreHelp(double seenMinutes, double seenThenMinutes) implements Change { }

    /** One station more at a step, as quick as the others. @param then how many seats it serves at once then */
    record MoreStations(StepId step, int then) implements Change { }

    /** A free step is opened by the instructor, once most of the table is through with the one before. */
    record Led(StepId step) implements Change { }

    /** A led step is free: who has finished the step before goes on. */
    record Free(StepId step) implements Change { }

    /** A step is done before the guests come. */
    record Beforehand(StepId step) implements Change { }

    /** Every seat makes that candle of the plan's. */
    record OtherCandle(String candle) implements Change { }

    /** Every vessel keeps its shape and holds less. @param fillShare of what it is planned to hold, 0 to 1 */
    record SmallerVessels(double fillShare) implements Change { }

    /** Every candle is poured so much cooler, where its wax is still all liquid. */
    record CoolerPour(double kelvin) implements Change { }

    /** More time is promised. */
    record Longer(double minutes) implements Change { }
}

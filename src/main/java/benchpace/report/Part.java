package benchpace.report;

/**
 * Something that took time in a class and that others waited for.
 *
 * @param kind what it is
 * @param seat whose it is, 0 if the whole class's
 * @param step index of the step it belongs to; of an arrival and of a cure the one it leads up to or follows
 */
public record Part(Kind kind, int seat, int step) {
    /** What takes time. */
    public enum Kind {
        /** From the class's start to a guest's coming. */
        ARRIVAL,
        /** From when all was ready for a led step to the instructor's opening it. */
        OPENING,
        /** A talk's time box. */
        TALK,
        /** A seat's time at a step. */
        STEP,
        /** From a seat's first pour to its last. */
        POURED_AGAIN,
        /** From the pour to the candle's being ready. */
        CURE
    }
}

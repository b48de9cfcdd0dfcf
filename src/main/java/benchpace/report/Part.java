package benchpace.report;

/**
 * Something that took time in a class and that others waited for.
 *
 * @param kind what it is
 * @param seat whose it is, 0 if the whole class's
 * @param step index of the step it belongs to; 0 for an arrival
 * @param stretch which stretch of it, counted from 0: a seat's time at a step is parted where a later step was opened
 */
public record Part(Kind kind, int seat, int step, int stretch) {
    /** What takes time. */
    public enum Kind {
        /** From the class's start to when a seat could begin: a guest came, or began a candle of their own. */
        BEGINNING,
        /** From the class's start to the first opening. */
        START,
        /** From when all was ready for a led step to the instructor's opening it. */
        OPENING,
        /** The same where a talk went before: the talk beyond its time box. */
        OVERTIME,
        /** A talk's time box. */
        TALK,
        /** A seat's time at a step. */
        STEP,
        /** From a seat's first pour to its last. */
        POURED_AGAIN,
        /** From the pour to the candle's being ready. */
        CURE
    }

    Part(Kind kind, int seat, int step) {
        this(kind, seat, step, 0);
    }
}

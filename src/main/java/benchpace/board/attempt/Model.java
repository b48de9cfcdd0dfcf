package benchpace.board.attempt;

/** What of a class is computed. Each is tried by itself: one that fails leaves the others as they are. */
public enum Model {
    /** The plan of the wait. */
    WAIT,
    /** When candles are ready. */
    CURE,
    /** A candle drawn cut open. */
    CUT,
    /** Who needs somebody, and when the class ends. */
    PACE,
    /** The drawing of everybody's pace. */
    LINES,
    /** What a page needs to go on without the board. */
    OFFLINE,
    /** What rests on several of the others; the last of those that every view needs. */
    WORDS,
    /** What held the class. */
    HELD,
    /** What each step took. */
    TOOK,
    /** Who was flagged. */
    FLAGS,
    /** What seats had to do in their wait. */
    IDLE,
    /** What was said of candles as they were poured, against the hand tests. */
    CURES,
    /** Whether flags were right. */
    HINDSIGHT,
    /** What would have saved time. */
    WHAT_IF,
    /** What past classes teach about the steps. */
    LESSON,
    /** Whether a temperature can be true. */
    PLAUSIBILITY;

    /** Asked for with every view; the others only when somebody wants to see them. */
    boolean ofEveryView() {
        return compareTo(WORDS) <= 0;
    }
}

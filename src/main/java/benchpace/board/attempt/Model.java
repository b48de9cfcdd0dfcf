package benchpace.board.attempt;

/** What of a class is computed. Each is tried by itself: one that fails leaves the others as they are. */
public enum Model {
    WAIT("the plan of the wait"),
    CURE("the candles' times"),
    CUT("the drawing of a candle cut open"),
    PACE("everybody's pace"),
    LINES("the pace lines"),
    OFFLINE("what a page needs to go on without the board"),
    /** The words that rest on several of the others; the last of those that every view needs. */
    WORDS("some of what this page says"),
    HELD("what held the class"),
    TOOK("what each step took"),
    FLAGS("who was flagged"),
    LESSON("what past classes teach about the steps"),
    PLAUSIBILITY("whether a temperature can be true");

    private final String what;

    Model(String what) {
        this.what = what;
    }

    /** In the middle of a sentence. */
    String what() {
        return what;
    }

    /** Asked for with every view; the others only when somebody wants to see them. */
    boolean ofEveryView() {
        return compareTo(WORDS) <= 0;
    }
}

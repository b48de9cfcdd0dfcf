package benchpace.pace;

/** What a step asks of a seat, as far as pace is concerned. */
public enum WorkKind {
    /** The instructor speaks; no seat is judged for it. */
    TALK(false),
    /** Each seat does it and is done at its own moment. */
    HANDS_ON(true),
    /** Hands-on, and the candle's cure starts when it is done. */
    POUR(true),
    /** The wait for the candle to set, and what fills it; never holds the pour. */
    WAIT(false),
    /** Hands-on after the wait; never holds the pour. */
    FINISH(false);

    private final boolean worked;

    WorkKind(boolean worked) {
        this.worked = worked;
    }

    /** Whether a seat works at this step at its own speed before its candle is poured. */
    public boolean isWorked() {
        return worked;
    }
}

package benchpace.plan;

/** What sort of thing a step is, and so what the board expects of a seat in it. */
public enum StepKind {
    /** The instructor speaks, within a time box; seats have nothing to tap. */
    TALK,
    /** Each seat does it and is done at its own moment. */
    HANDS_ON,
    /** Hands-on, and the seat's cure clock starts when it is done. */
    POUR,
    /** The wait until the candle is firm enough; activities fill it. */
    CURE,
    /** Hands-on after the cure: trim, label, wrap. */
    FINISH;

    /** What is drawn beside such a step unless its plan says otherwise. */
    public Picture picture() {
        return switch (this) {
            case TALK -> Picture.TALK;
            case HANDS_ON -> Picture.VESSEL;
            case POUR -> Picture.POUR;
            case CURE -> Picture.SETTING;
            case FINISH -> Picture.TRIM;
        };
    }

    /** Whether a seat is done with such a step only when somebody taps it. */
    public boolean needsTap() {
        return this == HANDS_ON || this == POUR || this == FINISH;
    }
}

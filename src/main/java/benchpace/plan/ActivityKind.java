package benchpace.plan;

/** The sorts of activity a candle class fills its wait with. */
public enum ActivityKind {
    LABELS, SHORT_CRAFT, LONG_CRAFT, REFRESHMENTS, BROWSING, CLEAN_UP, WRAPPING;

    /** What is drawn beside such an activity. */
    public Picture picture() {
        return switch (this) {
            case LABELS -> Picture.LABEL;
            case SHORT_CRAFT -> Picture.SHORT_CRAFT;
            case LONG_CRAFT -> Picture.LONG_CRAFT;
            case REFRESHMENTS -> Picture.PAUSE;
            case BROWSING -> Picture.BROWSE;
            case CLEAN_UP -> Picture.TIDY;
            case WRAPPING -> Picture.WRAP;
        };
    }

    /** Whether a seat should do it at most once; refreshments and browsing may be taken up again. */
    public boolean onceOnly() {
        return this != REFRESHMENTS && this != BROWSING;
    }
}

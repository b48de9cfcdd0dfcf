package benchpace.plan;

/** The sorts of activity a candle class fills its wait with. */
public enum ActivityKind {
    LABELS, SHORT_CRAFT, LONG_CRAFT, REFRESHMENTS, BROWSING, CLEAN_UP, WRAPPING;

    /** Whether a seat should do it at most once; refreshments and browsing may be taken up again. */
    public boolean onceOnly() {
        return this != REFRESHMENTS && this != BROWSING;
    }
}

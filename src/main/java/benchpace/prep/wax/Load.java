package benchpace.prep.wax;

/** What can be said of a candle's fragrance against the limits that were typed in. */
public enum Load {
    /** Both limits are known and neither is passed. */
    ALLOWED,
    /** A limit that is known is passed. */
    OVER,
    /** Not both limits are known, and what is known is not passed. */
    UNKNOWN
}

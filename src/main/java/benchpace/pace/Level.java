package benchpace.pace;

/** How loud a seat's pace is. */
public enum Level {
    /** In step, or nothing to say. */
    NONE,
    /** Worth a question: "still on wicks?" */
    SLIPPING,
    /** Holding the class, or about to: somebody should walk over now. */
    BEHIND
}

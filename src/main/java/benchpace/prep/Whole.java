package benchpace.prep;

/**
 * Whole numbers out of computed ones. What was computed in binary may lie a last digit beside the whole number that
 * was meant (10 x 1.1 is 11.000000000000002), and one pack more than needed would be bought for it; so a thousand
 * millionth part counts as nothing.
 */
public final class Whole {
    private static final double NOTHING = 1e-9;

    private Whole() { }

    /** The least whole number that is not less. @param value 0 or more, below a thousand million million */
    public static long up(double value) {
        return (long) Math.ceil(value - NOTHING * Math.max(1, value));
    }

    /** The greatest whole number that is not more. @param value 0 or more, below a thousand million million */
    public static long down(double value) {
        return (long) Math.floor(value + NOTHING * Math.max(1, value));
    }

    /** Whether a value passes a limit by more than its last digits. */
    public static boolean over(double value, double limit) {
        return value > limit + NOTHING * Math.abs(limit);
    }
}

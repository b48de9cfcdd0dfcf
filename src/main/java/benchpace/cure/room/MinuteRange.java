package benchpace.cure.room;

/**
 * When something is expected, minutes from the pour: in ten candles of a hundred before {@code p10}, in half before
 * {@code p50}, in ninety before {@code p90}. Positive infinity means not within 24 hours.
 */
public record MinuteRange(double p10, double p50, double p90) {
    public MinuteRange {
        if (!(p10 >= 0 && p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("not in order: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** Width of the range, minutes; infinite when its end is. */
    public double width() {
        return Double.isInfinite(p90) ? Double.POSITIVE_INFINITY : p90 - p10;
    }
}

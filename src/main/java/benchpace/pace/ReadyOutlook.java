package benchpace.pace;

/**
 * What the cure model says of one candle: when it will be set, if anything is known beyond the plan's cure time.
 *
 * @param medianMinutes the middle estimate, minutes from the class's start; NaN when nothing is known
 * @param sdMinutes       the standard deviation of this candle's own departure from it, minutes
 * @param sharedSdMinutes that of what all candles of the room share, minutes: if one is late by it, so are the others
 */
public record ReadyOutlook(double medianMinutes, double sdMinutes, double sharedSdMinutes) {
    /** Nothing known: the plan's cure time counts, from the pour. */
    public static final ReadyOutlook UNKNOWN = new ReadyOutlook(Double.NaN, 0);

    public ReadyOutlook {
        if (!(sdMinutes >= 0 && sharedSdMinutes >= 0)) {
            throw new IllegalArgumentException("a spread of " + sdMinutes + " and " + sharedSdMinutes + " minutes");
        }
    }

    /** A candle that shares nothing with the others. */
    public ReadyOutlook(double medianMinutes, double sdMinutes) {
        this(medianMinutes, sdMinutes, 0);
    }

    public boolean isKnown() {
        return !Double.isNaN(medianMinutes);
    }
}

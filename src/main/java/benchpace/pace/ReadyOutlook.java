package benchpace.pace;

/**
 * What the cure model says of one candle: when it will be set, if anything is known beyond the plan's cure time.
 *
 * @param medianMinutes the middle estimate, minutes from the class's start; NaN when nothing is known
 * @param sdMinutes its standard deviation, minutes
 */
public record ReadyOutlook(double medianMinutes, double sdMinutes) {
    /** Nothing known: the plan's cure time counts, from the pour. */
    public static final ReadyOutlook UNKNOWN = new ReadyOutlook(Double.NaN, 0);

    public ReadyOutlook {
        if (!(sdMinutes >= 0)) {
            throw new IllegalArgumentException("a spread of " + sdMinutes + " minutes");
        }
    }

    public boolean isKnown() {
        return !Double.isNaN(medianMinutes);
    }
}

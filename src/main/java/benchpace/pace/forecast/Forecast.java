package benchpace.pace.forecast;

/**
 * When the last candle will be ready, minutes from the class's start.
 *
 * @param times the moments it may be, each as likely as the others
 * @param driverSeat the seat most likely to be last, 0 when there is none or several always are at once
 * @param driverPoured whether that seat has poured, so that only its cure is left
 */
public record Forecast(FinishTimes times, int driverSeat, boolean driverPoured) {

    /** Ten in a hundred classes like this are through by then. */
    public double p10() {
        return times.quantile(0.1);
    }

    /** Half of them are. */
    public double p50() {
        return times.quantile(0.5);
    }

    /** Ninety in a hundred are. */
    public double p90() {
        return times.quantile(0.9);
    }
}

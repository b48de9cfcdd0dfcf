package benchpace.pace;

/**
 * When the last candle will be ready, minutes from the class's start.
 *
 * @param p10 ten in a hundred classes like this are through by then
 * @param p50 the middle one
 * @param p90 ninety in a hundred are through by then
 * @param driverSeat the seat most likely to be last, 0 when there is none or several always are at once
 * @param driverPoured whether that seat has poured, so that only its cure is left
 */
public record Forecast(double p10, double p50, double p90, int driverSeat, boolean driverPoured) {
    public Forecast {
        if (!(p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("forecast " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** What drives it, in words for the instructor: "seat 4, then the cure"; empty if it is no single seat. */
    public String driver() {
        if (driverSeat == 0) {
            return "";
        }
        return driverPoured ? "the cure of seat " + driverSeat : "seat " + driverSeat + ", then the cure";
    }
}

package benchpace.report;

/**
 * A candle's wait, minutes from the class's start.
 *
 * @param pouredMinutes when it was poured, the last time if more than once
 * @param readyMinutes when it was judged set, or is likely to be
 */
public record CandleTime(double pouredMinutes, double readyMinutes) {
    public CandleTime {
        if (!(readyMinutes >= pouredMinutes)) {
            throw new IllegalArgumentException("ready at " + readyMinutes + ", poured at " + pouredMinutes);
        }
    }
}

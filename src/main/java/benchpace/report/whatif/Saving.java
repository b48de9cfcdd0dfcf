package benchpace.report.whatif;

import benchpace.pace.forecast.FinishForecast;
import java.util.Arrays;

/**
 * By how much earlier the last candle would have been ready, minutes; negative if later. In 10, 50 and 90 of a hundred
 * ways in which it may have gone it is less.
 *
 * @param sure the share of those ways in which it is a minute or more, 0 to 1
 */
public record Saving(double p10, double p50, double p90, double sure) {
    private static final double A_MINUTE = 1;

    public Saving {
        if (!(p10 <= p50 && p50 <= p90 && sure >= 0 && sure <= 1)) {
            throw new IllegalArgumentException("a saving of " + p10 + ", " + p50 + ", " + p90 + ", sure " + sure);
        }
    }

    /** What can be said of it. */
    public enum Verdict { SAVES, NOTHING, COSTS }

    /** @param minutes one for each way, at least one */
    static Saving of(double[] minutes) {
        double[] sorted = minutes.clone();
        Arrays.sort(sorted);
        double sure = Arrays.stream(sorted).filter(m -> m >= A_MINUTE).count() / (double) sorted.length;
        return new Saving(FinishForecast.at(sorted, 0.1), FinishForecast.at(sorted, 0.5),
                FinishForecast.at(sorted, 0.9), sure);
    }

    /** In whole minutes, as they are said: a range that reaches nought tells nothing. */
    public Verdict verdict() {
        return Math.round(p10) >= A_MINUTE ? Verdict.SAVES : Math.round(p90) <= -A_MINUTE ? Verdict.COSTS
                : Verdict.NOTHING;
    }
}

package benchpace.prep.evening;

import benchpace.pace.forecast.FinishForecast;
import java.util.Arrays;

/**
 * When something happens, minutes from the class's start: of a hundred evenings it has in 10, 50 and 90 by then.
 */
public record Quantiles(double p10, double p50, double p90) {
    public Quantiles {
        if (!(p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("quantiles out of order: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** Those of the values, in any order; at least one. */
    static Quantiles of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Quantiles(FinishForecast.at(sorted, 0.1), FinishForecast.at(sorted, 0.5),
                FinishForecast.at(sorted, 0.9));
    }
}

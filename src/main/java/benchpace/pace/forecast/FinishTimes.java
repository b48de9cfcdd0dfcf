package benchpace.pace.forecast;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * When the last candle may be ready, as equally likely moments in minutes from the class's start: what the forecast's
 * quantiles and odds are read from.
 *
 * @param minutes ascending, at least one
 */
public record FinishTimes(List<Double> minutes) {
    public FinishTimes {
        minutes = List.copyOf(minutes);
        for (int i = 1; i < minutes.size(); i++) {
            if (!(minutes.get(i - 1) <= minutes.get(i))) {
                throw new IllegalArgumentException("moment " + i + " lies before the one before it");
            }
        }
        if (minutes.isEmpty()) {
            throw new IllegalArgumentException("no moment at all");
        }
    }

    /** The same from draws in any order. */
    static FinishTimes of(double[] draws) {
        return new FinishTimes(Arrays.stream(draws).sorted().boxed().toList());
    }

    /** The moment by which {@code p} of all classes like this are through, 0 &lt;= p &lt;= 1. */
    public double quantile(double p) {
        return FinishForecast.at(minutes.stream().mapToDouble(Double::doubleValue).toArray(), p);
    }

    /** P(the last candle is ready later than that moment), 0 to 1. */
    public double laterThan(double moment) {
        int found = Collections.binarySearch(minutes, moment);
        int later = found < 0 ? -found - 1 : found;
        while (later < minutes.size() && minutes.get(later) <= moment) {
            later++;
        }
        return (minutes.size() - later) / (double) minutes.size();
    }
}

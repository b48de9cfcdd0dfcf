package benchpace.history;

import benchpace.report.Medians;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A straight line through points by medians: P. K. Sen, "Estimates of the regression coefficient based on Kendall's
 * tau", J. Amer. Statist. Assoc. 63 (1968) 1379-1389.
 * <pre>
 * slope = median of (y[j] - y[i]) / (x[j] - x[i]) over all pairs with x[i] &lt; x[j]
 * intercept = median of y[i] - slope x[i]
 * </pre>
 */
final class TheilSen {
    private TheilSen() { }

    /** @throws IllegalArgumentException if all x are equal */
    static double slope(double[] x, double[] y) {
        return Medians.of(IntStream.range(0, x.length).boxed().flatMapToDouble(i -> slopesFrom(i, x, y)).toArray());
    }

    private static DoubleStream slopesFrom(int i, double[] x, double[] y) {
        return IntStream.range(0, x.length).filter(j -> x[j] > x[i]).mapToDouble(j -> (y[j] - y[i]) / (x[j] - x[i]));
    }

    static double intercept(double[] x, double[] y, double slope) {
        return Medians.of(IntStream.range(0, x.length).mapToDouble(i -> y[i] - slope * x[i]).toArray());
    }
}

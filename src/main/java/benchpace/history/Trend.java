package benchpace.history;

import java.util.List;

/**
 * Whether a figure goes up or down from class to class, and by how much. It is said to only if Kendall's test
 * ({@link Kendall}) would find as much in fewer than one of a hundred series that go nowhere: several are drawn on a
 * page, and one that is only chance should rarely be among them. How much is the median slope of all pairs of dots: P.
 * K. Sen, "Estimates of the regression coefficient based on Kendall's tau", J. Amer. Statist. Assoc. 63 (1968)
 * 1379-1389, after H. Theil (1950). Neither takes the figures for normal, and a single odd evening moves neither.
 *
 * @param said   what may be said
 * @param first  where the line of that slope stands at the first dot; 0 unless it is said to rise or to fall
 * @param last   the same at the last dot
 */
public record Trend(Said said, double first, double last) {
    /** Fewer dots say nothing, whatever their order. */
    public static final int LEAST_DOTS = 10;
    static final double CHANCE = 0.01;

    /** What may be said. */
    public enum Said {
        TOO_FEW, NONE, RISES, FALLS
    }

    /** @param dots in the order of time */
    static Trend of(List<Dot> dots) {
        if (dots.size() < LEAST_DOTS) {
            return new Trend(Said.TOO_FEW, 0, 0);
        }
        double[] x = dots.stream().mapToDouble(Dot::day).toArray();
        double[] y = dots.stream().mapToDouble(Dot::value).toArray();
        if (Kendall.of(x, y).p() >= CHANCE) {
            return new Trend(Said.NONE, 0, 0);
        }
        double slope = TheilSen.slope(x, y);
        if (slope == 0) { // more than half of all pairs are equal: whatever goes on, it is not told by this
            return new Trend(Said.NONE, 0, 0);
        }
        double intercept = TheilSen.intercept(x, y, slope);
        return new Trend(slope > 0 ? Said.RISES : Said.FALLS, intercept + slope * x[0],
                intercept + slope * x[x.length - 1]);
    }

    /** Whether it rises or falls. */
    public boolean told() {
        return said == Said.RISES || said == Said.FALLS;
    }

    /** From the first dot to the last. */
    public double change() {
        return last - first;
    }
}

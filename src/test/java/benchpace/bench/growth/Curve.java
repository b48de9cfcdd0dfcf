package benchpace.bench.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What something costs, by how much there is of something else.
 *
 * @param cost   what costs
 * @param points from the least to the most, two or more
 */
public record Curve(String cost, List<Point> points) {

    /** @param n how many, 1 or more @param millis what it costs with so many, more than 0 */
    public record Point(double n, double millis) {
        public Point {
            if (n < 1 || millis <= 0) {
                throw new IllegalArgumentException("a point is of one or more, and costs something, not " + n + ", "
                        + millis);
            }
        }

        private double nLogN() {
            return n * Math.log(n + 1);
        }
    }

    public Curve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve has two points or more");
        }
    }

    /**
     * The exponent of the power that the upper half of the points grow with, where what is always there counts least:
     * the slope of the line of least squares through their logarithms.
     */
    public double exponent() {
        return slope(Point::millis);
    }

    /** The same of n log n over the same points: what a curve may have. */
    public double exponentOfNLogN() {
        return slope(Point::nLogN);
    }

    /** How much more the most costs than the least, over how much more it would by n log n; up to 1 is no worse. */
    public double lastOverFirst() {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        return last.millis() / first.millis() / (last.nLogN() / first.nLogN());
    }

    private double slope(ToDoubleFunction<Point> of) {
        List<Point> upper = points.subList(Math.min(points.size() / 2, points.size() - 2), points.size());
        double x = upper.stream().mapToDouble(p -> Math.log(p.n())).average().orElseThrow();
        double y = upper.stream().mapToDouble(p -> Math.log(of.applyAsDouble(p))).average().orElseThrow();
        double along = 0;
        double square = 0;
        for (Point p : upper) {
            double dx = Math.log(p.n()) - x;
            along += dx * (Math.log(of.applyAsDouble(p)) - y);
            square += dx * dx;
        }
        return along / square;
    }

    /** One line of a table under {@link #heading}. */
    public String row() {
        return String.format(Locale.ROOT, "  %-24s%s   %5.2f %9.2f %11.2f", cost, points.stream()
                .map(p -> String.format(Locale.ROOT, "%9.1f", p.millis())).collect(Collectors.joining()), exponent(),
                exponentOfNLogN(), lastOverFirst());
    }

    /** @param of what there is more of @param counts how much of it */
    public static String heading(String of, List<Integer> counts) {
        return String.format(Locale.ROOT, "%-26s%s   %5s %9s %11s", of, counts.stream()
                .map(n -> String.format(Locale.ROOT, "%9d", n)).collect(Collectors.joining()), "power", "(n log n)",
                "last/first");
    }

    /** Curves over the same counts, collected point by point. */
    public static final class Collecting {
        private final List<String> costs;
        private final List<List<Point>> points = new ArrayList<>();

        public Collecting(List<String> costs) {
            this.costs = List.copyOf(costs);
            costs.forEach(cost -> points.add(new ArrayList<>()));
        }

        /** @param millis one for each cost */
        public void add(int n, double... millis) {
            for (int i = 0; i < millis.length; i++) {
                points.get(i).add(new Point(n, Math.max(0.01, millis[i])));
            }
        }

        public List<Curve> curves() {
            List<Curve> curves = new ArrayList<>();
            for (int i = 0; i < costs.size(); i++) {
                curves.add(new Curve(costs.get(i), points.get(i)));
            }
            return curves;
        }
    }
}

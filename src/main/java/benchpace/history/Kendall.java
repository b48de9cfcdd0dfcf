package benchpace.history;

import benchpace.pace.belief.StandardNormal;
import java.util.Arrays;

/**
 * Kendall's test of whether one figure goes up or down with another: M. G. Kendall, "A new measure of rank
 * correlation", Biometrika 30 (1938) 81-93; with ties as in his "Rank Correlation Methods", 4th edition, chapters 3
 * and 4.
 *
 * <p>With S the pairs that go the same way less those that go opposite ways, n the number of points, t the sizes of the
 * groups of equal x and u those of equal y:
 * <pre>
 * var S = (n(n-1)(2n+5) - sum t(t-1)(2t+5) - sum u(u-1)(2u+5)) / 18
 *       + sum t(t-1)(t-2) sum u(u-1)(u-2) / (9n(n-1)(n-2)) + sum t(t-1) sum u(u-1) / (2n(n-1))
 * </pre>
 * Without ties and up to {@value #MOST_EXACT} points the chance is counted among all orders, else S is taken for
 * normal.
 *
 * @param s   S
 * @param tau tau-b, -1 to 1; 0 where it is undefined, as all x or all y are equal
 * @param p   the chance of so large an S, up or down, where neither figure hangs on the other
 */
record Kendall(long s, double tau, double p) {
    /** Beyond, the normal distribution is off by less than anybody sees ({@code KendallTest} tells by how much). */
    static final int MOST_EXACT = 50;

    /** @param x of each point @param y of each point, as many, all finite */
    static Kendall of(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " points cannot have " + y.length + " values");
        }
        int n = x.length;
        long s = 0;
        long untiedX = 0;
        long untiedY = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                int dx = Double.compare(x[j], x[i]);
                int dy = Double.compare(y[j], y[i]);
                s += Integer.signum(dx) * Integer.signum(dy);
                untiedX += dx == 0 ? 0 : 1;
                untiedY += dy == 0 ? 0 : 1;
            }
        }
        if (untiedX == 0 || untiedY == 0) {
            return new Kendall(s, 0, 1);
        }
        double tau = s / Math.sqrt((double) untiedX * untiedY);
        boolean tied = untiedX < pairs(n) || untiedY < pairs(n);
        return new Kendall(s, tau, !tied && n <= MOST_EXACT ? counted(n, s) : normal(x, y, s));
    }

    private static long pairs(long n) {
        return n * (n - 1) / 2;
    }

    /**
     * Of n! orders as many have k inversions as there are ways to write k as a sum of one of 0, one of 0 to 1, ... one
     * of 0 to n - 1; S is the number of pairs less twice the inversions.
     */
    private static double counted(int n, long s) {
        int most = (int) pairs(n);
        double[] chance = {1};
        for (int size = 2; size <= n; size++) {
            double[] next = new double[chance.length + size - 1];
            for (int k = 0; k < chance.length; k++) {
                for (int more = 0; more < size; more++) {
                    next[k + more] += chance[k] / size;
                }
            }
            chance = next;
        }
        double atLeast = 0;
        for (int k = 0; most - 2L * k >= Math.abs(s); k++) {
            atLeast += chance[k];
        }
        return Math.min(1, 2 * atLeast);
    }

    private static double normal(double[] x, double[] y, long s) {
        double n = x.length;
        Ties t = Ties.of(x);
        Ties u = Ties.of(y);
        double variance = (n * (n - 1) * (2 * n + 5) - t.third - u.third) / 18 + t.pairs * u.pairs / (2 * n * (n - 1))
                + (n > 2 ? t.triples * u.triples / (9 * n * (n - 1) * (n - 2)) : 0);
        return variance <= 0 ? 1
                : Math.min(1, 2 * StandardNormal.survival(Math.abs(s) / Math.sqrt(variance)));
    }

    /** Sums over groups of equal values, of sizes t. */
    private record Ties(double pairs, double triples, double third) {
        static Ties of(double[] values) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            double pairs = 0;
            double triples = 0;
            double third = 0;
            for (int from = 0, to; from < sorted.length; from = to) {
                to = from;
                while (to < sorted.length && Double.compare(sorted[to], sorted[from]) == 0) {
                    to++;
                }
                double t = to - from;
                pairs += t * (t - 1);
                triples += t * (t - 1) * (t - 2);
                third += t * (t - 1) * (2 * t + 5);
            }
            return new Ties(pairs, triples, third);
        }
    }
}

package benchpace.report;

import java.util.Arrays;

/** The middle of values. */
public final class Medians {
    private Medians() { }

    /** Half of them are no larger, half no smaller; the mean of the two in the middle. @param values at least one */
    public static double of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("nothing has no middle");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }
}

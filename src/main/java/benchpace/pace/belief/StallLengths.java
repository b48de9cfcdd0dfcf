package benchpace.pace.belief;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * How long a stall lasts if nobody comes: a few lengths with weights, then a Pareto tail. Under a Pareto law the rest
 * still to be expected grows in proportion to what has passed, x / (shape - 1) (Johnson, Kotz &amp; Balakrishnan,
 * <i>Continuous Univariate Distributions</i> 1, 2nd ed., ch. 20): a seat that has been stuck for half an hour is not
 * about to get going by itself, it is a seat nobody has understood.
 */
public final class StallLengths {
    private static final double ROUNDING = 1e-9;

    private final double[] minutes;
    private final double[] weights;
    private final double[] lower;
    private final double[] upper;
    private final double tailWeight;
    private final double tailFromMinutes;
    private final double tailShape;

    /**
     * @param minutes lengths that stand for most stalls, ascending
     * @param weights their probabilities; what they lack to 1 is the tail's
     * @param tailFromMinutes where the tail begins, beyond the last length
     * @param tailShape its exponent, above 1 so that there is a mean
     */
    public StallLengths(List<Double> minutes, List<Double> weights, double tailFromMinutes, double tailShape) {
        if (minutes.isEmpty() || minutes.size() != weights.size()) {
            throw new IllegalArgumentException("each length of stall needs its weight");
        }
        if (!(tailFromMinutes >= minutes.get(minutes.size() - 1) && tailShape > 1)) {
            throw new IllegalArgumentException("a tail from " + tailFromMinutes + " of shape " + tailShape);
        }
        this.minutes = minutes.stream().mapToDouble(Double::doubleValue).toArray();
        this.weights = weights.stream().mapToDouble(Double::doubleValue).toArray();
        this.tailFromMinutes = tailFromMinutes;
        this.tailShape = tailShape;
        this.tailWeight = rest(this.weights);
        this.upper = new double[this.minutes.length];
        this.lower = new double[this.minutes.length];
        for (int j = 0; j < upper.length; j++) {
            upper[j] = upper(j);
            lower[j] = lower(j);
        }
    }

    private static double rest(double[] weights) {
        double rest = 1;
        for (double weight : weights) {
            rest -= weight;
        }
        return rest < ROUNDING ? 0 : rest;
    }

    /** How many lengths stand for most stalls. */
    int count() {
        return minutes.length;
    }

    /** The length that is number j of them, minutes; ascending. */
    double minutes(int j) {
        return minutes[j];
    }

    /** Its probability. */
    double weight(int j) {
        return weights[j];
    }

    /** P(longer than the tail's beginning). */
    double tailWeight() {
        return tailWeight;
    }

    /** P(longer than so many minutes | in the tail). */
    double tailSurvival(double least) {
        return least <= tailFromMinutes ? 1 : Math.pow(tailFromMinutes / least, tailShape);
    }

    /** P(longer than so many minutes), each length standing for all up to half way to its neighbours. */
    double survival(double least) {
        double sum = tailWeight * tailSurvival(least);
        for (int j = 0; j < weights.length; j++) {
            double share = (upper[j] - least) / (upper[j] - lower[j]);
            sum += weights[j] * Math.max(0, Math.min(1, share));
        }
        return sum;
    }

    /** The length of a stall known to be longer than {@code least}, at which {@code u} of such stalls are over. */
    public double lengthBeyond(double least, double u) {
        double wanted = (1 - u) * survival(least);
        double above = tailWeight;
        if (wanted <= above) {
            return Math.max(least, tailFromMinutes * Math.pow(above / wanted, 1 / tailShape));
        }
        for (int j = weights.length - 1; j >= 0; j--) {
            if (wanted <= above + weights[j]) {
                double share = (wanted - above) / weights[j];
                return Math.max(least, upper[j] - share * (upper[j] - lower[j]));
            }
            above += weights[j];
        }
        return Math.max(least, lower[0]);
    }

    /** Mean further length of a stall that has lasted {@code passed} minutes: integral of survival over survival. */
    public double meanBeyond(double passed) {
        double from = Math.max(0, passed);
        if (from >= tailFromMinutes) {
            return from / (tailShape - 1);
        }
        double sum = tailWeight * (tailFromMinutes - from + tailFromMinutes / (tailShape - 1));
        for (int j = 0; j < weights.length; j++) {
            double low = Math.max(from, lower[j]);
            double high = upper[j];
            if (high > from) {
                double width = high - lower[j];
                sum += weights[j] * (Math.max(0, lower[j] - from) + (high - low) * (high - low) / (2 * width));
            }
        }
        return sum / survival(from);
    }

    private double lower(int j) {
        return j == 0 ? minutes[0] - (upper(0) - minutes[0]) : 0.5 * (minutes[j - 1] + minutes[j]);
    }

    private double upper(int j) {
        if (j == minutes.length - 1) {
            return tailFromMinutes > minutes[j] ? tailFromMinutes : minutes[j] + ROUNDING;
        }
        return 0.5 * (minutes[j] + minutes[j + 1]);
    }

    @Override public boolean equals(Object other) {
        return other instanceof StallLengths that && Arrays.equals(minutes, that.minutes)
                && Arrays.equals(weights, that.weights) && tailFromMinutes == that.tailFromMinutes
                && tailShape == that.tailShape;
    }

    @Override public int hashCode() {
        return Objects.hash(Arrays.hashCode(minutes), Arrays.hashCode(weights), tailFromMinutes, tailShape);
    }
}

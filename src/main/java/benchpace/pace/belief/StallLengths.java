package benchpace.pace.belief;

import java.util.List;

/**
 * How long a stall lasts if nobody comes: a few lengths with weights, then a Pareto tail. Under a Pareto law the rest
 * still to be expected grows in proportion to what has passed, x / (shape - 1) (Johnson, Kotz &amp; Balakrishnan,
 * <i>Continuous Univariate Distributions</i> 1, 2nd ed., ch. 20): a seat that has been stuck for half an hour is not
 * about to get going by itself, it is a seat nobody has understood.
 *
 * @param minutes lengths that stand for most stalls, ascending
 * @param weights their probabilities; what they lack to 1 is the tail's
 * @param tailFromMinutes where the tail begins, beyond the last length
 * @param tailShape its exponent, above 1 so that there is a mean
 */
public record StallLengths(List<Double> minutes, List<Double> weights, double tailFromMinutes, double tailShape) {
    private static final double ROUNDING = 1e-9;

    public StallLengths {
        minutes = List.copyOf(minutes);
        weights = List.copyOf(weights);
        if (minutes.isEmpty() || minutes.size() != weights.size()) {
            throw new IllegalArgumentException("each length of stall needs its weight");
        }
        if (!(tailFromMinutes >= minutes.get(minutes.size() - 1) && tailShape > 1)) {
            throw new IllegalArgumentException("a tail from " + tailFromMinutes + " of shape " + tailShape);
        }
    }

    /** P(longer than the tail's beginning). */
    double tailWeight() {
        double rest = 1;
        for (double weight : weights) {
            rest -= weight;
        }
        return rest < ROUNDING ? 0 : rest;
    }

    /** P(longer than so many minutes | in the tail). */
    double tailSurvival(double least) {
        return least <= tailFromMinutes ? 1 : Math.pow(tailFromMinutes / least, tailShape);
    }

    /** P(longer than so many minutes), each length standing for all up to half way to its neighbours. */
    double survival(double least) {
        double tail = tailWeight() * tailSurvival(least);
        double sum = tail;
        for (int j = 0; j < minutes.size(); j++) {
            double share = (upper(j) - least) / (upper(j) - lower(j));
            sum += weights.get(j) * Math.max(0, Math.min(1, share));
        }
        return sum;
    }

    /** The length of a stall known to be longer than {@code least}, at which {@code u} of such stalls are over. */
    public double lengthBeyond(double least, double u) {
        double wanted = (1 - u) * survival(least);
        double above = tailWeight();
        if (wanted <= above) {
            return Math.max(least, tailFromMinutes * Math.pow(above / wanted, 1 / tailShape));
        }
        for (int j = minutes.size() - 1; j >= 0; j--) {
            double weight = weights.get(j);
            if (wanted <= above + weight) {
                double share = (wanted - above) / weight;
                return Math.max(least, upper(j) - share * (upper(j) - lower(j)));
            }
            above += weight;
        }
        return Math.max(least, lower(0));
    }

    /** Mean further length of a stall that has lasted {@code passed} minutes: integral of survival over survival. */
    public double meanBeyond(double passed) {
        double from = Math.max(0, passed);
        if (from >= tailFromMinutes) {
            return from / (tailShape - 1);
        }
        double sum = tailWeight() * (tailFromMinutes - from + tailFromMinutes / (tailShape - 1));
        for (int j = 0; j < minutes.size(); j++) {
            double low = Math.max(from, lower(j));
            double high = upper(j);
            if (high > from) {
                double width = high - lower(j);
                sum += weights.get(j) * (Math.max(0, lower(j) - from) + (high - low) * (high - low) / (2 * width));
            }
        }
        return sum / survival(from);
    }

    private double lower(int j) {
        return j == 0 ? minutes.get(0) - (upper(0) - minutes.get(0))
                : 0.5 * (minutes.get(j - 1) + minutes.get(j));
    }

    private double upper(int j) {
        if (j == minutes.size() - 1) {
            return tailFromMinutes > minutes.get(j) ? tailFromMinutes : minutes.get(j) + ROUNDING;
        }
        return 0.5 * (minutes.get(j) + minutes.get(j + 1));
    }
}

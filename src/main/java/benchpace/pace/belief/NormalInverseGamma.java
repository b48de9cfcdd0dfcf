package benchpace.pace.belief;

/**
 * The conjugate law of a normal sample's mean and variance: variance ~ inverse-gamma({@code shape}, {@code scale}),
 * mean given variance ~ normal({@code mean}, variance / {@code count}).
 *
 * <p>Gelman et al., <i>Bayesian Data Analysis</i>, 3rd ed., section 3.3; Hoff, <i>A First Course in Bayesian
 * Statistical Methods</i>, section 5.3 (there with nu0 = 2 shape and nu0 sigma0^2 = 2 scale).
 *
 * @param mean its centre
 * @param count how many observations the opinion about the mean is worth
 * @param shape half as many as the opinion about the variance is worth
 * @param scale half the sum of squares behind that opinion
 */
public record NormalInverseGamma(double mean, double count, double shape, double scale) {
    public NormalInverseGamma {
        if (!(count > 0 && shape > 0 && scale > 0)) {
            throw new IllegalArgumentException("count, shape and scale must be above 0");
        }
    }

    /** After one more observation of the given weight (1: a whole one). */
    public NormalInverseGamma update(double x, double weight) {
        if (!(weight >= 0)) {
            throw new IllegalArgumentException("a weight of " + weight);
        }
        double newCount = count + weight;
        double gap = x - mean;
        return new NormalInverseGamma(mean + weight * gap / newCount, newCount, shape + weight / 2,
                scale + 0.5 * weight * count * gap * gap / newCount);
    }

    /** Forgets by a factor in (0, 1] towards {@code prior}, so that old classes count less and habits can change. */
    public NormalInverseGamma decayed(double keep, NormalInverseGamma prior) {
        if (!(keep > 0 && keep <= 1)) {
            throw new IllegalArgumentException("keep " + keep);
        }
        double kept = prior.count + keep * (count - prior.count);
        double moved = prior.mean * prior.count + keep * (mean * count - prior.mean * prior.count);
        return new NormalInverseGamma(moved / kept, kept, prior.shape + keep * (shape - prior.shape),
                prior.scale + keep * (scale - prior.scale));
    }

    /** Mean of the variance; needs a shape above 1. */
    public double meanVariance() {
        if (!(shape > 1)) {
            throw new IllegalStateException("no mean variance with shape " + shape);
        }
        return scale / (shape - 1);
    }

    /** Scale of the Student-t law (2 shape degrees of freedom) of the next observation. */
    public double predictiveScale() {
        return Math.sqrt(scale * (count + 1) / (shape * count));
    }

    /** Degrees of freedom of that law. */
    public double predictiveDegrees() {
        return 2 * shape;
    }
}

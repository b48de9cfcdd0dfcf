package benchpace.pace.belief;

import java.util.SplittableRandom;

/**
 * The standard normal law, fast enough to be asked tens of thousands of times an evaluation.
 *
 * <p>Distribution function: Abramowitz &amp; Stegun, <i>Handbook of Mathematical Functions</i> (1964), 26.2.17
 * (absolute error below 7.5e-8). Quantile: the same, 26.2.23 as a start (error below 4.5e-4), sharpened by one Newton
 * step.
 */
public final class StandardNormal {
    private static final double INVERSE_ROOT_TWO_PI = 0.3989422804014327;
    /** Beyond so many standard deviations there is nothing. */
    private static final double FAR = 8;

    /** The middles of 4096 equally likely strata: a draw from them is a draw from the law, to three digits. */
    private static final int STRATA_BITS = 12;
    private static final double[] STRATA = new double[1 << STRATA_BITS];

    static {
        for (int j = 0; j < STRATA.length; j++) {
            STRATA[j] = quantile((j + 0.5) / STRATA.length);
        }
    }

    private StandardNormal() { }

    /** A standard normal draw. */
    public static double draw(SplittableRandom random) {
        return STRATA[random.nextInt() >>> Integer.SIZE - STRATA_BITS];
    }

    public static double density(double z) {
        return INVERSE_ROOT_TWO_PI * Math.exp(-0.5 * z * z);
    }

    /** P(Z &gt; z), never below 0 and never above 1. */
    public static double survival(double z) {
        return cdf(-z);
    }

    /** P(Z &lt;= z). */
    public static double cdf(double z) {
        return Math.abs(z) > FAR ? z > 0 ? 1.0 : 0.0 : cdf(z, density(z));
    }

    /** The same within {@link #FAR} of the middle, where the density is known already. */
    private static double cdf(double z, double density) {
        double x = Math.abs(z);
        double t = 1.0 / (1.0 + 0.2316419 * x);
        double series = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937
                + t * (-1.821255978 + t * 1.330274429))));
        double tail = density * series;
        return z > 0 ? 1.0 - tail : tail;
    }

    /** The z with P(Z &lt;= z) = {@code p}; {@code p} is held within [1e-12, 1 - 1e-12]. */
    public static double quantile(double p) {
        double held = Math.min(1 - 1e-12, Math.max(1e-12, p));
        double tail = Math.min(held, 1 - held);
        double t = Math.sqrt(-2.0 * Math.log(tail));
        double z = t - (2.515517 + t * (0.802853 + t * 0.010328))
                / (1.0 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
        double signed = held < 0.5 ? -z : z;
        double slope = density(signed);
        if (slope < 1e-11) {
            return signed;
        }
        return signed - (cdf(signed, slope) - held) / slope;
    }
}

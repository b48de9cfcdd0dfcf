package benchpace.pace.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The worked example of Hoff, <i>A First Course in Bayesian Statistical Methods</i> (2009), section 5.3: wing lengths
 * of nine midges, prior mean 1.9 worth one observation, prior variance 0.01 worth one. Printed there: posterior mean
 * 1.814 worth 10, variance 0.015 worth 10. (Figures from memory of the book; the data reproduce its printed sample
 * mean 1.804 and variance 0.0169.)
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NormalInverseGammaTest {
    private static final double[] WINGS_MM = {1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08};

    private static NormalInverseGamma midges() {
        NormalInverseGamma law = new NormalInverseGamma(1.9, 1, 0.5, 0.5 * 0.01);
        for (double wing : WINGS_MM) {
            law = law.update(wing, 1);
        }
        return law;
    }

    @Test
    void the_midges_give_the_printed_posterior() {
        NormalInverseGamma law = midges();
        assertThat(law.mean()).isCloseTo(1.814, within(5e-4));
        assertThat(law.count()).isEqualTo(10);
        assertThat(2 * law.shape()).isEqualTo(10);
        assertThat(law.scale() / law.shape()).isCloseTo(0.015, within(5e-4));
    }

    @Test
    void the_order_of_observations_does_not_matter_and_half_weights_add_up() {
        NormalInverseGamma law = new NormalInverseGamma(1.9, 1, 0.5, 0.005);
        for (int j = WINGS_MM.length - 1; j >= 0; j--) {
            law = law.update(WINGS_MM[j], 0.5).update(WINGS_MM[j], 0.5);
        }
        assertThat(law.mean()).isCloseTo(midges().mean(), within(1e-12));
        assertThat(law.scale()).isCloseTo(midges().scale(), within(1e-12));
    }

    /** Student-t table: the 0.975 quantile with 10 degrees of freedom is 2.228. */
    @Test
    void the_next_observation_follows_student_t() {
        NormalInverseGamma law = midges();
        TDistribution t = new TDistribution(law.predictiveDegrees());
        assertThat(t.inverseCumulativeProbability(0.975)).isCloseTo(2.228, within(5e-4));
        double variance = law.predictiveScale() * law.predictiveScale() * t.getNumericalVariance();
        assertThat(variance).isCloseTo(law.meanVariance() * (1 + 1 / law.count()), within(1e-12));
    }

    @Test
    void an_opinion_decays_towards_the_prior_and_stays_when_all_is_kept() {
        NormalInverseGamma prior = new NormalInverseGamma(1.9, 1, 0.5, 0.005);
        assertThat(midges().decayed(1, prior).mean()).isCloseTo(midges().mean(), within(1e-12));
        NormalInverseGamma faded = midges().decayed(0.1, prior);
        assertThat(faded.count()).isCloseTo(1.9, within(1e-12));
        assertThat(faded.mean()).isBetween(midges().mean(), prior.mean());
    }
}

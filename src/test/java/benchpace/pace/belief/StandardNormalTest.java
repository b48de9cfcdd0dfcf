package benchpace.pace.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Against the printed table (Abramowitz &amp; Stegun 1964, table 26.1; also inside the cover of any statistics text)
 * and against Hipparchus.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StandardNormalTest {
    private final NormalDistribution reference = new NormalDistribution();

    @Test
    void printed_values_are_met() {
        assertThat(StandardNormal.cdf(0)).isCloseTo(0.5, within(1e-7));
        assertThat(StandardNormal.cdf(1)).isCloseTo(0.84134, within(5e-6));
        assertThat(StandardNormal.cdf(1.96)).isCloseTo(0.97500, within(5e-6));
        assertThat(StandardNormal.cdf(-2.5)).isCloseTo(0.00621, within(5e-6));
        assertThat(StandardNormal.density(1)).isCloseTo(0.24197, within(5e-6));
        assertThat(StandardNormal.quantile(0.975)).isCloseTo(1.95996, within(1e-5));
        assertThat(StandardNormal.quantile(0.9)).isCloseTo(1.28155, within(1e-5));
    }

    @Test
    void distribution_and_quantile_agree_with_the_reference_library() {
        for (double z = -6; z <= 6; z += 0.037) {
            assertThat(StandardNormal.cdf(z)).isCloseTo(reference.cumulativeProbability(z), within(8e-8));
            assertThat(StandardNormal.cdf(z) + StandardNormal.survival(z)).isCloseTo(1, within(2e-7));
        }
        for (double p = 0.001; p < 1; p += 0.003) {
            assertThat(StandardNormal.quantile(p)).isCloseTo(reference.inverseCumulativeProbability(p), within(3e-5));
        }
    }

    /** The survival of a step's time: median 4 min, log spread 0.33. */
    @Test
    void lognormal_survival_and_quantiles_agree_with_the_reference_library() {
        LogNormalDistribution law = new LogNormalDistribution(Math.log(4), 0.33);
        ClassTempo.Belief belief = new ClassTempo.Belief(Math.log(4), 0.05, 0.33 * 0.33 - 0.05);
        for (double minutes = 0.5; minutes < 20; minutes += 0.5) {
            assertThat(StandardNormal.survival((Math.log(minutes) - belief.meanLog()) / belief.sdLog()))
                    .isCloseTo(1 - law.cumulativeProbability(minutes), within(2e-7));
        }
        assertThat(belief.meanMinutes()).isCloseTo(law.getNumericalMean(), within(1e-9));
        for (double p : new double[] {0.1, 0.5, 0.9}) {
            assertThat(Math.exp(belief.meanLog() + belief.sdLog() * StandardNormal.quantile(p)))
                    .isCloseTo(law.inverseCumulativeProbability(p), within(1e-3));
        }
    }
}

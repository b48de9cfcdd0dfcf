package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.belief.StandardNormal;
import benchpace.pace.forecast.FinishForecast;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * The quantile loss as in Gneiting &amp; Raftery (2007), "Strictly proper scoring rules, prediction, and estimation",
 * <i>Journal of the American Statistical Association</i> 102, 359-378, section 6: proper for the quantile, so its
 * expectation is least at the true one; there, for a standard normal, it is the density at the quantile.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForecastScoresTest {
    private static double expectedLoss(double q, double v) {
        double sum = 0;
        double h = 0.001;
        for (double y = -8; y < 8; y += h) {
            sum += ReplayScore.pinball(q, y, v) * StandardNormal.density(y) * h;
        }
        return sum;
    }

    @Test
    void the_expected_loss_is_least_at_the_true_quantile() {
        for (double q : new double[] {0.1, 0.5, 0.9}) {
            double z = StandardNormal.quantile(q);
            assertThat(expectedLoss(q, z)).isCloseTo(StandardNormal.density(z), within(1e-4));
            assertThat(expectedLoss(q, z + 0.1)).isGreaterThan(expectedLoss(q, z));
            assertThat(expectedLoss(q, z - 0.1)).isGreaterThan(expectedLoss(q, z));
        }
    }

    @Test
    void a_late_finish_costs_the_high_quantile_nine_times_an_early_one() {
        assertThat(ReplayScore.pinball(0.9, 10, 0)).isEqualTo(9);
        assertThat(ReplayScore.pinball(0.9, -10, 0)).isCloseTo(1, within(1e-12));
    }

    /** Hyndman &amp; Fan (1996), type 7: of 1, 2, 3, 4 the quartiles are 1.75, 2.5, 3.25. */
    @Test
    void sample_quantiles_are_of_type_seven() {
        double[] sorted = {1, 2, 3, 4};
        assertThat(FinishForecast.at(sorted, 0.25)).isEqualTo(1.75);
        assertThat(FinishForecast.at(sorted, 0.5)).isEqualTo(2.5);
        assertThat(FinishForecast.at(sorted, 0.75)).isEqualTo(3.25);
    }
}

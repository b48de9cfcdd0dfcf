package benchpace.pace.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * A Pareto law's survival (b / x)^a, its quantile and the mean beyond x, x / (a - 1): Johnson, Kotz &amp; Balakrishnan
 * (1994), <i>Continuous Univariate Distributions</i> 1, 2nd ed., ch. 20.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StallLengthsTest {
    private final StallLengths lengths = PacePriors.standard().stalls().lengths();

    @Test
    void the_tail_is_a_pareto_law() {
        assertThat(lengths.tailWeight()).isCloseTo(0.03, within(1e-12));
        assertThat(lengths.tailSurvival(60)).isCloseTo(0.125, within(1e-12));
        assertThat(lengths.lengthBeyond(60, 0.875)).isCloseTo(120, within(1e-9));
        assertThat(lengths.meanBeyond(34)).isCloseTo(17, within(1e-9));
    }

    @Test
    void once_in_the_tail_the_longer_it_has_lasted_the_longer_it_will() {
        double before = 0;
        for (double passed = 24; passed < 200; passed += 2) {
            double rest = lengths.meanBeyond(passed);
            assertThat(rest).isGreaterThan(before);
            before = rest;
        }
    }

    @Test
    void the_mean_beyond_is_the_mean_of_the_quantiles() {
        for (double passed : new double[] {0, 6, 13, 25, 40}) {
            double sum = 0;
            int n = 400_000;
            for (int j = 0; j < n; j++) {
                sum += lengths.lengthBeyond(passed, (j + 0.5) / n) - passed;
            }
            assertThat(sum / n).as("after %s", passed).isCloseTo(lengths.meanBeyond(passed), within(0.02));
        }
    }

    @Test
    void quantile_and_survival_undo_each_other() {
        for (double u = 0.01; u < 1; u += 0.01) {
            double length = lengths.lengthBeyond(9, u);
            assertThat(lengths.survival(length) / lengths.survival(9)).isCloseTo(1 - u, within(1e-9));
        }
    }

    @Test
    void a_law_without_a_tail_ends() {
        StallLengths ten = new StallLengths(List.of(10.0), List.of(1.0), 10, 3);
        assertThat(ten.tailWeight()).isZero();
        assertThat(ten.lengthBeyond(0, 0.5)).isCloseTo(10, within(1e-6));
    }
}

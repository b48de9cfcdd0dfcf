package benchpace.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TheilSenTest {

    /**
     * Data of M. Hollander, D. A. Wolfe and E. Chicken, "Nonparametric Statistical Methods", 3rd edition, example 9.1.
     * By hand, the ten slopes in order: -.15, -.13, -.08, -.07, -.0575, -.055, -.045, -.0333, .01, .04; the middle of
     * the fifth and sixth is -.05625.
     */
    @Test void the_slope_of_the_published_rainfall_is_the_middle_of_its_ten_slopes() {
        assertThat(TheilSen.slope(new double[] {1, 2, 3, 4, 5}, new double[] {1.26, 1.27, 1.12, 1.16, 1.03}))
                .isCloseTo(-0.05625, within(1e-12));
    }

    /** The example in the documentation of the R package statpsych, {@code ci.theil}: 0.5, with ties in x. */
    @Test void the_published_slope_with_ties_is_one_half() {
        double[] y = {21, 4, 9, 12, 35, 18, 10, 22, 24, 1, 6, 8, 13, 16, 19};
        double[] x = {67, 28, 30, 28, 52, 40, 25, 37, 44, 10, 14, 20, 28, 40, 51};

        assertThat(TheilSen.slope(x, y)).isCloseTo(0.5, within(1e-12));
    }

    /** By hand: six slopes of 2 among the four in line; the odd one gives 52, 102, -98 and -48: the middle is 2. */
    @Test void one_odd_point_does_not_move_the_line() {
        double[] x = {0, 1, 2, 3, 4};
        double[] y = {1, 3, 105, 7, 9};

        assertThat(TheilSen.slope(x, y)).isEqualTo(2);
        assertThat(TheilSen.intercept(x, y, 2)).isEqualTo(1);
    }

    @Test void points_above_one_another_have_no_slope() {
        assertThatThrownBy(() -> TheilSen.slope(new double[] {1, 1}, new double[] {1, 2}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}

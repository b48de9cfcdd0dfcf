package benchpace.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.belief.StandardNormal;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.stat.correlation.KendallsCorrelation;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class KendallTest {

    /**
     * Four in a row, worked out by hand: of the 24 orders 1, 3, 5, 6, 5, 3 and 1 have 0 to 6 inversions, so S is 6, 4,
     * 2, 0, -2, -4 and -6 that often. 1 2 4 3 has one inversion: S = 5 - 1 = 4, and 2 (1 + 3) / 24 orders are so far
     * out.
     */
    @ParameterizedTest
    @CsvSource({"1 2 3 4, 6, 0.08333333", "1 2 4 3, 4, 0.33333333", "2 1 4 3, 2, 0.75", "3 1 4 2, 0, 1",
        "4 3 2 1, -6, 0.08333333"})
    void the_chance_of_four_in_a_row_is_counted(String order, long s, double p) {
        double[] y = Arrays.stream(order.split(" ")).mapToDouble(Double::parseDouble).toArray();

        Kendall kendall = Kendall.of(new double[] {1, 2, 3, 4}, y);

        assertThat(kendall.s()).isEqualTo(s);
        assertThat(kendall.tau()).isCloseTo(s / 6.0, within(1e-12));
        assertThat(kendall.p()).isCloseTo(p, within(1e-8));
    }

    /**
     * M. Hollander, D. A. Wolfe and E. Chicken, "Nonparametric Statistical Methods", 3rd edition, example 9.1, rainfall
     * and cloud seeding in five years; the test of example 9.1 there has C = -6 and P(C at most -6) = .117 (from
     * memory).
     */
    @Test void the_published_rainfall_of_five_years_does_not_go_down_for_sure() {
        Kendall kendall = Kendall.of(new double[] {1, 2, 3, 4, 5}, new double[] {1.26, 1.27, 1.12, 1.16, 1.03});

        assertThat(kendall.s()).isEqualTo(-6);
        assertThat(kendall.p() / 2).isCloseTo(0.117, within(0.0005));
    }

    /** The example in the documentation of SciPy's {@code stats.kendalltau}: tau-b and p with ties on both sides. */
    @Test void ties_on_both_sides_are_taken_as_published() {
        Kendall kendall = Kendall.of(new double[] {12, 2, 1, 12, 2}, new double[] {1, 4, 7, 1, 0});

        assertThat(kendall.tau()).isCloseTo(-0.47140452079103173, within(1e-12));
        assertThat(kendall.p()).isCloseTo(0.2827454599327748, within(1e-6));
    }

    @Test void tau_is_that_of_hipparchus_with_ties_and_without() {
        Random lots = new Random(12);
        for (int round = 0; round < 200; round++) {
            int n = 3 + lots.nextInt(60);
            int values = 2 + lots.nextInt(80);
            double[] x = lots.ints(n, 0, values).asDoubleStream().toArray();
            double[] y = lots.ints(n, 0, values).asDoubleStream().toArray();
            double expected = new KendallsCorrelation().correlation(x, y);

            assertThat(Kendall.of(x, y).tau()).isCloseTo(Double.isNaN(expected) ? 0 : expected, within(1e-12));
        }
    }

    @Test void the_normal_distribution_takes_over_where_it_differs_from_the_count_by_nothing_seen() {
        int n = Kendall.MOST_EXACT + 1;
        double[] x = new double[n - 1];
        double[] y = new double[n - 1];
        double[] longerX = new double[n];
        double[] longerY = new double[n];
        Random lots = new Random(3);
        for (int i = 0; i < n; i++) {
            longerX[i] = i;
            longerY[i] = i / 90.0 + lots.nextGaussian();
            if (i < n - 1) {
                x[i] = i;
                y[i] = longerY[i];
            }
        }
        double counted = Kendall.of(x, y).p();
        double z = Math.abs(Kendall.of(x, y).s()) / Math.sqrt((n - 1.0) * (n - 2) * (2 * n + 3) / 18);

        assertThat(counted).isBetween(0.0001, 0.5);
        assertThat(2 * StandardNormal.survival(z)).isCloseTo(counted, within(0.001));
    }

    /** Of series that go nowhere about one in a hundred would be told to go somewhere. */
    @Test void of_a_thousand_series_that_go_nowhere_hardly_one_in_a_hundred_is_taken_for_a_trend() {
        Random lots = new Random(41);
        int told = 0;
        for (int round = 0; round < 1000; round++) {
            double[] y = lots.doubles(20).toArray();
            double[] x = IntStream.range(0, 20).asDoubleStream().toArray();
            told += Kendall.of(x, y).p() < Trend.CHANCE ? 1 : 0;
        }

        assertThat(told).isBetween(1, 20);
    }

    @Test void figures_that_are_all_the_same_go_nowhere() {
        assertThat(Kendall.of(new double[] {1, 2, 3}, new double[] {5, 5, 5})).isEqualTo(new Kendall(0, 0, 1));
    }
}

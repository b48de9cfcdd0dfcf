package benchpace.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.history.Trend.Said;
import benchpace.report.Medians;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Small histories, worked out by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TrendTest {

    /** A class a week, from day 0 on. */
    private static Series weekly(double... values) {
        return Series.of(IntStream.range(0, values.length).mapToObj(i -> new Dot(7 * i, values[i], 1)).toList());
    }

    @Test void nine_classes_say_nothing_however_they_go() {
        assertThat(weekly(9, 8, 7, 6, 5, 4, 3, 2, 1).trend().said()).isEqualTo(Said.TOO_FEW);
    }

    /**
     * Two minutes less each week but for one odd evening, 18 16 14 12 40 8 6 4 2 0. Of 45 pairs the odd one goes up
     * from the 4 before it, so 41 go down and 4 up: S = -37. At most 4 inversions have 1 + 9 + 44 + 155 + 440 = 649 of
     * 10! orders, so p = 2 * 649 / 3628800 = 0.00036. 36 of the 45 slopes, all without the odd evening, are -2/7 a day.
     * The line starts at 18, for of the ten y + 2/7 day nine are 18, and ends 63 days later at 0.
     */
    @Test void two_minutes_less_each_week_are_told_although_one_evening_was_odd() {
        Trend trend = weekly(18, 16, 14, 12, 40, 8, 6, 4, 2, 0).trend();

        assertThat(trend.said()).isEqualTo(Said.FALLS);
        assertThat(trend.first()).isCloseTo(18, within(1e-9));
        assertThat(trend.last()).isCloseTo(0, within(1e-9));
        assertThat(trend.change()).isCloseTo(-18, within(1e-9));
    }

    /**
     * 1 3 2 5 4 7 6 9 8 10 upside down has four inversions less than all 45: S = 45 - 2 * 4 = 37, the same chance.
     * By hand the slopes a week: nine neighbours 2 -1 3 -1 3 -1 3 -1 2, eight over two 1/2 1 1 1 1 1 1 1/2, and so on;
     * the middle one is 1.
     */
    @Test void a_rise_with_steps_back_is_told() {
        Trend trend = weekly(1, 3, 2, 5, 4, 7, 6, 9, 8, 10).trend();

        assertThat(trend.said()).isEqualTo(Said.RISES);
        assertThat(trend.change()).isCloseTo(9, within(1e-9));
    }

    /** 5 1 4 2 3 5 1 4 2 3: the second half is the first again, so about as many pairs go up as go down. */
    @Test void what_goes_to_and_fro_is_no_trend() {
        assertThat(weekly(5, 1, 4, 2, 3, 5, 1, 4, 2, 3).trend().said()).isEqualTo(Said.NONE);
    }

    /** Eleven zeros and a rise at the end: most pairs are equal, so the middle slope is 0 and nothing is told. */
    @Test void a_figure_that_is_mostly_the_same_is_no_trend() {
        assertThat(weekly(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 2, 3).trend().said()).isEqualTo(Said.NONE);
    }

    /** 250 classes, three to a dot: 83 dots of three and one of one, each in the middle of its three. */
    @Test void many_classes_are_put_together_by_their_medians() {
        Series series = Series.of(IntStream.range(0, 250).mapToObj(i -> new Dot(i, i % 3 == 0 ? 100 : i, 1)).toList());

        assertThat(series.dots()).hasSize(84);
        assertThat(series.dots().get(0)).isEqualTo(new Dot(1, 2, 3)); // 100, 1, 2
        assertThat(series.dots().get(83)).isEqualTo(new Dot(249, 100, 1));
        assertThat(series.classes()).isEqualTo(250);
    }

    @Test void dots_are_put_in_the_order_of_time() {
        assertThat(Series.of(List.of(new Dot(9, 1, 1), new Dot(2, 5, 1))).dots())
                .extracting(Dot::day).containsExactly(2.0, 9.0);
    }

    @Test void the_middle_of_an_even_number_lies_between_two() {
        assertThat(Medians.of(4, 1, 3, 2)).isEqualTo(2.5);
        assertThat(Medians.of(7)).isEqualTo(7);
    }
}

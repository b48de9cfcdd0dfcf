package benchpace.pace.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turns at stations. The figures of a class poured one by one are common practice and arithmetic, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationQueueTest {
    private static double lastDone(int seats, int stations, double each) {
        double[] keeps = new double[seats];
        Arrays.fill(keeps, each);
        return Arrays.stream(StationQueue.turns(stations, new double[seats], keeps)).max().orElseThrow() + each;
    }

    /** Six seats in 25 to 30 minutes are 4.17 to 5.0 minutes a seat; at that rate forty take 166.7 to 200. */
    @Test void forty_seats_poured_one_by_one_take_three_hours() {
        assertThat(lastDone(6, 1, 25 / 6.0)).isCloseTo(25, within(1e-9));
        assertThat(lastDone(40, 1, 25 / 6.0)).isCloseTo(166.7, within(0.05));
        assertThat(lastDone(40, 1, 5)).isCloseTo(200, within(1e-9));
    }

    /** 5.56 stations, so six, at 4.17 minutes and 6.67, so seven, at 5.0 serve forty in half an hour. */
    @ParameterizedTest
    @CsvSource({"4.1666667, 5, false", "4.1666667, 6, true", "5, 6, false", "5, 7, true"})
    void forty_seats_in_half_an_hour_need_six_or_seven_stations(double each, int stations, boolean enough) {
        assertThat(lastDone(40, stations, each) <= 30).isEqualTo(enough);
    }

    @Test void who_comes_first_is_served_first_whatever_the_seat() {
        double[] turns = StationQueue.turns(1, new double[] {3, 0, 1}, new double[] {2, 4, 1});

        assertThat(turns).containsExactly(5, 0, 4);
    }

    @Test void seats_that_come_together_go_in_the_order_of_the_table() {
        assertThat(StationQueue.turns(2, new double[4], new double[] {3, 1, 1, 1})).containsExactly(0, 0, 1, 2);
    }

    @Test void a_seat_that_comes_later_than_a_station_falls_free_does_not_wait() {
        StationQueue queue = new StationQueue(1);
        queue.turn(0, 5);

        assertThat(queue.turn(7, 1)).isEqualTo(7);
    }

    @Test void there_is_no_queue_without_a_station_and_nobody_keeps_one_for_less_than_nothing() {
        assertThatThrownBy(() -> new StationQueue(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StationQueue(1).turn(0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}

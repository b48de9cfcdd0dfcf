package benchpace.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Turns at a tap that a seat keeps for three minutes, as long as the step takes, unless a test says otherwise. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationTurnsTest {
    private static final double NOT_YET = SeatTrack.NOT_YET;

    private final List<StationTurns.Guest> guests = new ArrayList<>();

    private StationTurnsTest came(int seat, double came, double done, Span... pauses) {
        guests.add(new StationTurns.Guest(seat, came, done, NOT_YET, List.of(pauses)));
        return this;
    }

    private StationTurnsTest left(int seat, double came, double left) {
        guests.add(new StationTurns.Guest(seat, came, NOT_YET, left, List.of()));
        return this;
    }

    private StationTurns one(double now) {
        return StationTurns.of(new PaceStations(1, 3), 3, guests, now);
    }

    private StationTurns two(double now) {
        return StationTurns.of(new PaceStations(2, 3), 3, guests, now);
    }

    @Test void first_come_is_first_served_and_of_those_that_come_together_the_first_at_the_table() {
        StationTurns turns = came(1, 2, NOT_YET).came(2, 1, NOT_YET).came(3, 2, NOT_YET).one(2.5);

        assertThat(turns.served()).containsExactly(2);
        assertThat(turns.waiting()).containsExactly(1, 3);
        assertThat(turns.turns()).containsExactly(NOT_YET, 1, NOT_YET);
    }

    @Test void the_next_turn_begins_with_the_tick_of_the_one_before() {
        StationTurns turns = came(1, 0, 4).came(2, 0, NOT_YET).came(3, 0, NOT_YET).one(5);

        assertThat(turns.served()).containsExactly(2);
        assertThat(turns.waiting()).containsExactly(3);
        assertThat(turns.turns()).containsExactly(0, 4, NOT_YET);
    }

    @Test void nobodys_turn_begins_while_the_one_before_keeps_the_station_however_long() {
        StationTurns turns = came(1, 0, NOT_YET).came(2, 0, NOT_YET).one(40);

        assertThat(turns.served()).containsExactly(1);
        assertThat(turns.waiting()).containsExactly(2);
    }

    @Test void a_seat_ticked_out_of_turn_went_first_and_the_other_is_the_next() {
        StationTurns turns = came(1, 0, NOT_YET).came(2, 0, 3).came(3, 0, NOT_YET).one(5);

        assertThat(turns.turns()).containsExactly(3, 0, NOT_YET);
        assertThat(turns.served()).containsExactly(1);
    }

    @Test void who_keeps_one_of_two_stations_keeps_it_while_the_others_go_through_the_other() {
        StationTurns turns = came(1, 0, NOT_YET).came(2, 0, 3).came(3, 0, 6.2).came(4, 0, NOT_YET).two(8);

        assertThat(turns.turns()).containsExactly(0, 0, 3, 6.2);
        assertThat(turns.served()).containsExactly(1, 4);
    }

    @Test void a_seat_away_for_a_moment_lets_others_go_first_and_is_the_next_when_it_is_back() {
        came(1, 0, 3).came(2, 0, NOT_YET, new Span(2, 5)).came(3, 0, NOT_YET).came(4, 0, NOT_YET);

        assertThat(one(4).served()).containsExactly(3);
        assertThat(one(4).waiting()).containsExactly(4);
        assertThat(one(5.5).waiting()).containsExactly(2, 4);
    }

    @Test void a_seat_that_goes_away_from_the_station_leaves_it_to_the_next() {
        StationTurns turns = came(1, 0, NOT_YET, new Span(2, NOT_YET)).came(2, 0, NOT_YET).one(4);

        assertThat(turns.served()).containsExactly(2);
        assertThat(turns.turns()[1]).isEqualTo(2);
    }

    @Test void a_seat_that_left_for_good_is_waited_for_by_nobody() {
        StationTurns turns = left(1, 0, 2).left(2, 0, 1).came(3, 0, NOT_YET).one(4);

        assertThat(turns.served()).containsExactly(3);
        assertThat(turns.turns()[2]).isEqualTo(2);
    }

    @Test void a_sweep_over_several_shares_the_time_among_them() {
        double[] turns = came(1, 0, 9).came(2, 0, 9).came(3, 0, 9.01).one(10).turns();

        assertThat(9 - turns[0]).isCloseTo(3, within(0.02));
        assertThat(9 - turns[1]).isCloseTo(3, within(0.02));
        assertThat(9.01 - turns[2]).isCloseTo(3, within(0.02));
    }

    @Test void a_tick_that_came_late_takes_no_more_than_half_of_the_next_seats_time() {
        assertThat(came(1, 0, 5.8).came(2, 0, 6).one(7).turns()).containsExactly(0, 4.5);
    }

    /** Five minutes of work, the scales for the first of them. */
    private StationTurns scales(double now) {
        return StationTurns.of(new PaceStations(1, 1), 5, guests, now);
    }

    @Test void a_station_kept_for_a_part_of_the_step_serves_the_next_after_that_part() {
        came(1, 0, NOT_YET).came(2, 0, NOT_YET).came(3, 0, NOT_YET).came(4, 0, NOT_YET);

        assertThat(scales(2.5).turns()).containsExactly(0, 1, 2, NOT_YET);
        assertThat(scales(2.5).served()).containsExactly(3);
        assertThat(scales(2.5).waiting()).containsExactly(4);
    }

    @Test void while_the_one_before_is_overdue_nobody_behind_it_grows_older_at_the_step() {
        came(1, 0, NOT_YET).came(2, 0, NOT_YET);

        assertThat(scales(5).turns()[1]).isEqualTo(1);
        assertThat(scales(12).turns()[1]).isEqualTo(8);
        assertThat(scales(30).turns()[1]).isEqualTo(26);
    }

    @Test void all_have_had_their_turn_when_each_has_kept_a_station_as_long_as_planned() {
        came(1, 0, NOT_YET).came(2, 0, NOT_YET).came(3, 0, NOT_YET).came(4, 0, NOT_YET);

        assertThat(one(1).throughMinutes()).isEqualTo(12);
        assertThat(two(1).throughMinutes()).isEqualTo(6);
        assertThat(one(5).throughMinutes()).isEqualTo(14);
    }
}

package benchpace.live;

import static benchpace.live.TestClass.finished;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SharingACandleTest {
    private static final SeatNumber SEAT_1 = new SeatNumber(1);
    private static final SeatNumber SEAT_2 = new SeatNumber(2);
    private static final SeatNumber SEAT_3 = new SeatNumber(3);
    private final TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(6).pair(1, 2);

    private static ClassEvent paired(int seat, int with) {
        return new ClassEvent.SeatPaired(new SeatNumber(seat), new SeatNumber(with));
    }

    @Test void a_seat_that_shares_makes_no_candle_and_takes_no_taps() {
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.SHARING);
        assertThat(c.sinceMinute(2)).isEqualTo(6);
        assertThat(c.seat(2).makesCandle()).isFalse();
        assertThat(c.refusalOf(finished(2, "wicks"))).isEqualTo(new Refusal.SharesCandle(SEAT_2, SEAT_1));
    }

    @Test void the_pair_moves_with_the_seat_that_makes_the_candle() {
        c.minute(9).finish(1, "wicks");

        assertThat(c.stepOf(1)).isEqualTo("blend");
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.SHARING);
    }

    @Test void nobody_shares_with_themselves_with_a_sharer_or_twice() {
        assertThat(c.refusalOf(paired(3, 3))).isEqualTo(new Refusal.SharesCandle(SEAT_3, SEAT_3));
        assertThat(c.refusalOf(paired(3, 2))).isEqualTo(new Refusal.SharesCandle(SEAT_2, SEAT_1));
        assertThat(c.refusalOf(paired(2, 3))).isEqualTo(new Refusal.SharesCandle(SEAT_2, SEAT_1));
    }

    @Test void whoever_hosts_somebody_does_not_move_to_a_third_candle() {
        assertThat(c.refusalOf(paired(3, 1))).isEqualTo(new Refusal.SharesCandle(SEAT_2, SEAT_1));
    }

    @Test void nobody_is_paired_with_a_guest_who_went_home() {
        c.leave(3);

        assertThat(c.refusalOf(paired(4, 3))).isEqualTo(new Refusal.NotAtTable(SEAT_3, true));
    }

    @Test void a_pair_that_parts_gives_the_second_seat_its_own_time_from_then_on() {
        c.minute(30).unpair(2).minute(32);

        assertThat(c.stepOf(2)).isEqualTo("wicks");
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.minutesIn(2)).isEqualTo(2);
        assertThat(c.refusalOf(new ClassEvent.SeatUnpaired(SEAT_2))).isEqualTo(new Refusal.NotSo(State.SHARED));
    }

    @Test void when_the_one_who_makes_the_candle_goes_home_the_other_goes_on_with_it() {
        c.minute(9).finish(1, "wicks").minute(12).leave(1).minute(14);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.LEFT);
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.stepOf(2)).isEqualTo("blend");
        assertThat(c.minutesIn(2)).isEqualTo(5);
        assertThat(c.finish(2, "blend").stepOf(2)).isEqualTo("pour");
    }

    @Test void a_candle_handed_over_keeps_its_cure_and_is_no_longer_the_first_seats() {
        c.minute(9).finish(1, "wicks").finish(1, "blend").minute(20).open("pour").minute(25).finish(1, "pour")
                .minute(40).read(1, 52).leave(1);

        assertThat(c.pouredAtMinute(2)).contains(25.0);
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(c.seat(2).readings()).hasSize(1);
        assertThat(c.pouredAtMinute(1)).isEmpty();
        assertThat(c.seat(1).finishes()).isEmpty();
    }

    @Test void of_three_at_one_candle_the_lowest_seat_left_makes_it() {
        c.pair(1, 3).minute(9).finish(1, "wicks").minute(12).leave(1);

        assertThat(c.stepOf(2)).isEqualTo("blend");
        assertThat(c.seat(3).sharesWith()).contains(SEAT_2);
    }

    @Test void who_comes_back_shares_the_candle_handed_over() {
        c.minute(9).finish(1, "wicks").minute(12).leave(1).minute(20).arrive(1);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.SHARING);
        assertThat(c.seat(1).sharesWith()).contains(SEAT_2);
        assertThat(c.stepOf(2)).isEqualTo("blend");
    }

    @Test void undoing_the_leaving_gives_the_candle_back() {
        c.minute(9).finish(1, "wicks");
        Digest before = Digest.of(c.live());

        c.minute(12).leave(1).undoLast();
        assertThat(Digest.of(c.live())).isEqualTo(before);
    }

    @Test void when_both_go_home_the_candle_stays_with_the_seat_that_made_it() {
        c.minute(9).finish(1, "wicks").minute(12).leave(2).leave(1);

        assertThat(c.seat(1).finishes()).hasSize(1);
        assertThat(c.seat(2).finishes()).isEmpty();
    }

    @Test void of_two_who_went_home_the_one_who_comes_back_goes_on_with_the_candle() {
        c.minute(9).finish(1, "wicks").minute(12).leave(2).leave(1).minute(20).arrive(2);

        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.stepOf(2)).isEqualTo("blend");
        assertThat(c.sinceMinute(2)).isEqualTo(20);
    }

    @Test void a_pause_of_the_pair_ends_when_the_candle_is_handed_over() {
        c.minute(8).pause(1).minute(12).leave(1).minute(14);

        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.sinceMinute(2)).isEqualTo(5);
        assertThat(c.minutesIn(2)).isEqualTo(5);
    }

    @Test void the_helper_on_the_way_to_the_pair_finds_it_claimed_at_the_seat_that_is_left() {
        c.claim(1, "MB").leave(1);

        assertThat(c.seat(2).claim()).map(Seat.Claim::helper).contains("MB");
    }

    @Test void a_pairing_turned_around_and_undone_in_between_leaves_one_candle() {
        c.unpair(2);
        long parting = c.seq();
        c.pair(2, 1).undo(parting);

        assertThat(c.seat(1).sharesWith()).contains(SEAT_2);
        assertThat(c.seat(2).makesCandle()).isTrue();
    }
}

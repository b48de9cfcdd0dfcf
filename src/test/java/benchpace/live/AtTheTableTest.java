package benchpace.live;

import static benchpace.live.TestClass.finished;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AtTheTableTest {
    private static final SeatNumber SEAT_2 = new SeatNumber(2);
    private final TestClass c = TestClass.evening(3).expect(2).open("welcome").minute(5).open("wicks");

    @Test void an_expected_guest_is_neither_judged_nor_tapped() {
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.EXPECTED);
        assertThat(c.seat(2).makesCandle()).isFalse();
        assertThat(c.refusalOf(finished(2, "wicks"))).isEqualTo(new Refusal.NotAtTable(SEAT_2, false));
    }

    @Test void a_late_arrival_counts_from_the_arrival() {
        c.minute(11).arrive(2, "Ada").minute(13);

        assertThat(c.stepOf(2)).isEqualTo("wicks");
        assertThat(c.minutesIn(2)).isEqualTo(2);
        assertThat(c.seat(2).name()).isEqualTo("Ada");
    }

    @Test void an_arrival_before_the_step_opens_counts_from_the_opening() {
        TestClass early = TestClass.evening(2).expect(2).open("welcome").minute(3).arrive(2).minute(5).open("wicks");

        assertThat(early.sinceMinute(2)).isEqualTo(5);
    }

    @Test void a_seat_not_told_to_be_late_may_still_arrive_late() {
        c.minute(12).arrive(3).minute(13);

        assertThat(c.minutesIn(3)).isEqualTo(1);
    }

    @Test void who_has_finished_something_only_tells_a_name_by_arriving_again() {
        c.minute(9).finish(1, "wicks").minute(12).arrive(1, "Bo");

        assertThat(c.seat(1).name()).isEqualTo("Bo");
        assertThat(c.sinceMinute(1)).isEqualTo(9);
    }

    @Test void an_arrival_without_a_name_keeps_the_name() {
        c.minute(11).arrive(2, "Ada").minute(12).arrive(2, "");

        assertThat(c.seat(2).name()).isEqualTo("Ada");
    }

    @Test void a_late_arrival_that_starts_where_the_class_is_shows_the_steps_it_missed() {
        c.minute(20).open("pour").minute(22).arrive(2).minute(30).finish(2, "pour");

        assertThat(c.gapsOf(2)).containsExactly("wicks", "blend");
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.CURING);
    }

    @Test void who_goes_home_no_longer_holds_the_class() {
        c.minute(9).leave(1);

        assertThat(c.standing(1)).isEqualTo(
                new Standing(Standing.Phase.LEFT, Optional.empty(), TestClass.instant(9)));
        assertThat(c.refusalOf(finished(1, "wicks"))).isEqualTo(new Refusal.NotAtTable(new SeatNumber(1), true));
        assertThat(c.refusalOf(new ClassEvent.SeatLeft(new SeatNumber(1))))
                .isEqualTo(new Refusal.AlreadySo(State.GONE));
    }

    @Test void who_comes_back_goes_on_where_they_were_and_counts_from_the_return() {
        c.minute(9).finish(1, "wicks").minute(10).leave(1).minute(30).arrive(1).minute(33);

        assertThat(c.stepOf(1)).isEqualTo("blend");
        assertThat(c.minutesIn(1)).isEqualTo(3);
        assertThat(c.seat(1).finishes()).hasSize(1);
    }

    @Test void a_candle_goes_on_curing_while_its_guest_is_away() {
        TestClass poured = TestClass.atThePour(2).minute(26).finish(1, "pour").minute(30).leave(1).minute(50).arrive(1);

        assertThat(poured.standing(1).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(poured.sinceMinute(1)).isEqualTo(26);
    }

    @Test void a_seat_that_has_finished_something_is_not_put_back_to_expected() {
        c.minute(9).finish(1, "wicks");

        assertThat(c.refusalOf(new ClassEvent.SeatExpected(new SeatNumber(1))))
                .isInstanceOf(Refusal.AlreadyFinished.class);
        assertThat(c.refusalOf(new ClassEvent.SeatExpected(SEAT_2))).isEqualTo(new Refusal.AlreadySo(State.EXPECTED));
    }

    @Test void notes_are_kept_in_order_also_for_a_seat_that_left() {
        c.note(1, "left-handed").leave(1).note(1, "forgot a scarf");

        assertThat(c.seat(1).notes()).extracting(Seat.Note::text).containsExactly("left-handed", "forgot a scarf");
    }

    @Test void taps_at_different_seats_may_come_in_any_order() {
        TestClass one = TestClass.evening(2).open("wicks").minute(9).madeAt(8).finish(1, "wicks").madeAt(7)
                .finish(2, "wicks");
        TestClass other = TestClass.evening(2).open("wicks").minute(9).madeAt(7).finish(2, "wicks").madeAt(8)
                .finish(1, "wicks");

        assertThat(one.standing(1)).isEqualTo(other.standing(1));
        assertThat(one.standing(2)).isEqualTo(other.standing(2));
    }
}

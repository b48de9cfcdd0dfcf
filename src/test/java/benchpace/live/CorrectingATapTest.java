package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CorrectingATapTest {
    private final TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(12)
            .finish(1, "wicks");
    private final long tap = c.seq();

    private ClassEvent to(int seat) {
        return new ClassEvent.TapReseated(tap, new SeatNumber(seat));
    }

    @Test void a_tap_noted_late_is_set_to_when_it_was() {
        c.minute(15).retime(tap, 9);

        assertThat(c.sinceMinute(1)).isEqualTo(9);
        assertThat(c.minutesIn(1)).isEqualTo(6);
    }

    @Test void the_log_keeps_what_was_first_said() {
        c.minute(15).retime(tap, 9);

        assertThat(c.live().history().get((int) tap - 1).at()).isEqualTo(TestClass.instant(12));
    }

    @Test void the_corrected_log_tells_every_tap_with_its_right_time_and_seat() {
        c.minute(15).retime(tap, 9).reseat(tap, 2);

        Recorded told = c.live().corrected().get((int) tap - 1);
        assertThat(told.at()).isEqualTo(TestClass.instant(9));
        assertThat(told.event()).isEqualTo(TestClass.finished(2, "wicks"));
        assertThat(c.live().corrected()).extracting(Recorded::seq)
                .isEqualTo(c.live().history().stream().map(Recorded::seq).toList());

        c.undoLast();
        assertThat(c.live().corrected().get((int) tap - 1).event()).isEqualTo(TestClass.finished(1, "wicks"));
    }

    @Test void a_tap_is_not_moved_into_the_future_or_before_the_class() {
        c.minute(15);

        assertThat(c.refusalOf(new ClassEvent.TapRetimed(tap, TestClass.instant(16)))).isEqualTo(
                new Refusal.MovedOutsideClass(TestClass.instant(16), TestClass.START, TestClass.instant(15)));
        assertThat(c.refusalOf(new ClassEvent.TapRetimed(tap, TestClass.instant(-1))))
                .isInstanceOf(Refusal.MovedOutsideClass.class);
    }

    @Test void a_correction_made_outside_the_class_is_told_from_one_that_leads_outside_it() {
        c.minute(15);

        assertThat(c.madeAt(-1).refusalOf(new ClassEvent.TapRetimed(tap, TestClass.instant(9)))).isEqualTo(
                new Refusal.OutsideClass(TestClass.instant(-1), TestClass.START, TestClass.instant(15)));
        assertThat(c.madeAt(14).refusalOf(new ClassEvent.TapRetimed(tap, TestClass.instant(-1)))).isEqualTo(
                new Refusal.MovedOutsideClass(TestClass.instant(-1), TestClass.START, TestClass.instant(15)));
    }

    @Test void taps_retimed_past_each_other_keep_the_seat_where_its_furthest_tap_put_it() {
        c.minute(18).finish(1, "blend").minute(25).retime(tap, 22);

        assertThat(c.stepOf(1)).isEqualTo("pour");
        assertThat(c.sinceMinute(1)).isEqualTo(18);
        assertThat(c.gapsOf(1)).isEmpty();
    }

    @Test void an_opening_can_be_retimed() {
        c.minute(15).retime(3, 4);

        assertThat(c.sinceMinute(2)).isEqualTo(4);
    }

    @Test void a_tap_on_the_wrong_seat_goes_to_the_right_one_with_its_time() {
        c.minute(15).reseat(tap, 2);

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.stepOf(2)).isEqualTo("blend");
        assertThat(c.sinceMinute(2)).isEqualTo(12);
    }

    @Test void a_tap_moved_twice_stands_at_the_last_seat_only() {
        c.minute(15).reseat(tap, 2).reseat(tap, 3);

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.stepOf(2)).isEqualTo("wicks");
        assertThat(c.stepOf(3)).isEqualTo("blend");
    }

    @Test void a_tap_moved_and_retimed_keeps_both() {
        c.minute(15).retime(tap, 10).reseat(tap, 2);

        assertThat(c.sinceMinute(2)).isEqualTo(10);
    }

    @Test void a_tap_moved_and_then_undone_is_gone_from_both_seats() {
        c.minute(15).reseat(tap, 2).undo(tap);

        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.stepOf(2)).isEqualTo("wicks");
    }

    @Test void a_tap_does_not_move_to_a_seat_that_has_its_own() {
        c.minute(13).finish(2, "wicks");

        assertThat(c.refusalOf(to(2))).isEqualTo(
                new Refusal.AlreadyFinished(new SeatNumber(2), new StepId("wicks"), c.seq()));
        assertThat(c.refusalOf(to(1))).isEqualTo(
                new Refusal.AlreadyFinished(new SeatNumber(1), new StepId("wicks"), tap));
    }

    @Test void a_tap_does_not_move_to_a_seat_that_is_not_there() {
        c.leave(3);

        assertThat(c.refusalOf(to(3))).isEqualTo(new Refusal.NotAtTable(new SeatNumber(3), true));
        assertThat(c.refusalOf(to(9))).isEqualTo(new Refusal.NoSuchSeat(new SeatNumber(9), 4));
    }

    @Test void only_taps_are_corrected() {
        assertThat(c.refusalOf(new ClassEvent.TapRetimed(1, c.now()))).isEqualTo(new Refusal.CannotUndo(1));
        assertThat(c.refusalOf(new ClassEvent.TapReseated(2, new SeatNumber(2)))).isEqualTo(new Refusal.CannotUndo(2));
        assertThat(c.refusalOf(new ClassEvent.TapRetimed(99, c.now()))).isEqualTo(new Refusal.NoSuchEvent(99));
    }

    @Test void an_undone_tap_is_not_corrected() {
        c.undo(tap);

        assertThat(c.refusalOf(to(2))).isEqualTo(new Refusal.AlreadySo(State.UNDONE));
    }
}

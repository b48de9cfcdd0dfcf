package benchpace.live;

import static benchpace.live.TestClass.finished;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FinishingAStepTest {
    private static final SeatNumber SEAT_2 = new SeatNumber(2);
    private final TestClass c = TestClass.evening(4).open("welcome").minute(5).open("wicks");

    @Test void a_tap_moves_the_seat_to_the_next_free_step() {
        c.minute(11).finish(2, "wicks");

        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.stepOf(2)).isEqualTo("blend");
        assertThat(c.sinceMinute(2)).isEqualTo(11);
    }

    @Test void a_seat_at_a_step_the_instructor_has_not_opened_waits_for_it() {
        c.minute(11).finish(2, "wicks").minute(17).finish(2, "blend");

        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.WAITING);
        assertThat(c.stepOf(2)).isEqualTo("pour");
        assertThat(c.sinceMinute(2)).isEqualTo(17);
    }

    @Test void a_double_tap_counts_once_and_names_the_tap_that_stands() {
        c.minute(11).finish(2, "wicks");
        long tap = c.seq();

        assertThat(c.minute(11.01).refusalOf(finished(2, "wicks")))
                .isEqualTo(new Refusal.AlreadyFinished(SEAT_2, new StepId("wicks"), tap));
    }

    @Test void two_tablets_tapping_the_same_seat_at_once_count_once() {
        LiveClass seenByBoth = c.minute(11).live();
        Instant now = c.now();
        Command first = new Command("tablet-a-1", "instructor", now, finished(2, "wicks"));
        Command second = new Command("tablet-b-1", "helper", now, finished(2, "wicks"));
        assertThat(Rules.decide(seenByBoth, first, now, Plausibility.ANYTHING)).isEqualTo(
                new Decision.Accepted(first.wish()));

        LiveClass after = seenByBoth.apply(
                new Recorded(seenByBoth.seq() + 1, first.id(), first.by(), first.at(), now, first.wish()));

        assertThat(Rules.decide(after, second, now, Plausibility.ANYTHING)).isEqualTo(new Decision.Refused(
                new Refusal.AlreadyFinished(SEAT_2, new StepId("wicks"), after.seq())));
    }

    @Test void a_command_that_was_recorded_is_recognised_by_its_id() {
        c.minute(11).finish(2, "wicks");

        assertThat(c.live().seqOf("tap-" + c.seq())).hasValue(c.seq());
        assertThat(c.live().seqOf("tap-99")).isEmpty();
    }

    @Test void not_open_out_of_order_and_already_finished_are_told_apart() {
        c.minute(11).finish(2, "wicks");

        assertThat(c.refusalOf(finished(2, "pour"))).isEqualTo(new Refusal.StepNotOpen(new StepId("pour")));
        assertThat(c.refusalOf(finished(2, "trim")))
                .isEqualTo(new Refusal.OutOfOrder(new StepId("trim"), new StepId("pour")));
        assertThat(c.refusalOf(finished(2, "wicks"))).isInstanceOf(Refusal.AlreadyFinished.class);
    }

    @Test void a_free_step_behind_a_closed_led_one_is_out_of_order() {
        TestClass early = TestClass.evening(4).open("welcome");

        assertThat(early.refusalOf(finished(1, "blend")))
                .isEqualTo(new Refusal.OutOfOrder(new StepId("blend"), new StepId("wicks")));
    }

    @Test void a_cure_cannot_end_at_a_seat_that_never_poured() {
        c.minute(20).open("pour");

        assertThat(c.refusalOf(finished(2, "cure"))).isEqualTo(new Refusal.NotPoured(SEAT_2));
    }

    @Test void an_unknown_seat_or_step_is_named() {
        assertThat(c.refusalOf(finished(5, "wicks"))).isEqualTo(new Refusal.NoSuchSeat(new SeatNumber(5), 4));
        assertThat(c.refusalOf(finished(2, "glaze"))).isEqualTo(new Refusal.NoSuchStep(new StepId("glaze")));
    }

    @Test void jumping_over_a_step_leaves_a_visible_gap() {
        c.minute(18).finish(2, "blend");

        assertThat(c.gapsOf(2)).containsExactly("wicks");
        assertThat(c.stepOf(2)).isEqualTo("pour");
        assertThat(c.gapsOf(1)).isEmpty();
    }

    @Test void a_late_tap_fills_the_gap_and_does_not_restart_the_present_step() {
        c.minute(18).finish(2, "blend").minute(20).open("pour").minute(24).finish(2, "wicks");

        assertThat(c.gapsOf(2)).isEmpty();
        assertThat(c.stepOf(2)).isEqualTo("pour");
        assertThat(c.sinceMinute(2)).isEqualTo(20);
    }

    @Test void a_step_left_behind_by_the_class_can_still_be_finished() {
        c.minute(20).open("pour").minute(22).finish(3, "wicks");

        assertThat(c.stepOf(3)).isEqualTo("blend");
    }

    @Test void the_guests_hint_is_not_a_tap() {
        c.minute(11).wish(new ClassEvent.DoneHinted(SEAT_2, new StepId("wicks")));

        assertThat(c.stepOf(2)).isEqualTo("wicks");
        assertThat(c.seat(2).hint()).contains(new Seat.Answer(new StepId("wicks"), c.now()));
        assertThat(c.refusalOf(new ClassEvent.DoneHinted(SEAT_2, new StepId("wicks"))))
                .isEqualTo(new Refusal.AlreadySo(State.TOLD));
    }

    @Test void the_tap_and_the_answer_still_at_it_both_settle_a_hint() {
        ClassEvent hint = new ClassEvent.DoneHinted(SEAT_2, new StepId("wicks"));

        c.wish(hint).wish(new ClassEvent.StillWorking(SEAT_2, new StepId("wicks")));
        assertThat(c.seat(2).hint()).isEmpty();
        assertThat(c.seat(2).stillAt()).containsExactly(new Seat.Answer(new StepId("wicks"), c.now()));

        c.wish(hint).finish(2, "wicks");
        assertThat(c.seat(2).hint()).isEmpty();
        assertThat(c.refusalOf(new ClassEvent.StillWorking(SEAT_2, new StepId("wicks"))))
                .isInstanceOf(Refusal.AlreadyFinished.class);
    }
}

package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PausingTest {
    private final TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks");

    @Test void a_paused_seat_keeps_its_step_and_counts_its_pause() {
        c.minute(8).pause(1).minute(12);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.PAUSED);
        assertThat(c.stepOf(1)).isEqualTo("wicks");
        assertThat(c.minutesIn(1)).isEqualTo(4);
    }

    @Test void the_time_away_is_taken_out_of_the_time_in_the_step() {
        c.minute(8).pause(1).minute(12).resume(1).minute(15);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.sinceMinute(1)).isEqualTo(5);
        assertThat(c.minutesIn(1)).isEqualTo(6);
    }

    @Test void of_a_pause_that_began_in_the_step_before_only_the_part_in_this_step_is_taken_out() {
        c.minute(7).finish(1, "wicks").minute(9).finish(1, "blend").minute(10).pause(1).minute(14).open("pour")
                .minute(18).resume(1).minute(20);

        assertThat(c.sinceMinute(1)).isEqualTo(14);
        assertThat(c.minutesIn(1)).isEqualTo(2);
    }

    @Test void a_tap_made_while_away_means_the_guest_is_back() {
        c.minute(8).pause(1).minute(12).finish(1, "wicks").minute(15);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.minutesIn(1)).isEqualTo(3);
        assertThat(c.seat(1).pauses())
                .containsExactly(new Seat.Pause(TestClass.instant(8), Optional.of(TestClass.instant(12))));
    }

    @Test void a_tap_made_before_the_pause_and_sent_late_does_not_end_it() {
        c.minute(8).pause(1).minute(12).madeAt(7).finish(1, "wicks");

        assertThat(c.standing(1)).isEqualTo(
                new Standing(Standing.Phase.PAUSED, c.standing(1).step(), TestClass.instant(8)));
        assertThat(c.stepOf(1)).isEqualTo("blend");
    }

    @Test void filling_a_gap_does_not_end_a_pause() {
        c.minute(8).finish(1, "blend").minute(9).pause(1).minute(12).finish(1, "wicks");

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.PAUSED);
        assertThat(c.sinceMinute(1)).isEqualTo(9);
    }

    @Test void pausing_twice_and_resuming_without_a_pause_are_refused() {
        ClassEvent pause = new ClassEvent.SeatPaused(new SeatNumber(1));
        ClassEvent resume = new ClassEvent.SeatResumed(new SeatNumber(1));

        assertThat(c.refusalOf(resume)).isEqualTo(new Refusal.NotSo(State.PAUSED));
        assertThat(c.pause(1).refusalOf(pause)).isEqualTo(new Refusal.AlreadySo(State.PAUSED));
    }

    @Test void pauses_that_overlap_after_a_correction_are_taken_out_once() {
        c.minute(6).pause(1).minute(10).resume(1).minute(14).pause(1);
        long second = c.seq();
        c.minute(16).resume(1).retime(second, 8).minute(17);

        assertThat(c.seat(1).pauses())
                .containsExactly(new Seat.Pause(TestClass.instant(6), Optional.of(TestClass.instant(16))));
        assertThat(c.minutesIn(1)).isEqualTo(2);
    }

    @Test void a_pause_within_a_longer_one_adds_nothing() {
        c.minute(10).pause(1).minute(12).resume(1).minute(20).madeAt(7).pause(1).minute(21).resume(1).minute(22);

        assertThat(c.seat(1).pausedWithin(TestClass.instant(5), c.now())).isEqualTo(Duration.ofMinutes(14));
        assertThat(c.minutesIn(1)).isEqualTo(3);
    }

    @Test void a_pause_that_is_said_to_end_before_it_began_took_no_time() {
        c.minute(10).pause(1).minute(12).resume(1).retime(c.seq(), 9);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.minutesIn(1)).isEqualTo(7);
    }

    @Test void leaving_ends_a_pause() {
        c.minute(8).pause(1).minute(12).leave(1).minute(20).arrive(1).minute(21);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WORKING);
        assertThat(c.minutesIn(1)).isEqualTo(1);
    }
}

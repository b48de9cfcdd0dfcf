package benchpace.live;

import static benchpace.live.TestClass.finished;
import static benchpace.live.TestClass.instant;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TimeAndCloseTest {
    private final TestClass c = TestClass.evening(2).open("welcome").minute(5).open("wicks").minute(10);

    @Test void a_tap_from_the_future_is_refused_but_a_clock_a_few_seconds_off_is_not() {
        assertThat(c.madeAt(11).refusalOf(finished(1, "wicks")))
                .isEqualTo(new Refusal.OutsideClass(instant(11), TestClass.START, instant(10)));

        c.madeAt(10 + 5 / 60.0).finish(1, "wicks");
        assertThat(c.minutesIn(1)).isZero();
    }

    @Test void a_tap_from_before_the_class_is_refused() {
        assertThat(c.madeAt(-0.01).refusalOf(finished(1, "wicks"))).isInstanceOf(Refusal.OutsideClass.class);
        assertThat(c.madeAt(0).finish(1, "wicks").stepOf(1)).isEqualTo("blend");
    }

    @Test void taps_at_the_ends_of_time_are_refused_like_any_other() {
        for (Instant at : new Instant[] {Instant.MIN, Instant.MAX}) {
            Command command = new Command("far", "test", at, finished(1, "wicks"));

            assertThat(Rules.decide(c.live(), command, c.now(), Plausibility.ANYTHING)).isInstanceOfSatisfying(
                    Decision.Refused.class,
                    refused -> assertThat(refused.reason()).isInstanceOf(Refusal.OutsideClass.class));
        }
    }

    @Test void a_class_made_after_its_hour_takes_taps_back_to_that_hour_and_no_earlier() {
        TestClass walkIn = TestClass.createdAtMinute(TestPlans.evening(), 2, 10).madeAt(2).open("welcome");

        assertThat(walkIn.live().openedAt(walkIn.live().plan().steps().get(0).id())).contains(instant(2));
        assertThat(walkIn.madeAt(-1).refusalOf(finished(1, "wicks"))).isInstanceOf(Refusal.OutsideClass.class);
    }

    @Test void a_class_made_after_its_hour_counts_from_an_opening_that_was_sent_late() {
        TestClass walkIn = TestClass.createdAtMinute(TestPlans.evening(), 2, 10).madeAt(2).open("wicks");
        assertThat(walkIn.sinceMinute(1)).isEqualTo(2);
        assertThat(walkIn.minutesIn(1)).isEqualTo(8);

        walkIn.madeAt(7).finish(1, "wicks");
        assertThat(walkIn.sinceMinute(1)).isEqualTo(7);
    }

    @Test void a_class_made_a_day_ahead_takes_taps_from_then_on() {
        TestClass ahead = TestClass.createdAtMinute(TestPlans.evening(), 2, -1440);

        assertThat(ahead.live().earliest()).isEqualTo(instant(-1440));
        assertThat(ahead.minute(-60).expect(2).standing(2).phase()).isEqualTo(Standing.Phase.EXPECTED);
    }

    @Test void time_in_a_step_never_runs_backwards_below_nought() {
        c.finish(1, "wicks").minute(2);

        assertThat(c.minutesIn(1)).isZero();
    }

    @Test void a_closed_class_takes_no_taps() {
        c.close();

        assertThat(c.live().closedAt()).contains(c.now());
        assertThat(c.refusalOf(finished(1, "wicks"))).isEqualTo(new Refusal.ClassIsClosed());
        assertThat(c.refusalOf(new ClassEvent.SeatLeft(new SeatNumber(1)))).isEqualTo(new Refusal.ClassIsClosed());
        assertThat(c.refusalOf(new ClassEvent.ClassClosed())).isEqualTo(new Refusal.AlreadySo(State.CLOSED));
        assertThat(c.refusalOf(new ClassEvent.Undone(3))).isEqualTo(new Refusal.ClassIsClosed());
    }

    @Test void undoing_the_close_opens_the_class_again() {
        c.close().undoLast();

        assertThat(c.live().closedAt()).isEmpty();
        assertThat(c.finish(1, "wicks").stepOf(1)).isEqualTo("blend");
        assertThat(c.close().live().closedAt()).isPresent();
    }

    @Test void after_the_close_notes_judgements_and_the_time_of_a_tap_may_still_be_set_right() {
        TestClass late = TestClass.atThePour(2).minute(26).finish(1, "pour");
        long pour = late.seq();
        late.minute(60).close().minute(70).note(1, "took the lid").judgeSet(1).retime(pour, 25);

        assertThat(late.pouredAtMinute(1)).contains(25.0);
        assertThat(late.seat(1).judgedSetAt()).contains(instant(70));
    }

    @Test void a_class_is_made_once() {
        ClassEvent again = c.live().history().get(0).event();

        assertThat(c.refusalOf(again)).isEqualTo(new Refusal.AlreadySo(State.CREATED));
    }

    @Test void a_class_nobody_closed_was_left_open_after_twelve_silent_hours_counted_from_its_beginning() {
        TestClass c = TestClass.evening(3);
        assertThat(c.live().isLeftOpen(TestClass.instant(12 * 60 - 1))).isFalse();
        assertThat(c.live().isLeftOpen(TestClass.instant(12 * 60))).isTrue();

        c.minute(30).open("welcome");
        assertThat(c.live().isLeftOpen(TestClass.instant(12 * 60 + 29))).isFalse();
        assertThat(c.live().isLeftOpen(TestClass.instant(12 * 60 + 30))).isTrue();

        assertThat(c.minute(40).close().live().isLeftOpen(TestClass.instant(13 * 60))).as("closed").isFalse();
    }
}

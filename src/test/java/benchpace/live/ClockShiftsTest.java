package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.ActivityId;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a class wrote down by a wrong clock, once that is set right. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockShiftsTest {
    private static final Duration TWO_HOURS = Duration.ofHours(2);

    private static LiveClass shift(LiveClass live, long from, Duration by) {
        Instant now = live.lastRecordedAt().plus(by);
        return live.apply(new Recorded(live.seq() + 1, "board.clock." + live.seq(), "instructor", now, now,
                new ClassEvent.ClockShifted(from, by)));
    }

    private static Instant at(LiveClass live, long seq) {
        return live.history().get((int) seq - 1).at();
    }

    @Test void all_times_move_and_all_that_lasted_lasts_as_long() {
        TestClass c = TestClass.atThePour(2).minute(24).finish(1, "pour");
        LiveClass moved = shift(c.live(), 1, TWO_HOURS);

        assertThat(moved.createdAt()).isEqualTo(TestClass.START.plus(TWO_HOURS));
        assertThat(moved.startsAt()).as("it began when it was set up").isEqualTo(TestClass.START.plus(TWO_HOURS));
        assertThat(moved.progress().pouredAt(moved.seats().iterator().next()))
                .contains(TestClass.instant(24).plus(TWO_HOURS));
        assertThat(moved.lastRecordedAt()).isEqualTo(TestClass.instant(24).plus(TWO_HOURS));
    }

    @Test void what_was_said_of_times_moves_with_them() {
        TestClass c = TestClass.atThePour(2).minute(24).finish(1, "pour");
        long tap = c.seq();
        c.minute(26).retime(tap, 22).wish(new ClassEvent.ActivityMoved(new ActivityId(
                c.live().plan().activities().get(0).id().value()), TestClass.instant(40)));
        LiveClass moved = shift(c.live(), 1, TWO_HOURS);

        assertThat(moved.corrected().get((int) tap - 1).at()).isEqualTo(TestClass.instant(22).plus(TWO_HOURS));
        assertThat(moved.history().get((int) c.seq() - 1).event()).isInstanceOfSatisfying(
                ClassEvent.ActivityMoved.class, m -> assertThat(m.to())
                        .isEqualTo(TestClass.instant(40).plus(TWO_HOURS)));
    }

    @Test void events_before_the_wrong_clock_stay() {
        TestClass c = TestClass.evening(2).minute(5).open("welcome").minute(130).open("wicks");
        LiveClass moved = shift(c.live(), c.seq(), TWO_HOURS.negated());

        assertThat(at(moved, 2)).isEqualTo(TestClass.instant(5));
        assertThat(at(moved, 3)).isEqualTo(TestClass.instant(10));
        assertThat(moved.startsAt()).isEqualTo(TestClass.START);
    }

    @Test void an_appointment_keeps_its_time_of_day_and_moves_by_whole_days_only() {
        LiveClass early = TestClass.createdAtMinute(TestPlans.evening(), 2, -180).live();

        assertThat(shift(early, 1, TWO_HOURS).startsAt()).isEqualTo(TestClass.START);
        assertThat(shift(early, 1, Duration.ofDays(-365).minusHours(2)).startsAt())
                .isEqualTo(TestClass.START.minus(Duration.ofDays(365)));
    }

    @Test void the_log_keeps_what_was_written() {
        LiveClass live = TestClass.evening(2).minute(5).open("welcome").live();
        LiveClass moved = shift(live, 1, TWO_HOURS);

        assertThat(moved.log().subList(0, 2)).isEqualTo(live.log());
        assertThat(moved.clocks()).isEqualTo(1);
        assertThat(moved.setRightSince(0)).isEqualTo(TWO_HOURS);
        assertThat(moved.setRightSince(1)).isEqualTo(Duration.ZERO);
    }

    @Test void the_gap_that_a_clock_set_ahead_has_left_is_found() {
        TestClass c = TestClass.evening(2).minute(5).open("welcome").minute(125).open("wicks").minute(126)
                .finish(1, "wicks");
        List<Recorded> history = c.live().history();

        assertThat(ClockShifts.first(history, 4, TWO_HOURS.negated())).isEqualTo(3);
        assertThat(ClockShifts.first(history, 4, TWO_HOURS)).as("forwards there is nothing to find").isEqualTo(1);
        assertThat(ClockShifts.first(history, 2, TWO_HOURS.negated()))
                .as("what the program lived through was so long").isEqualTo(1);
        assertThat(ClockShifts.first(history, 4, Duration.ofHours(-3))).as("no gap is so long").isEqualTo(1);
    }

    @Test void a_shift_is_not_undone_and_no_client_may_wish_for_one() {
        TestClass c = TestClass.evening(2).minute(5).open("welcome");
        assertThat(c.refusalOf(new ClassEvent.ClockShifted(1, TWO_HOURS)))
                .isEqualTo(new Refusal.AlreadySo(State.SET_RIGHT));

        LiveClass moved = shift(c.live(), 1, TWO_HOURS);
        Decision undo = Rules.decide(moved, new Command("u", "test", moved.lastRecordedAt(),
                new ClassEvent.Undone(moved.seq())), moved.lastRecordedAt(), Plausibility.ANYTHING);
        assertThat(undo).isEqualTo(new Decision.Refused(new Refusal.CannotUndo(moved.seq())));
    }

    @Test void times_that_cannot_be_are_seen() {
        LiveClass live = TestClass.evening(2).minute(5).open("welcome").live();

        assertThat(ClockShifts.isPossible(live)).isTrue();
        assertThat(ClockShifts.isPossible(shift(live, 1, Duration.ofDays(-20_000)))).isFalse();
        assertThat(ClockShifts.isPossible(shift(live, 2, TWO_HOURS.negated()))).as("before the one before").isFalse();
    }
}

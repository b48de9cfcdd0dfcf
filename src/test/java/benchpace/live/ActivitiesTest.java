package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ActivitiesTest {
    private static final ActivityId LABELS = new ActivityId("labels");
    private static final ClassEvent OPENED = new ClassEvent.ActivityOpened(LABELS);
    private static final ClassEvent CLOSED = new ClassEvent.ActivityClosed(LABELS);
    private static final ClassEvent SKIPPED = new ClassEvent.ActivitySkipped(LABELS);
    private final TestClass c = TestClass.atThePour(4).minute(30);

    private ActivityRun labels() {
        return c.live().activity(LABELS);
    }

    private static ClassEvent joined(int seat) {
        return new ClassEvent.ActivityJoined(new SeatNumber(seat), LABELS);
    }

    @Test void an_activity_is_opened_and_closed_once() {
        assertThat(c.refusalOf(CLOSED)).isEqualTo(new Refusal.NotSo(State.OPEN));
        assertThat(c.wish(OPENED).refusalOf(OPENED)).isEqualTo(new Refusal.AlreadySo(State.OPEN));
        assertThat(labels().open()).isTrue();

        assertThat(c.wish(CLOSED).refusalOf(CLOSED)).isEqualTo(new Refusal.NotSo(State.OPEN));
        assertThat(labels().open()).isFalse();
    }

    @Test void an_activity_that_was_closed_may_open_again() {
        c.wish(OPENED).minute(40).wish(CLOSED).minute(50).wish(OPENED);

        assertThat(labels().open()).isTrue();
        assertThat(labels().openedAt()).contains(TestClass.instant(50));
    }

    @Test void nobody_is_seated_beyond_the_places() {
        c.wish(OPENED).wish(joined(1)).wish(joined(2));

        assertThat(c.refusalOf(joined(3))).isEqualTo(new Refusal.ActivityFull(LABELS, 2));
        assertThat(c.quit(1, "labels").wish(joined(3)).seat(3).activity()).isPresent();
    }

    @Test void a_seat_takes_part_in_one_activity_at_a_time() {
        c.wish(joined(1)).minute(35).join(1, "refreshments");

        assertThat(c.seat(1).activity()).contains(
                Stint.since(new ActivityId("refreshments"), TestClass.instant(35)));
        assertThat(c.seat(1).stints()).first()
                .isEqualTo(new Stint(LABELS, TestClass.instant(30), TestClass.instant(35)));
    }

    @Test void a_tap_told_late_begins_a_stint_at_its_own_time_but_not_before_what_the_log_had_said() {
        c.wish(joined(1)).minute(45).quit(1, "labels").minute(50).madeAt(47).join(1, "refreshments");
        c.wish(joined(2)).minute(55).quit(2, "labels").minute(60).madeAt(40).join(2, "refreshments");

        assertThat(c.seat(1).stints()).extracting(Stint::from)
                .containsExactly(TestClass.instant(30), TestClass.instant(47));
        assertThat(c.seat(2).stints()).last()
                .isEqualTo(Stint.since(new ActivityId("refreshments"), TestClass.instant(55)));
    }

    @Test void a_quit_told_late_ends_a_stint_no_earlier_than_it_began() {
        c.wish(joined(1)).minute(40).madeAt(20).quit(1, "labels");

        assertThat(c.seat(1).stints()).containsExactly(
                new Stint(LABELS, TestClass.instant(30), TestClass.instant(30)));
    }

    @Test void joining_twice_and_quitting_what_was_not_joined_are_refused() {
        c.wish(joined(1));

        assertThat(c.refusalOf(joined(1))).isEqualTo(new Refusal.AlreadySo(State.TAKING_PART));
        assertThat(c.refusalOf(new ClassEvent.ActivityQuit(new SeatNumber(2), LABELS)))
                .isEqualTo(new Refusal.NotSo(State.TAKING_PART));
    }

    @Test void closing_an_activity_ends_it_for_everybody_in_it() {
        c.wish(OPENED).wish(joined(1)).join(2, "refreshments").wish(CLOSED);

        assertThat(c.seat(1).activity()).isEmpty();
        assertThat(c.seat(1).stints()).extracting(Stint::activity).containsExactly(LABELS);
        assertThat(c.seat(2).activity()).isPresent();
    }

    @Test void who_goes_home_frees_the_place() {
        c.wish(joined(1)).wish(joined(2)).leave(1);

        assertThat(c.wish(joined(3)).seat(3).activity()).isPresent();
        assertThat(c.refusalOf(joined(1))).isEqualTo(new Refusal.NotAtTable(new SeatNumber(1), true));
    }

    @Test void guests_who_share_a_candle_join_one_by_one() {
        c.pair(1, 2).wish(joined(2));

        assertThat(c.seat(1).activity()).isEmpty();
        assertThat(c.seat(2).activity()).isPresent();
    }

    @Test void an_open_activity_is_closed_not_skipped() {
        assertThat(c.wish(OPENED).refusalOf(SKIPPED)).isEqualTo(new Refusal.AlreadySo(State.OPEN));
    }

    @Test void an_activity_left_out_tonight_may_be_taken_up_after_all() {
        c.wish(SKIPPED);
        assertThat(labels().skipped()).isTrue();
        assertThat(c.refusalOf(SKIPPED)).isEqualTo(new Refusal.AlreadySo(State.SKIPPED));

        c.wish(OPENED);
        assertThat(labels().skipped()).isFalse();
        assertThat(labels().open()).isTrue();
    }

    @Test void an_activity_left_out_after_it_was_closed_is_not_open_when_the_closing_is_undone() {
        c.wish(OPENED).wish(CLOSED);
        long closing = c.seq();
        c.wish(SKIPPED).undo(closing);

        assertThat(labels().skipped()).isTrue();
        assertThat(labels().open()).isFalse();
    }

    @Test void longer_is_added_up_within_reason() {
        c.wish(new ClassEvent.ActivityExtended(LABELS, 5)).wish(new ClassEvent.ActivityExtended(LABELS, 10));

        assertThat(labels().extension()).isEqualTo(Duration.ofMinutes(15));
        assertThat(c.refusalOf(new ClassEvent.ActivityExtended(LABELS, 0)))
                .isEqualTo(new Refusal.Absurd("minutes", 0, 1, 60));
        assertThat(c.refusalOf(new ClassEvent.ActivityExtended(LABELS, 61))).isInstanceOf(Refusal.Absurd.class);
    }

    @Test void an_activity_is_moved_within_the_evening_and_before_it_opens() {
        c.wish(new ClassEvent.ActivityMoved(LABELS, TestClass.instant(55)));
        assertThat(labels().move().map(ActivityRun.Move::to)).contains(TestClass.instant(55));

        assertThat(c.refusalOf(new ClassEvent.ActivityMoved(LABELS, TestClass.instant(20))))
                .isInstanceOf(Refusal.MovedOutsideClass.class);
        assertThat(c.refusalOf(new ClassEvent.ActivityMoved(LABELS, TestClass.instant(24 * 60))))
                .isInstanceOf(Refusal.MovedOutsideClass.class);
        assertThat(c.wish(OPENED).refusalOf(new ClassEvent.ActivityMoved(LABELS, TestClass.instant(60))))
                .isEqualTo(new Refusal.AlreadySo(State.OPEN));
    }

    @Test void an_activity_the_plan_does_not_have_is_named() {
        ActivityId dance = new ActivityId("dance");

        assertThat(c.refusalOf(new ClassEvent.ActivityOpened(dance))).isEqualTo(new Refusal.NoSuchActivity(dance));
        assertThat(c.refusalOf(new ClassEvent.ActivityJoined(new SeatNumber(1), dance)))
                .isEqualTo(new Refusal.NoSuchActivity(dance));
    }
}

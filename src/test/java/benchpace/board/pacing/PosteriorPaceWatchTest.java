package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.board.Stories;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.view.Watched;
import benchpace.live.ClassEvent;
import benchpace.live.TestClass;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the board says of seats: the sentences a teacher would expect, and the same ones after a restart. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PosteriorPaceWatchTest {
    private static final SeatNumber SEAT_4 = new SeatNumber(4);

    // ---- who is flagged, and why

    @Test void a_seat_stuck_while_the_others_wait_is_behind_with_its_reason_and_its_price() {
        Watched board = new Watched(Stories.stuckAtWicks(6));

        assertThat(board.at(7).flags()).isEmpty();
        SeatFlag flag = board.flag(20, 4).orElseThrow();

        assertThat(flag.level()).isEqualTo(SeatFlag.Level.BEHIND);
        assertThat(flag.seat()).isEqualTo(4);
        assertThat(flag.step()).isEqualTo("Step wicks");
        assertThat(flag.minutesOver()).isPositive();
        assertThat(flag.priceMinutes()).isPositive();
        assertThat(board.at(20).mostUrgent()).containsExactly(SEAT_4);
    }

    @Test void slipping_comes_before_behind_and_is_a_question() {
        Watched board = new Watched(Stories.stuckAtWicks(6));
        SeatFlag first = null;
        for (double minute = 7; first == null && minute < 20; minute += 0.5) {
            first = board.flag(minute, 4).orElse(null);
        }

        assertThat(first.level()).isEqualTo(SeatFlag.Level.SLIPPING);
        assertThat(first.step()).isEqualTo("Step wicks");
    }

    @Test void a_class_in_step_is_quiet() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");
        Stories.othersTap(c, 6.5, 0, "wicks").minute(8).open("mix");
        Watched board = new Watched(Stories.othersTap(c, 12, 0, "mix"));

        for (double minute = 0; minute < 13; minute += 0.5) {
            assertThat(board.at(minute).flags()).as("minute %s", minute).isEmpty();
        }
    }

    @Test void minutes_are_counted_from_the_opening_of_a_led_step_and_from_the_end_of_a_talk() {
        TestClass c = TestClass.evening(6).open("welcome");
        Watched talk = new Watched(c);
        for (double minute = 0; minute < 30; minute += 0.5) {
            assertThat(talk.at(minute).flags()).as("nobody is slow at listening").isEmpty();
        }
        c.minute(30).open("wicks");

        assertThat(new Watched(c).at(33).flags()).as("half of what the plan gives the wicks").isEmpty();
    }

    @Test void the_tap_that_finishes_the_step_ends_the_flag_at_once() {
        Watched board = new Watched(Stories.stuckAtWicks(6).minute(20.2).finish(4, "wicks"));

        assertThat(board.flag(20.1, 4)).isPresent();
        assertThat(board.flag(20.2, 4)).isEmpty();
    }

    @Test void still_at_it_ends_the_question() {
        TestClass c = Stories.stuckAtWicks(6);
        double asked = firstFlag(new Watched(c), SeatFlag.Level.SLIPPING);
        c.minute(asked + 0.1).wish(new ClassEvent.StillWorking(SEAT_4, new StepId("wicks")));

        assertThat(new Watched(c).flag(asked + 0.1, 4)).isEmpty();
    }

    @Test void sorted_silences_the_call_and_keeps_the_fact_with_who_was_there_and_when() {
        TestClass c = Stories.stuckAtWicks(6).minute(15).claim(4, "MO").minute(17);
        Watched board = new Watched(c.sorted(4, "MO"));
        ClassView view = board.view(19);

        assertThat(view.help()).isEmpty();
        SeatView seat = view.seat(4);
        assertThat(seat.mark()).isEqualTo(SeatView.Mark.SLOW);
        assertThat(seat.flag()).isEmpty();
        Eased eased = seat.eased().orElseThrow();
        assertThat(eased.flag().minutesOver()).isGreaterThan(8);
        assertThat(eased.helper()).isEqualTo("MO");
        assertThat(eased.at()).isEqualTo(TestClass.instant(17));
    }

    @Test void a_seat_that_stays_where_it_was_after_sorted_calls_again_after_five_minutes() {
        TestClass c = Stories.stuckAtWicks(6).minute(15).claim(4, "MO").minute(17);
        Watched board = new Watched(c.sorted(4, "MO"));

        assertThat(board.view(21.5).help()).isEmpty();
        assertThat(board.view(22).help()).extracting(ClassView.HelpView::seat).containsExactly(4);
        assertThat(board.view(22).seat(4).eased()).isEmpty();
    }

    @Test void a_seat_that_moves_on_after_sorted_is_on_pace() {
        TestClass c = Stories.stuckAtWicks(6).minute(15).claim(4, "MO").minute(17);
        c.sorted(4, "MO").minute(18).finish(4, "wicks");

        assertThat(new Watched(c).view(19).seat(4).eased()).isEmpty();
        assertThat(new Watched(c).view(19).seat(4).flag()).isEmpty();
    }

    @Test void nobody_is_named_as_longest_at_a_step_while_all_have_been_at_it_as_long() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");
        assertThat(new Watched(c).view(5).longest()).isEmpty();

        for (int seat : new int[] {1, 2, 3, 5, 6}) {
            c.minute(5 + seat * 0.1).finish(seat, "wicks");
        }
        assertThat(new Watched(c).view(6).longest()).contains(new ClassView.LongestView(4, "Step wicks"));
    }

    @Test void the_seat_where_walking_over_saves_most_comes_first() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 8)).minute(3).open("wicks");
        for (int seat : new int[] {1, 2, 3, 5, 6}) {
            c.minute(6 + seat * 0.1).finish(seat, "wicks");
        }
        c.minute(14).open("mix").minute(14.2).finish(7, "wicks");
        Stories.othersTap(c, 18, 4, "mix");

        List<SeatNumber> urgent = new Watched(c).at(26).mostUrgent();

        assertThat(urgent).first().isEqualTo(SEAT_4);
    }

    // ---- not judged for time they did not have

    @Test void a_seat_that_left_is_not_judged_and_does_not_hold_home_time() {
        TestClass c = Stories.stuckAtWicks(6).minute(20.1).leave(4);
        Watched board = new Watched(c);
        Pace before = board.at(20);

        assertThat(before.flags()).containsKey(SEAT_4);
        assertThat(board.at(20.1).flags()).isEmpty();
        assertThat(board.at(20.1).home().p50()).isBefore(before.home().p50());
    }

    @Test void a_seat_that_paused_is_not_judged_for_the_minutes_away() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks").minute(4).pause(4);
        Stories.othersTap(c, 6.5, 4, "wicks").minute(20).resume(4);
        Watched board = new Watched(c);

        for (double minute = 4; minute < 21; minute += 0.5) {
            assertThat(board.flag(minute, 4)).as("minute %s", minute).isEmpty();
        }
    }

    @Test void a_seat_that_arrives_late_is_judged_from_its_arrival_on() {
        TestClass c = TestClass.createdAtMinute(Stories.plan(), 6, -5).expect(4);
        Stories.othersTap(c, 2, 4, "vessel").minute(3).open("wicks");
        Stories.othersTap(c, 6.5, 4, "wicks").minute(20).arrive(4);
        Watched board = new Watched(c);

        for (double minute = 0; minute < 22; minute += 0.5) {
            assertThat(board.flag(minute, 4)).as("minute %s", minute).isEmpty();
        }
        assertThat(board.at(19).home().driver()).as("the class waits for it").contains(new HomeTime.Driver(4, false));
    }

    @Test void a_seat_that_shares_a_candle_is_never_flagged_and_its_candle_is_judged_once() {
        TestClass c = TestClass.createdAtMinute(Stories.plan(), 6, -5).pair(3, 4);
        Stories.othersTap(c, 2, 3, "vessel").minute(3).open("wicks");
        Watched board = new Watched(Stories.othersTap(c, 6.5, 3, "wicks"));

        assertThat(Watched.levels(board.at(25))).containsOnlyKeys(3);
    }

    @Test void the_guest_who_goes_on_with_the_candle_of_a_pair_goes_on_with_its_time() {
        TestClass c = TestClass.createdAtMinute(Stories.plan(), 6, -5).pair(3, 4);
        Stories.othersTap(c, 2, 0, "vessel").minute(3).open("wicks");
        Stories.othersTap(c, 6.5, 3, "wicks").minute(20.1).leave(3);
        Watched board = new Watched(c);

        assertThat(Watched.levels(board.at(20))).containsOnlyKeys(3);
        assertThat(Watched.levels(board.at(21))).containsOnlyKeys(4);
    }

    @Test void a_seat_waiting_for_a_step_that_is_closed_is_not_judged() {
        Watched board = new Watched(Stories.vessel(TestClass.of(Stories.plan(), 6)));

        for (double minute = 3; minute < 25; minute += 1) {
            assertThat(board.at(minute).flags()).isEmpty();
        }
    }

    @Test void nobody_is_judged_before_the_class_or_after_it_was_closed_or_left_open() {
        TestClass before = TestClass.createdAtMinute(Stories.plan(), 6, -60);
        assertThat(new Watched(before).afterRestart(-30).flags()).isEmpty();

        TestClass c = Stories.stuckAtWicks(6);
        assertThat(new Watched(c).afterRestart(7 + 12 * 60).flags()).isNotEmpty();
        assertThat(new Watched(c).afterRestart(9 + 12 * 60).flags()).isEmpty();
        assertThat(new Watched(c.minute(20).close()).afterRestart(21).flags()).isEmpty();
    }

    @Test void no_taps_for_long_is_said_of_the_tablet_and_not_of_everybody() {
        Plan freely = TestPlans.of(
                TestPlans.step("vessel", StepKind.HANDS_ON, Opening.FREE, 2),
                TestPlans.step("wicks", StepKind.HANDS_ON, Opening.FREE, 4),
                TestPlans.step("pour", StepKind.POUR, Opening.FREE, 3));
        Watched board = new Watched(Stories.othersTap(TestClass.of(freely, 8), 2, 0, "vessel"));
        Pace pace = board.at(16);

        assertThat(pace.flags()).isEmpty();
        double lastTap = 2 + 7 * 0.15;
        assertThat(pace.silence()).get().satisfies(quiet ->
                assertThat(quiet.toMillis()).isCloseTo(Math.round((16 - lastTap) * 60_000), within(1L)));
    }

    @Test void a_table_that_everybody_left_is_watched_without_a_word() {
        TestClass left = Stories.stuckAtWicks(3);
        left.minute(10).leave(1).leave(2).leave(3);
        assertThat(new Watched(left).view(20).help()).isEmpty();
    }

    @Test void a_shared_candle_handed_back_and_forth_is_watched_like_any_other() {
        TestClass c = TestClass.of(Stories.plan(), 4).minute(1).pair(1, 2).minute(2).finish(1, "vessel").minute(3)
                .leave(1);
        c.minute(4).arrive(1).minute(5).unpair(1).minute(6).open("wicks").minute(9).finish(2, "wicks").minute(10)
                .leave(2);
        Watched board = new Watched(c);

        for (double minute = 0; minute < 20; minute += 0.5) {
            assertThat(board.at(minute)).as("minute %s", minute).isEqualTo(board.afterRestart(minute));
        }
    }

    // ---- a function of the record alone

    @Test void a_board_started_anew_says_the_same_as_one_that_watched_all_the_while() {
        TestClass c = Stories.stuckAtWicks(6).minute(9).claim(4, "MO").minute(12).open("mix");
        Watched board = new Watched(Stories.othersTap(c, 17, 4, "mix"));

        for (double minute = 0; minute < 26; minute += 0.7) {
            assertThat(board.at(minute)).as("minute %s", minute).isEqualTo(board.afterRestart(minute));
        }
    }

    @Test void a_tap_taken_back_leaves_the_board_as_if_it_had_never_been() {
        TestClass c = Stories.stuckAtWicks(6).minute(12.2).finish(4, "wicks");
        Watched board = new Watched(c);
        Pace without = new Watched(Stories.stuckAtWicks(6)).at(20);
        assertThat(board.at(12.5).flags()).isEmpty();

        c.minute(13.3).undoLast();

        assertThat(board.at(20)).isEqualTo(without).isEqualTo(board.afterRestart(20));
    }

    @Test void a_tap_that_comes_late_counts_from_when_it_was_made() {
        TestClass c = Stories.stuckAtWicks(6);
        Watched board = new Watched(c);
        assertThat(board.flag(15, 4)).isPresent();

        c.minute(15.2).madeAt(6.4).finish(4, "wicks");

        assertThat(board.at(15.2).flags()).isEmpty();
        assertThat(board.at(18)).isEqualTo(board.afterRestart(18));
    }

    @Test void the_board_looks_again_at_the_next_half_minute_while_somebody_is_at_work() {
        Watched board = new Watched(Stories.stuckAtWicks(6));

        assertThat(board.at(10.2).nextChange()).map(Watched::minuteOf).contains(10.5);
        assertThat(board.at(10.5).nextChange()).map(Watched::minuteOf).contains(11.0);
    }

    // ---- home time

    @Test void home_time_is_a_range_around_what_the_class_needs_and_says_what_it_hangs_on() {
        TestClass c = Stories.stuckAtWicks(6);
        HomeTime home = new Watched(c).at(20).home();

        assertThat(home.p10()).isBefore(home.p50());
        assertThat(home.p50()).isBefore(home.p90());
        assertThat(home.driver()).contains(new HomeTime.Driver(4, false));
        assertThat(home.basis()).isEqualTo(HomeTime.Basis.PACE_AND_PLANNED_CURE);
        assertThat(home.promised()).isEqualTo(TestClass.instant(78));
        assertThat(home.p50()).as("20 min gone, mix, pour and an hour of cure to come")
                .isAfter(TestClass.instant(85)).isBefore(TestClass.instant(110));
    }

    @Test void once_every_candle_is_judged_by_hand_home_time_is_when_the_last_one_was() {
        TestClass c = TestClass.of(Stories.plan(), 2);
        for (String step : List.of("wicks", "mix", "pour")) {
            c.open(step);
        }
        c.minute(15).finish(1, "pour").finish(2, "pour").minute(70).judgeSet(1).minute(74).judgeSet(2);
        HomeTime home = new Watched(c).afterRestart(80).home();

        assertThat(List.of(home.p10(), home.p50(), home.p90())).allSatisfy(t ->
                assertThat(Duration.between(t, TestClass.instant(74)).abs()).isLessThan(Duration.ofSeconds(1)));
        assertThat(home.driver()).isEmpty();
        assertThat(home.basis()).isEqualTo(HomeTime.Basis.HAND_TEST);
    }

    @Test void once_every_candle_is_in_hand_home_hangs_on_none_of_them_tried_or_trimmed() {
        TestClass c = TestClass.of(Stories.plan(), 2);
        for (String step : List.of("wicks", "mix", "pour")) {
            c.open(step);
        }
        c.minute(15).finish(1, "pour").finish(2, "pour").minute(70).judgeSet(1).open("trim").minute(74)
                .finish(2, "trim");
        HomeTime home = new Watched(c).afterRestart(75).home();

        assertThat(home.driver()).isEmpty();
        assertThat(home.basis()).isEqualTo(HomeTime.Basis.HAND);
    }

    @Test void before_anybody_has_tapped_home_time_rests_on_the_plan() {
        HomeTime home = new Watched(TestClass.createdAtMinute(Stories.plan(), 6, -60)).afterRestart(-30).home();

        assertThat(home.basis()).isEqualTo(HomeTime.Basis.PLAN);
        assertThat(home.p50()).isAfter(TestClass.instant(70)).isBefore(TestClass.instant(100));
    }

    @Test void home_hangs_on_the_flagged_seat_that_alone_holds_the_step() {
        for (double minute : new double[] {25, 45, 60, 90}) {
            TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 24));
            c.minute(3.8).open("wicks");
            Pace pace = new Watched(Stories.othersTap(c, 6.5, 22, "wicks")).afterRestart(minute);

            assertThat(pace.flags()).containsOnlyKeys(new SeatNumber(22));
            assertThat(pace.home().driver()).as("minute %s", minute)
                    .contains(new HomeTime.Driver(22, false));
        }
    }

    @Test void home_hangs_on_nobody_in_particular_while_several_hold_the_step() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");
        Stories.othersTap(c, 6.5, 4, "wicks");
        Pace pace = new Watched(c.minute(7).open("mix").finish(1, "mix")).afterRestart(20);

        assertThat(pace.home().driver()).as("as the forecast finds").map(HomeTime.Driver::poured).contains(false);
    }

    // ---- opening the next step

    @Test void the_next_step_says_what_leaving_each_unticked_seat_costs() {
        TestClass c = Stories.stuckAtWicks(6).minute(14).pause(5);
        ClassView.NextView next = new Watched(c).view(16).next().orElseThrow();

        assertThat(next.leavesBehind()).containsExactly(4);
        ClassView.LeftRow row = next.rows().get(0);
        assertThat(row.judged()).isTrue();
        assertThat(row.finishStep()).isEqualTo("wicks");
        assertThat(row.remainingMinutes()).isPositive();
        assertThat(row.leaveMinutes()).isPositive();
        assertThat(row.doneProbability()).isBetween(0.0, 1.0);
    }

    @Test void one_tick_brings_a_seat_that_is_two_steps_back_up_to_the_others() {
        TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks").minute(11);
        c.finish(1, "wicks").finish(1, "blend").finish(2, "blend");
        ClassView.LeftRow row = new Watched(c).view(12).next().orElseThrow().rows().get(0);

        assertThat(row.seat()).isEqualTo(3);
        assertThat(row.finishStep()).isEqualTo("blend");
        assertThat(row.atStep()).isEqualTo("wicks");
    }

    private static double firstFlag(Watched board, SeatFlag.Level level) {
        for (double minute = 0; minute < 40; minute += 0.5) {
            if (board.flag(minute, 4).filter(f -> f.level() == level).isPresent()) {
                return minute;
            }
        }
        throw new AssertionError("never " + level);
    }
}

package benchpace.board.waiting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.breaks.Assignment;
import benchpace.live.ClassEvent;
import benchpace.live.Stint;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.words.ChangeWords;
import benchpace.words.Times;
import benchpace.words.WaitWords;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The wait on a live board. The clock times are chosen by hand; there is no outside source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitChainTest {
    private static final ActivityId BROWSE = new ActivityId("browse");
    private static WaitEvening poured() {
        return new WaitEvening(8).pour(40, 1, 2, 3, 4).pour(42, 5, 6).pour(44, 7, 8);
    }

    @Test void nothing_is_planned_before_the_first_pour() {
        WaitView view = new WaitEvening(4).view(20);

        assertThat(view.plannedAt()).isEmpty();
        assertThat(view.activities()).hasSameSizeAs(WaitEvening.PLAN.activities());
    }

    @Test void every_waiting_seat_has_a_strip_and_the_wait_something_to_call_out() {
        WaitView view = poured().view(45);

        assertThat(view.strips()).extracting(WaitView.StripView::seat).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(view.calls()).isNotEmpty();
        assertThat(view.calls()).extracting(c -> WaitWords.what(c.event())).contains("First candles ready");
        assertThat(view.idle().planned()).isLessThanOrEqualTo(view.idle().unplanned());
    }

    @Test void pours_that_are_told_late_are_charged_to_the_plan_and_to_first_come_first_served_alike() {
        for (int told = 45; told < 75; told += 9) {
            WaitEvening evening = new WaitEvening(8);
            for (int seat = 1; seat <= 8; seat++) {
                evening.late(40 + seat / 2.0, told, new ClassEvent.StepFinished(new SeatNumber(seat),
                        WaitEvening.PLAN.pour().orElseThrow().id()));
            }
            WaitView view = evening.view(told);

            assertThat(view.idle().planned()).as("told at minute %d", told)
                    .isLessThanOrEqualTo(view.idle().unplanned());
            assertThat(view.strips()).allSatisfy(s -> assertThat(s.idleUnplanned())
                    .isGreaterThanOrEqualTo(s.idleSoFar()));
            assertThat(view.idle().soFar()).isEqualTo(view.strips().stream().mapToInt(WaitView.StripView::idleSoFar)
                    .sum());
        }
    }

    @Test void a_board_started_anew_comes_to_the_plan_and_the_announcements_of_the_one_that_ran() {
        WaitEvening evening = new WaitEvening(8);
        WaitChain running = WaitEvening.chain();
        double[] pours = {40.3, 40.9, 41.5, 44.2, 44.25, 47.7, 49.0, 52.4};
        int next = 0;
        for (double minute = 39.9; minute < 115; minute += 0.37) {
            while (next < pours.length && pours[next] <= minute) {
                evening.pour(pours[next], next + 1);
                next++;
            }
            if (Math.abs(minute - 60) < 0.2) {
                evening.record(minute, new ClassEvent.SeatPaused(new SeatNumber(3)));
            }
            WaitView seen = running.at(evening.live(), WaitEvening.at(minute));
            if (Math.round(minute * 100) % 29 == 0) {
                assertThat(evening.view(minute)).as("minute %s", minute).isEqualTo(seen);
            }
        }
        assertThat(evening.view(115)).isEqualTo(running.at(evening.live(), WaitEvening.at(115)));
    }

    @Test void a_tap_written_down_while_its_minute_was_planned_counts_from_its_own_time() {
        WaitEvening evening = poured();
        WaitChain running = WaitEvening.chain();
        running.at(evening.live(), WaitEvening.at(50));
        evening.record(49.9, new ClassEvent.SeatPaused(new SeatNumber(2)));

        assertThat(running.at(evening.live(), WaitEvening.at(50))).isEqualTo(evening.view(50));
    }

    /** What a minute told that nobody should have been told of is not held to, once the older event is known. */
    @Test void something_started_before_a_minute_that_was_planned_already_is_planned_as_if_known_in_time() {
        for (int minute : new int[] {50, 52}) {
            WaitEvening evening = mixed();
            WaitChain running = WaitEvening.chain();
            running.at(evening.live(), WaitEvening.at(minute));
            evening.record(minute - 0.1, new ClassEvent.ActivityOpened(new ActivityId("drinks")));

            assertThat(running.at(evening.live(), WaitEvening.at(minute))).isEqualTo(evening.view(minute));
        }
    }

    private static WaitEvening mixed() {
        WaitEvening evening = new WaitEvening(4);
        for (int seat = 1; seat <= 4; seat++) {
            evening.finish(36, "mix", seat);
        }
        return evening.pour(40, 1, 2).pour(42, 3).pour(44, 4);
    }

    @ParameterizedTest
    @ValueSource(ints = {52, 170})
    void a_clock_that_is_set_back_takes_back_what_was_planned_by_it(int wrong) {
        WaitEvening evening = new WaitEvening(3).pour(40, 1, 2).pour(42, 3);
        WaitChain running = WaitEvening.chain();
        running.at(evening.live(), WaitEvening.at(46));
        running.at(evening.live(), WaitEvening.at(wrong));

        assertThat(running.at(evening.live(), WaitEvening.at(50))).isEqualTo(evening.view(50));
        assertThat(running.nextChange(evening.live(), WaitEvening.at(50))).contains(WaitEvening.at(51));
    }

    @Test void what_was_told_stays_while_nothing_happens() {
        WaitEvening evening = poured();
        WaitChain chain = WaitEvening.chain();
        for (int minute = 46; minute < 100; minute++) {
            assertThat(chain.at(evening.live(), WaitEvening.at(minute)).changes()).as("minute %d", minute).isEmpty();
        }
    }

    @Test void a_break_moved_by_the_instructor_is_told_as_moved() {
        WaitEvening evening = poured();
        WaitView before = evening.view(48);
        WaitView.CallView first = before.calls().stream().filter(WaitView.CallView::told)
                .filter(c -> c.state() == WaitView.CallState.AHEAD).findFirst().orElseThrow();
        String name = WaitWords.what(first.event());
        String activity = before.activities().stream().filter(a -> a.name().equals(name)).findFirst()
                .orElseThrow().id();
        evening.record(48, new ClassEvent.ActivityMoved(new ActivityId(activity),
                first.at().plus(Duration.ofMinutes(5))));

        WaitView after = evening.view(48);

        assertThat(after.changes()).isNotEmpty();
        assertThat(words(after.changes().get(0))).containsIgnoringCase("as you moved")
                .contains(name);
        assertThat(evening.view(59).changes()).as("after ten minutes it is old").isEmpty();
    }

    @Test void what_is_off_because_the_instructor_started_something_else_says_so_in_one_note() {
        WaitEvening evening = poured();
        evening.record(48, new ClassEvent.ActivityOpened(new ActivityId("drinks")));

        WaitView after = evening.view(48.5);

        assertThat(after.changes()).extracting(WaitChainTest::words)
                .noneMatch(words -> words.contains("poured late") || words.contains("no place"))
                .filteredOn(words -> words.contains("s you started Drinks and something sweet")).hasSize(1);
    }

    @Test void a_pour_that_is_late_is_still_the_reason_where_it_is_one() {
        WaitEvening evening = poured();
        int seat = evening.view(46).calls().stream().filter(WaitView.CallView::told)
                .filter(c -> c.state() == WaitView.CallState.AHEAD).findFirst().orElseThrow().seats().get(0);
        evening.record(46.5, new ClassEvent.PouredAgain(new SeatNumber(seat)));
        evening.finish(60, "centre", seat);

        assertThat(evening.view(60).changes()).extracting(WaitChainTest::words)
                .noneMatch(words -> words.contains("you started"));
    }

    @Test void a_skipped_activity_is_not_called_out_any_more() {
        WaitEvening evening = poured();
        evening.record(46, new ClassEvent.ActivitySkipped(new ActivityId("drinks")));

        WaitView view = evening.view(47);

        assertThat(view.calls()).noneMatch(c -> WaitWords.what(c.event()).startsWith("Drinks"));
        assertThat(view.activities()).filteredOn(WaitView.ActivityView::skipped).hasSize(1);
    }

    @Test void a_tapped_visit_stands_on_the_strip_until_it_is_ended() {
        WaitEvening evening = poured().join(47, 1, "browse");

        WaitView.StripView strip = evening.view(50).strip(1).orElseThrow();

        assertThat(strip.now()).map(WaitView.PartView::activity).contains("browse");
        evening.record(51, new ClassEvent.ActivityQuit(new SeatNumber(1), new ActivityId("browse")));
        assertThat(evening.view(52).strip(1).orElseThrow().now()).map(WaitView.PartView::activity)
                .isNotEqualTo(java.util.Optional.of("browse"));
    }

    @Test void an_opening_told_after_the_closing_opens_again_for_the_plan_as_for_the_screens() {
        WaitEvening evening = poured().record(45, new ClassEvent.ActivityOpened(BROWSE))
                .record(49, new ClassEvent.ActivityClosed(BROWSE));
        assertThat(browsing(evening.view(50)).open()).isFalse();
        assertThat(goesTo(evening.view(50), "browse")).isFalse();

        evening.late(47, 50, new ClassEvent.ActivityOpened(BROWSE));

        assertThat(evening.live().activity(BROWSE).offered()).isTrue();
        assertThat(browsing(evening.view(50)).open()).isTrue();
        assertThat(browsing(evening.view(50)).openedAt()).contains(WaitEvening.at(47));
        assertThat(goesTo(evening.view(50), "browse")).isTrue();
    }

    @Test void a_closing_told_after_the_next_opening_closes_for_the_plan_as_for_the_screens() {
        WaitEvening evening = poured().record(45, new ClassEvent.ActivityOpened(BROWSE))
                .record(49, new ClassEvent.ActivityOpened(BROWSE)).late(47, 50, new ClassEvent.ActivityClosed(BROWSE));

        assertThat(browsing(evening.view(50)).open()).isFalse();
        assertThat(goesTo(evening.view(50), "browse")).isFalse();
    }

    @Test void a_visit_told_after_the_next_one_began_is_the_one_on_every_screen() {
        WaitEvening evening = poured().join(47, 1, "browse")
                .late(45, 49, new ClassEvent.ActivityJoined(new SeatNumber(1), new ActivityId("drinks")));

        WaitView view = evening.view(50);

        assertThat(evening.live().seat(new SeatNumber(1)).orElseThrow().activity())
                .map(Stint::activity)
                .contains(new ActivityId("drinks"));
        assertThat(view.strip(1).orElseThrow().now()).map(WaitView.PartView::activity).contains("drinks");
        assertThat(view.activities()).filteredOn(a -> a.seats().contains(1)).extracting(WaitView.ActivityView::id)
                .containsExactly("drinks");
        assertThat(view.activities()).filteredOn(a -> a.now().contains(1)).extracting(WaitView.ActivityView::id)
                .containsExactly("drinks");
    }

    @Test void leaving_one_activity_told_after_the_next_one_began_ends_nothing_there() {
        WaitEvening evening = poured().join(45, 1, "browse").join(47, 1, "drinks")
                .late(46, 49, new ClassEvent.ActivityQuit(new SeatNumber(1), BROWSE));

        assertThat(evening.view(50).strip(1).orElseThrow().now()).map(WaitView.PartView::activity).contains("drinks");
        assertThat(evening.live().seat(new SeatNumber(1)).orElseThrow().activity())
                .map(Stint::activity)
                .contains(new ActivityId("drinks"));
    }

    private static String words(WaitView.ChangeView change) {
        return ChangeWords.sentence(change, new Times(WaitEvening.ZONE));
    }

    private static WaitView.ActivityView browsing(WaitView view) {
        return view.activities().stream().filter(a -> a.id().equals("browse")).findFirst().orElseThrow();
    }

    /** Whether anybody is there from now on, or is sent there. */
    private static boolean goesTo(WaitView view, String activity) {
        return view.strips().stream().flatMap(s -> s.parts().stream()).anyMatch(p -> p.activity().equals(activity)
                && p.status() != Assignment.Status.DONE);
    }

    @Test void a_seat_that_left_or_is_finished_has_no_strip() {
        WaitEvening evening = poured();
        evening.record(50, new ClassEvent.SeatLeft(new SeatNumber(4)));

        assertThat(evening.view(51).strip(4)).isEmpty();
    }

    @Test void who_shares_a_candle_waits_for_it_too() {
        WaitEvening evening = new WaitEvening(4);
        evening.record(10, new ClassEvent.SeatPaired(new SeatNumber(1), new SeatNumber(2)));
        evening.pour(40, 1, 3, 4);

        assertThat(evening.view(45).strips()).extracting(WaitView.StripView::seat).containsExactly(1, 2, 3, 4);
    }

    @Test void the_plan_goes_on_after_a_closing_that_was_taken_back() {
        WaitEvening evening = poured();
        WaitView before = evening.view(60);
        evening.record(60, new ClassEvent.ClassClosed());
        assertThat(evening.view(60).plannedAt()).isEmpty();
        evening.record(60.1, new ClassEvent.Undone(evening.seq()));

        assertThat(evening.view(60.2).strip(1).orElseThrow().parts())
                .filteredOn(p -> p.status() == Assignment.Status.DONE)
                .isEqualTo(before.strip(1).orElseThrow().parts().stream()
                        .filter(p -> p.status() == Assignment.Status.DONE).toList());
    }

    @Test void a_move_that_is_taken_back_leaves_the_plan_as_it_was() {
        WaitEvening evening = poured();
        WaitView before = evening.view(47);
        WaitView.ActivityView drinks = before.activities().stream().filter(a -> a.id().equals("drinks")).findFirst()
                .orElseThrow();
        evening.record(47.2, new ClassEvent.ActivityMoved(new ActivityId("drinks"),
                drinks.next().orElseThrow().at().plus(Duration.ofMinutes(5))));
        assertThat(evening.view(47.3).activities()).isNotEqualTo(before.activities());
        evening.record(47.4, new ClassEvent.Undone(evening.seq()));

        WaitView after = evening.view(47.5);

        assertThat(after.activities()).isEqualTo(before.activities());
        assertThat(after.changes()).isEqualTo(before.changes());
    }

    @Test void a_class_nobody_touches_any_more_is_not_planned_on() {
        WaitEvening evening = new WaitEvening(3).pour(40, 1);
        WaitChain chain = WaitEvening.chain();
        chain.at(evening.live(), WaitEvening.at(3000));

        assertThat(chain.nextChange(evening.live(), WaitEvening.at(3000))).isEmpty();
    }

    @Test void the_view_changes_by_itself_with_the_next_full_minute() {
        WaitEvening evening = poured();
        WaitChain chain = WaitEvening.chain();
        chain.at(evening.live(), WaitEvening.at(46.5));

        assertThat(chain.nextChange(evening.live(), WaitEvening.at(46.5))).contains(WaitEvening.at(47));
        assertThat(List.of(chain.at(evening.live(), WaitEvening.at(46.9))))
                .as("nothing is planned in between")
                .first().isSameAs(chain.at(evening.live(), WaitEvening.at(46.6)));
    }

    // ---- a planning that fails

    /** The plan's cure, of which nothing can be made after the event that pauses a seat. */
    private static CureClock unreadableWhilePaused() {
        return (live, now) -> {
            if (live.seats().stream().anyMatch(s -> s.pausedSince().isPresent())) {
                throw new ArrayIndexOutOfBoundsException("beyond the planned end");
            }
            return new PlanCureClock().clocks(live, now);
        };
    }

    @Test void a_planning_that_fails_leaves_the_chain_sound_and_the_next_rests_on_the_last_good_one() {
        WaitEvening evening = poured();
        WaitChain failing = new WaitChain("thursday", unreadableWhilePaused());
        WaitChain sound = WaitEvening.chain();
        failing.at(evening.live(), WaitEvening.at(48));
        sound.at(evening.live(), WaitEvening.at(48));
        evening.record(48.5, new ClassEvent.SeatPaused(new SeatNumber(3)));

        assertThatThrownBy(() -> failing.at(evening.live(), WaitEvening.at(48.6))).hasMessageContaining("planned")
                .hasRootCauseInstanceOf(ArrayIndexOutOfBoundsException.class);
        assertThatThrownBy(() -> failing.at(evening.live(), WaitEvening.at(50.1))).hasMessageContaining("planned");
        assertThat(failing.nextChange(evening.live(), WaitEvening.at(50.1))).contains(WaitEvening.at(51));

        evening.record(50.5, new ClassEvent.SeatResumed(new SeatNumber(3)));
        WaitView again = failing.at(evening.live(), WaitEvening.at(50.6));
        assertThat(again.strips()).hasSize(8);
        assertThat(again.calls()).extracting(c -> WaitWords.what(c.event())).contains("First candles ready");
        assertThat(again.activities()).isEqualTo(sound.at(evening.live(), WaitEvening.at(50.6)).activities());
        assertThat(new WaitChain("thursday", unreadableWhilePaused())
                .at(evening.live(), WaitEvening.at(50.6))).as("a board started anew").isEqualTo(again);
    }
}

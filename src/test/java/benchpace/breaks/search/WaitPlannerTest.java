package benchpace.breaks.search;

import static benchpace.breaks.search.Evenings.SEVEN;
import static benchpace.breaks.search.Evenings.at;
import static benchpace.breaks.search.Evenings.id;
import static benchpace.breaks.search.Evenings.seat;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.Announced;
import benchpace.breaks.Assignment;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.Leisure;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatWait;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.live.ActivityRun;
import benchpace.live.Stint;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Small evenings in which the right plan can be seen. Lengths of activities are common practice, no source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitPlannerTest {
    private static final Activity LABELS = Evenings.labels(6);
    private static final Activity LONG_CRAFT = Evenings.activity("long-craft", ActivityKind.LONG_CRAFT,
            Activity.Audience.OWN_PACE, 35, 45, 6, false);
    private static final Activity BROWSING = Evenings.browsing(6);
    private static final Activity WRAPPING = Evenings.wrapping(2);

    @Test void a_candle_ready_in_twelve_minutes_is_not_sent_into_a_long_craft() {
        WaitPlan plan = plan(SEVEN, List.of(LONG_CRAFT, BROWSING), seat(1, 0, 10, 12, 15), seat(2, 0, 50, 58, 66));
        assertThat(activities(plan, 1)).containsExactly("browsing");
        assertThat(activities(plan, 2)).contains("long-craft");
    }

    @Test void a_craft_fits_when_its_longest_ends_with_the_earliest_likely_ready_moment_and_not_a_minute_later() {
        assertThat(activities(plan(SEVEN, List.of(LONG_CRAFT), seat(1, 0, 45, 50, 60)), 1)).hasSize(1);
        assertThat(activities(plan(SEVEN, List.of(LONG_CRAFT), seat(1, 0, 44, 50, 60)), 1)).isEmpty();
    }

    /**
     * With the longest length (nine in ten) ending at the earliest ready moment (one in ten), independent normal
     * spreads give odds of at most one in ten that the candle is ready first; with the median it can be near one in
     * two. Odds of a difference of normals from Hipparchus.
     */
    @Test void taking_both_ends_at_their_tenth_keeps_the_odds_of_outlasting_below_one_in_ten() {
        NormalDistribution unit = new NormalDistribution();
        double z = unit.inverseCumulativeProbability(0.9);
        double worstWithMedian = 0;
        for (double activity = 0.5; activity <= 10; activity += 0.5) {
            for (double candle = 0.5; candle <= 20; candle += 0.5) {
                double spread = Math.hypot(activity, candle);
                assertThat(1 - unit.cumulativeProbability(z * (activity + candle) / spread)).isLessThan(0.1);
                worstWithMedian = Math.max(worstWithMedian,
                        1 - unit.cumulativeProbability(z * activity / spread));
            }
        }
        assertThat(worstWithMedian).isGreaterThan(0.45);
    }

    @Test void wrapping_begins_with_the_candle_being_ready_and_two_places_serve_two_at_once() {
        WaitPlan plan = plan(SEVEN, List.of(WRAPPING), seat(1, 0, 35, 40, 45), seat(2, 0, 35, 40, 45),
                seat(3, 0, 35, 40, 45));
        assertThat(starts(plan, "wrapping")).containsExactly(at(40), at(40), at(45));
    }

    @Test void the_table_is_cleaned_before_what_needs_a_clear_table() {
        WaitPlan plan = plan(SEVEN, List.of(Evenings.longCraft(6), Evenings.cleanUp(2)), seat(1, 0, 55, 60, 70));
        assertThat(activities(plan, 1)).containsExactly("clean-up", "long-craft");
    }

    @Test void a_class_break_holds_everybody_at_once_and_happens_once() {
        WaitProblem first = problem(SEVEN, List.of(Evenings.together(10, 12, 20), LABELS, BROWSING),
                seat(1, 0, 55, 60, 70), seat(2, 20, 70, 80, 90));
        WaitPlan plan = WaitPlanner.plan(first);
        assertThat(starts(plan, "toast")).hasSize(2);
        assertThat(starts(plan, "toast").get(0)).isEqualTo(starts(plan, "toast").get(1));
        WaitPlan later = WaitPlanner.plan(again(first, starts(plan, "toast").get(0).plusSeconds(1200), plan));
        assertThat(later.strips()).allSatisfy(s -> assertThat(s.parts().stream()
                .filter(p -> p.activity().equals(id("toast")))).hasSize(1));
        assertThat(later.events()).noneMatch(e -> e instanceof WaitEvent.ClassBreak);
    }

    @Test void a_class_break_without_a_common_moment_is_reported_not_forced() {
        WaitPlan plan = plan(SEVEN, List.of(Evenings.together(10, 12, 20)), seat(1, 0, 15, 20, 30),
                seat(2, 18, 70, 80, 90));
        assertThat(plan.unplaced()).containsExactly(
                new Unplaced(id("toast"), Unplaced.Reason.NO_COMMON_TIME));
    }

    @Test void a_class_break_the_instructor_moved_begins_then_and_names_who_is_left_out() {
        WaitProblem p = problem(SEVEN, List.of(Evenings.together(10, 12, 20)), seat(1, 0, 15, 20, 30),
                seat(2, 5, 70, 80, 90));
        WaitPlan plan = WaitPlanner.plan(deciding(p, "toast", ActivityRun.UNTOUCHED.moved(SEVEN, at(30))));
        assertThat(plan.events()).anySatisfy(e -> {
            assertThat(e).isInstanceOf(WaitEvent.ClassBreak.class);
            assertThat(e.at()).isEqualTo(at(30));
            assertThat(e.seats()).containsExactly(Evenings.seat(2));
        });
    }

    @Test void without_a_single_tap_what_was_planned_counts_as_done() {
        WaitProblem first = problem(SEVEN, List.of(LABELS, BROWSING), seat(1, 0, 55, 60, 70));
        WaitPlan plan = WaitPlanner.plan(first);
        Instant labelled = starts(plan, "labels").get(0).plusSeconds(13 * 60);
        WaitPlan later = WaitPlanner.plan(again(first, labelled, plan));
        WaitPlan muchLater = WaitPlanner.plan(again(first, labelled.plusSeconds(300), later));
        assertThat(muchLater.strip(Evenings.seat(1)).orElseThrow().parts())
                .filteredOn(p -> p.activity().equals(id("labels")))
                .singleElement().extracting(Assignment::status).isEqualTo(Assignment.Status.DONE);
    }

    @Test void a_label_tapped_as_finished_after_two_minutes_frees_the_guest_at_once() {
        SeatWait quick = seat(1, 0, 55, 60, 70).with(List.of(new Stint(id("labels"), at(0), at(2))));
        WaitPlan plan = plan(at(2), List.of(LABELS, BROWSING), quick);
        assertThat(plan.strip(Evenings.seat(1)).orElseThrow().planned().get(0).from()).isEqualTo(at(2));
        assertThat(activities(plan, 1)).doesNotContain("labels");
    }

    @Test void an_end_nobody_taps_is_expected_at_the_typical_length_and_then_at_the_longest() {
        SeatWait joined = seat(1, 0, 55, 60, 70).with(List.of(Stint.since(id("labels"), at(0))));
        assertThat(plan(at(5), List.of(LABELS), joined).strips().get(0).waitFrom()).isEqualTo(at(12));
        assertThat(plan(at(13), List.of(LABELS), joined).strips().get(0).waitFrom()).isEqualTo(at(15));
        assertThat(plan(at(20), List.of(LABELS), joined).strips().get(0).waitFrom()).isEqualTo(at(20));
    }

    @Test void what_was_announced_moves_because_a_pour_is_late_and_says_so() {
        WaitProblem first = problem(SEVEN, List.of(LABELS), seat(1, 5, 55, 60, 70), seat(2, 5, 55, 60, 70));
        WaitPlan before = WaitPlanner.plan(first);
        WaitProblem late = new WaitProblem(at(3), first.activities(),
                List.of(seat(1, 9, 55, 60, 70), seat(2, 5, 55, 60, 70)), Map.of(), first.promisedEnd(), before,
                before.announcedWithin(Duration.ofMinutes(10)));
        WaitPlan after = WaitPlanner.plan(late);
        assertThat(after.changes()).containsExactly(new BrokenAnnouncement.Moved(
                new Announced(Evenings.seat(1), id("labels"), at(5)), at(9),
                BrokenAnnouncement.Reason.NOT_FREE_IN_TIME));
    }

    @Test void what_the_instructor_skips_is_dropped_for_that_reason() {
        WaitProblem first = problem(SEVEN, List.of(LABELS), seat(1, 5, 55, 60, 70));
        WaitPlan before = WaitPlanner.plan(first);
        WaitProblem skipped = new WaitProblem(at(1), first.activities(), first.seats(),
                Map.of(id("labels"), ActivityRun.UNTOUCHED.skipped(at(1))), first.promisedEnd(), before,
                before.announcedWithin(Duration.ofMinutes(10)));
        assertThat(WaitPlanner.plan(skipped).changes()).singleElement()
                .isInstanceOfSatisfying(BrokenAnnouncement.Dropped.class,
                        c -> assertThat(c.why()).isEqualTo(BrokenAnnouncement.Reason.NOT_OFFERED));
    }

    @Test void a_class_break_extended_by_five_lasts_five_minutes_longer() {
        WaitProblem p = problem(at(12), List.of(Evenings.together(10, 12, 20), BROWSING), seat(1, 0, 55, 60, 70));
        WaitPlan plan = WaitPlanner.plan(deciding(p, "toast",
                ActivityRun.UNTOUCHED.opened(at(10)).extended(at(12), Duration.ofMinutes(5))));
        assertThat(plan.strips().get(0).waitFrom()).isEqualTo(at(25));
    }

    @Test void an_activity_that_a_later_tap_left_no_time_for_is_still_to_be_done() {
        WaitPlan plan = plan(SEVEN, List.of(LABELS), seat(1, 0, 55, 60, 70)
                .with(List.of(new Stint(id("labels"), at(0), at(0)))));
        assertThat(activities(plan, 1)).containsExactly("labels");
    }

    @Test void a_seat_that_leaves_gets_nothing_that_ends_after_it_has_gone() {
        WaitPlan plan = plan(SEVEN, List.of(LABELS, LONG_CRAFT, WRAPPING),
                seat(1, 0, 55, 60, 70).with(new Presence.LeavingAt(at(20))));
        assertThat(activities(plan, 1)).containsExactly("labels");
    }

    @Test void a_seat_with_nothing_to_do_is_offered_what_is_free_and_can_be_left() {
        Activity crowded = Evenings.browsing(1);
        WaitPlan plan = plan(at(30), List.of(crowded, LABELS), seat(1, 0, 55, 60, 70).with(List.of(
                new Stint(id("labels"), at(0), at(12)), new Stint(id("browsing"), at(12), at(20)),
                new Stint(id("browsing"), at(22), at(29)))));
        assertThat(plan.leisure()).containsExactly(
                new Leisure(Evenings.seat(1), at(30), at(60), List.of(id("browsing"))));
    }

    @Test void candles_ready_after_the_promised_end_are_named_for_the_shelf() {
        WaitPlan plan = WaitPlanner.plan(WaitProblem.first(SEVEN, List.of(WRAPPING),
                List.of(seat(1, 0, 50, 58, 70), seat(2, 0, 40, 50, 60)), at(60)));
        assertThat(plan.pastPromisedEnd()).containsExactly(Evenings.seat(1));
    }

    @Test void planning_leaves_fewer_idle_minutes_than_first_come_first_served_on_a_usual_evening() {
        for (int seats : new int[] {4, 6, 8, 12, 40}) {
            WaitProblem usual = Evenings.usual(seats, false);
            assertThat(WaitPlanner.plan(usual).idleMinutes())
                    .isLessThan(FirstComeFirstServed.plan(usual).idleMinutes());
        }
    }

    private static WaitProblem problem(Instant now, List<Activity> activities, SeatWait... seats) {
        return WaitProblem.first(now, activities, List.of(seats), at(120));
    }

    private static WaitPlan plan(Instant now, List<Activity> activities, SeatWait... seats) {
        WaitProblem problem = problem(now, activities, seats);
        WaitPlan plan = WaitPlanner.plan(problem);
        assertThat(PlanFaults.of(problem, plan)).isEmpty();
        return plan;
    }

    private static WaitProblem again(WaitProblem p, Instant now, WaitPlan previous) {
        return new WaitProblem(now, p.activities(), p.seats(), p.runs(), p.promisedEnd(), previous, List.of());
    }

    private static WaitProblem deciding(WaitProblem p, String activity, ActivityRun run) {
        return new WaitProblem(p.now(), p.activities(), p.seats(), Map.of(id(activity), run), p.promisedEnd(),
                p.previous(), p.announced());
    }

    private static List<String> activities(WaitPlan plan, int seat) {
        return plan.strip(Evenings.seat(seat)).orElseThrow().planned().stream().map(Assignment::activity)
                .map(ActivityId::value).distinct().toList();
    }

    private static List<Instant> starts(WaitPlan plan, String activity) {
        return plan.strips().stream().flatMap(s -> s.parts().stream())
                .filter(p -> p.activity().equals(id(activity))).map(Assignment::from).toList();
    }
}

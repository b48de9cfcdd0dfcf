package benchpace.breaks.search;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.Announced;
import benchpace.breaks.Assignment;
import benchpace.breaks.Presence;
import benchpace.breaks.ReadyRange;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Classes of every size, planned again and again through an evening in which things go wrong. */
class WaitPlanProperties {

    @Property(tries = 60)
    void a_plan_never_breaks_a_rule(@ForAll @IntRange(min = 1, max = 40) int seats,
                                    @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem problem = Evenings.random(seats, seed);
        assertThat(PlanFaults.of(problem, WaitPlanner.plan(problem))).isEmpty();
    }

    @Property(tries = 60)
    void first_come_first_served_keeps_the_same_rules(@ForAll @IntRange(min = 1, max = 20) int seats,
                                                      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem problem = Evenings.random(seats, seed);
        assertThat(PlanFaults.of(problem, FirstComeFirstServed.plan(problem))).isEmpty();
    }

    @Property(tries = 40)
    void planning_never_serves_the_class_worse_than_first_come_first_served(
            @ForAll @IntRange(min = 1, max = 16) int seats, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem problem = Evenings.random(seats, seed);
        WaitPlan plan = WaitPlanner.plan(problem);
        WaitPlan queue = FirstComeFirstServed.plan(problem);
        assertThat(plan.unplaced()).hasSameSizeAs(queue.unplaced());
        assertThat(100_000L * Evenings.missed(problem, plan) + plan.idleMinutes())
                .isLessThanOrEqualTo(100_000L * Evenings.missed(problem, queue) + queue.idleMinutes());
    }

    /** What was told and what has been is the same for both, so that neither is charged with the past alone. */
    @Property(tries = 30)
    void replanning_never_serves_the_class_worse_than_going_on_first_come_first_served(
            @ForAll @IntRange(min = 1, max = 16) int seats, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem problem = Evenings.random(seats, seed);
        Random random = new Random(seed);
        WaitPlan plan = WaitPlanner.plan(problem);
        for (int step = 0; step < 4; step++) {
            Instant now = problem.now().plusSeconds(60L * (2 + random.nextInt(12)));
            problem = new WaitProblem(now, problem.activities(), disturbed(problem.seats(), now, random),
                    runs(problem, now, random), problem.promisedEnd(), plan,
                    plan.announcedWithin(Duration.ofMinutes(15)));
            plan = WaitPlanner.plan(problem);
            WaitPlan queue = FirstComeFirstServed.plan(problem);
            assertThat(PlanFaults.of(problem, queue)).isEmpty();
            assertThat(price(problem, plan)).isLessThanOrEqualTo(price(problem, queue));
            for (SeatStrip strip : plan.strips()) {
                assertThat(queue.strip(strip.seat()).orElseThrow().idleMinutesSoFar())
                        .isEqualTo(strip.idleMinutesSoFar());
            }
        }
    }

    private static long price(WaitProblem problem, WaitPlan plan) {
        long broken = plan.changes().size();
        return ((100L * plan.unplaced().size() + broken) * 1_000 + Evenings.missed(problem, plan)) * 100_000
                + plan.idleMinutes();
    }

    @Property(tries = 40)
    void an_evening_of_replanning_without_taps_keeps_every_rule_and_forgets_nothing(
            @ForAll @IntRange(min = 1, max = 14) int seats, @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem problem = Evenings.random(seats, seed);
        Random random = new Random(seed);
        WaitPlan plan = WaitPlanner.plan(problem);
        for (int step = 0; step < 8; step++) {
            Instant now = problem.now().plusSeconds(60L * (2 + random.nextInt(9)));
            WaitPlan before = plan;
            problem = new WaitProblem(now, problem.activities(), disturbed(problem.seats(), now, random),
                    runs(problem, now, random), problem.promisedEnd(), plan,
                    plan.announcedWithin(Duration.ofMinutes(10)));
            plan = WaitPlanner.plan(problem);
            assertThat(PlanFaults.of(problem, plan)).isEmpty();
            for (SeatStrip strip : before.strips()) {
                WaitPlan after = plan;
                strip.parts().stream().filter(p -> p.status() == Assignment.Status.DONE).forEach(p ->
                        assertThat(after.strip(strip.seat()).orElseThrow().parts()).contains(p));
            }
        }
    }

    @Property(tries = 40)
    void every_announcement_is_kept_or_accounted_for(@ForAll @IntRange(min = 1, max = 14) int seats,
                                                     @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem first = Evenings.random(seats, seed);
        WaitPlan before = WaitPlanner.plan(first);
        Random random = new Random(seed);
        Instant now = first.now().plusSeconds(60L * random.nextInt(20));
        List<Announced> told = before.announcedWithin(Duration.ofMinutes(40));
        WaitProblem again = new WaitProblem(now, first.activities(), disturbed(first.seats(), now, random),
                Map.of(), first.promisedEnd(), before, told);
        WaitPlan plan = WaitPlanner.plan(again);
        for (Announced a : told) {
            boolean kept = plan.strip(a.seat()).orElseThrow().parts().stream()
                    .anyMatch(p -> p.activity().equals(a.activity()) && p.from().equals(a.from()));
            assertThat(plan.changes().stream().filter(c -> c.was().equals(a)).count()).isEqualTo(kept ? 0 : 1);
        }
    }

    @Property(tries = 30)
    void nothing_announced_moves_while_only_seconds_pass(@ForAll @IntRange(min = 1, max = 30) int seats,
                                                         @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem first = Evenings.random(seats, seed);
        WaitPlan before = WaitPlanner.plan(first);
        WaitProblem again = new WaitProblem(first.now().plusSeconds(29), first.activities(), first.seats(), Map.of(),
                first.promisedEnd(), before, before.announcedWithin(Duration.ofHours(3)));
        WaitPlan after = WaitPlanner.plan(again);
        assertThat(after.changes()).isEmpty();
    }

    @Property(tries = 20)
    void the_same_problem_gives_the_same_plan(@ForAll @IntRange(min = 1, max = 30) int seats,
                                              @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        assertThat(WaitPlanner.plan(Evenings.random(seats, seed)))
                .isEqualTo(WaitPlanner.plan(Evenings.random(seats, seed)));
    }

    /** Wrapping in the order of readiness: no order of the seats makes the waits for a place shorter in sum. */
    @Property(tries = 60)
    void no_other_order_of_wrapping_waits_less(@ForAll @IntRange(min = 1, max = 6) int seats,
                                               @ForAll @IntRange(min = 1, max = 3) int places,
                                               @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        List<SeatWait> waits = new ArrayList<>();
        List<Integer> ready = new ArrayList<>();
        for (int n = 1; n <= seats; n++) {
            ready.add(30 + random.nextInt(12));
            waits.add(Evenings.seat(n, 0, ready.get(n - 1), ready.get(n - 1), ready.get(n - 1)));
        }
        WaitPlan plan = WaitPlanner.plan(WaitProblem.first(Evenings.SEVEN, List.of(Evenings.wrapping(places)), waits,
                Evenings.at(120)));
        int planned = 0;
        for (SeatStrip strip : plan.strips()) {
            planned += (int) Duration.between(Evenings.at(ready.get(strip.seat().value() - 1)),
                    strip.parts().get(0).from()).toMinutes();
        }
        assertThat(planned).isEqualTo(leastWait(ready, new int[places], 0));
    }

    private static int leastWait(List<Integer> ready, int[] placeFree, int sum) {
        int best = ready.isEmpty() ? sum : Integer.MAX_VALUE;
        for (int i = 0; i < ready.size(); i++) {
            List<Integer> rest = new ArrayList<>(ready);
            int at = rest.remove(i);
            for (int p = 0; p < placeFree.length; p++) {
                int[] free = placeFree.clone();
                int start = Math.max(at, free[p]);
                free[p] = start + 5;
                best = Math.min(best, leastWait(rest, free, sum + start - at));
            }
        }
        return best;
    }

    private static List<SeatWait> disturbed(List<SeatWait> seats, Instant now, Random r) {
        List<SeatWait> changed = new ArrayList<>();
        for (SeatWait s : seats) {
            long shift = 60L * (r.nextInt(7) - 3);
            changed.add(switch (r.nextInt(10)) {
                case 0 -> new SeatWait(s.seat(), s.freeFrom(), new ReadyRange(s.ready().p10().plusSeconds(shift),
                        s.ready().p50().plusSeconds(shift), s.ready().p90().plusSeconds(shift)), s.presence(),
                        s.tapped(), s.mustBeBackBy(), s.candle(), s.handTest());
                case 1 -> s.freeFrom().isAfter(now) ? new SeatWait(s.seat(), s.freeFrom().plusSeconds(180), s.ready(),
                        s.presence(), s.tapped(), s.mustBeBackBy(), s.candle(), s.handTest()) : s;
                case 2 -> s.with(new Presence.LeavingAt(now.plusSeconds(60L * r.nextInt(30))));
                default -> s;
            });
        }
        return changed;
    }

    private static Map<ActivityId, ActivityRun> runs(WaitProblem problem, Instant now, Random r) {
        Map<ActivityId, ActivityRun> runs = new HashMap<>(problem.runs());
        Activity activity = problem.activities().get(r.nextInt(problem.activities().size()));
        if (activity.audience() == Activity.Audience.OWN_PACE && activity.kind() != ActivityKind.WRAPPING) {
            switch (r.nextInt(8)) {
                case 0 -> runs.put(activity.id(), problem.run(activity.id()).skipped(now));
                case 1 -> runs.put(activity.id(), problem.run(activity.id()).moved(now, now.plusSeconds(600)));
                default -> { }
            }
        }
        return runs;
    }
}

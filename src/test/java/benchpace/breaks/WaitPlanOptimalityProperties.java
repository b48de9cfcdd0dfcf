package benchpace.breaks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/**
 * Checked against trying every plan ({@link EveryPlan}), which shares no code with the planner. The planner's work is
 * counted, and once in some thousand of these classes it runs out: then it must not call its plan proven.
 */
class WaitPlanOptimalityProperties {

    @Property(tries = 60)
    void no_plan_of_two_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        isBest(Evenings.tiny(seed, 2, 8));
    }

    /** Trying every plan of three seats takes a second: more of them with {@code -Dplans=N}, N times as many. */
    @Property(tries = 15)
    void no_plan_of_three_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        for (int next = 0; next < Integer.getInteger("plans", 1); next++) {
            isBest(Evenings.tiny(seed + next, 3, 6));
        }
    }

    /** One seat is slower at its pour or its candle faster; what was announced moves only if every plan moves it. */
    @Property(tries = 60)
    void no_plan_keeps_more_of_what_was_announced(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        WaitProblem before = withoutClassBreaksAndWrapping(Evenings.tiny(seed, 2, 8));
        WaitPlan plan = WaitPlanner.plan(before);
        SeatWait first = before.seats().get(0);
        SeatWait changed = seed % 2 == 0
                ? SeatWait.of(first.seat(), first.freeFrom().plusSeconds(60 * (1 + seed / 2 % 3)), first.ready())
                : SeatWait.of(first.seat(), first.freeFrom(), new ReadyRange(first.ready().p10().minusSeconds(120),
                        first.ready().p50().minusSeconds(60), first.ready().p90()));
        List<SeatWait> seats = new ArrayList<>(before.seats());
        seats.set(0, changed);
        isBest(new WaitProblem(before.now(), before.activities(), seats, List.of(), before.promisedEnd(), plan,
                plan.announcedWithin(Duration.ofMinutes(5))));
    }

    private static WaitProblem withoutClassBreaksAndWrapping(WaitProblem p) {
        return WaitProblem.first(p.now(), p.activities().stream()
                .filter(a -> a.audience() == Activity.Audience.OWN_PACE && a.kind() != ActivityKind.WRAPPING).toList(),
                p.seats(), p.promisedEnd());
    }

    private static void isBest(WaitProblem problem) {
        WaitPlan plan = WaitPlanner.plan(problem);
        assertThat(PlanFaults.of(problem, plan)).isEmpty();
        EveryPlan.Aims best = new EveryPlan(problem).best();
        assertThat(aims(problem, plan)).isEqualTo(best);
    }

    private static EveryPlan.Aims aims(WaitProblem problem, WaitPlan plan) {
        int missed = 0;
        for (SeatStrip strip : plan.strips()) {
            for (Activity a : problem.activities()) {
                boolean expected = a.kind() == ActivityKind.LABELS || a.kind() == ActivityKind.CLEAN_UP;
                missed += expected && strip.parts().stream().noneMatch(p -> p.activity().equals(a.id())) ? 1 : 0;
            }
        }
        return new EveryPlan.Aims(plan.unplaced().size(), plan.changes().size(), missed,
                plan.idleMinutes(), plan.longestIdleMinutes());
    }
}

package benchpace.breaks;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Checked against trying every plan ({@link EveryPlan}), which shares no code with the planner. */
class WaitPlanOptimalityProperties {

    @Property(tries = 150)
    void no_plan_of_two_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        isBest(Evenings.tiny(seed, 2, 9));
    }

    @Property(tries = 100)
    void no_plan_of_three_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        isBest(Evenings.tiny(seed, 3, 6));
    }

    private static void isBest(WaitProblem problem) {
        WaitPlan plan = WaitPlanner.plan(problem);
        assertThat(PlanFaults.of(problem, plan)).isEmpty();
        assertThat(plan.provenBest()).isTrue();
        assertThat(aims(problem, plan)).isEqualTo(new EveryPlan(problem).best());
    }

    private static EveryPlan.Aims aims(WaitProblem problem, WaitPlan plan) {
        int missed = 0;
        for (SeatStrip strip : plan.strips()) {
            for (Activity a : problem.activities()) {
                boolean expected = a.kind() == ActivityKind.LABELS || a.kind() == ActivityKind.CLEAN_UP;
                missed += expected && strip.parts().stream().noneMatch(p -> p.activity().equals(a.id())) ? 1 : 0;
            }
        }
        return new EveryPlan.Aims(plan.unplaced().size(), missed, plan.idleMinutes(), plan.longestIdleMinutes());
    }
}

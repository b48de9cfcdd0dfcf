package benchpace.breaks.search;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.ReadyRange;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;

/**
 * Checked against trying every plan ({@link EveryPlan}), which shares no code with the planner. The planner does not
 * promise the best plan. Measured: the best there is in 484 of 500 classes of two seats and in 55 of 60 of three; else
 * at most 3 idle minutes more, or (3 of 560) one label or clean-up more missed. What is allowed is one missed, or
 * {@value #IDLE} idle minutes more, and, as few classes are drawn here, the best plan in six of ten.
 */
class WaitPlanOptimalityProperties {
    private static final int IDLE = 5;

    @Property(tries = 60)
    void hardly_a_plan_of_two_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        isNearlyBest(Evenings.tiny(seed, 2, 8));
    }

    /** Trying every plan of three seats takes a second: more of them with {@code -Dplans=N}, N times as many. */
    @Property(tries = 15)
    void hardly_a_plan_of_three_seats_is_better(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        for (int next = 0; next < Integer.getInteger("plans", 1); next++) {
            isNearlyBest(Evenings.tiny(seed + next, 3, 6));
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
        isNearlyBest(new WaitProblem(before.now(), before.activities(), seats, Map.of(), before.promisedEnd(), plan,
                plan.announcedWithin(Duration.ofMinutes(5))));
    }

    private static WaitProblem withoutClassBreaksAndWrapping(WaitProblem p) {
        return WaitProblem.first(p.now(), p.activities().stream()
                .filter(a -> a.audience() == Activity.Audience.OWN_PACE && a.kind() != ActivityKind.WRAPPING).toList(),
                p.seats(), p.promisedEnd());
    }

    private static void isNearlyBest(WaitProblem problem) {
        WaitPlan plan = WaitPlanner.plan(problem);
        assertThat(PlanFaults.of(problem, plan)).isEmpty();
        EveryPlan.Aims best = new EveryPlan(problem).best();
        EveryPlan.Aims found = aims(problem, plan);
        assertThat(found.betterThan(best)).as("every plan was tried").isFalse();
        assertThat(found.unplaced()).isEqualTo(best.unplaced());
        assertThat(found.broken()).isEqualTo(best.broken());
        assertThat(found.missed()).isLessThanOrEqualTo(best.missed() + 1);
        assertThat(found.missed() > best.missed() || found.idle() <= best.idle() + IDLE).isTrue();
        Statistics.label("the best there is").collect(found.equals(best))
                .coverage(c -> c.check(true).percentage(p -> p >= 60));
    }

    private static EveryPlan.Aims aims(WaitProblem problem, WaitPlan plan) {
        return new EveryPlan.Aims(plan.unplaced().size(), plan.changes().size(), Evenings.missed(problem, plan),
                plan.idleMinutes(), plan.longestIdleMinutes());
    }
}

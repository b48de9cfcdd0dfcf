package benchpace.report.whatif;

import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanVariants;
import benchpace.plan.StepId;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** The plan that a change leads to, for the next class. */
public final class ChangedPlan {
    private ChangedPlan() { }

    /** @return empty where no plan can hold the change, or it leaves the plan as it is */
    public static Optional<Plan> of(Plan plan, Change change) {
        return Optional.of(made(plan, change)).filter(made -> !made.equals(plan));
    }

    private static Plan made(Plan plan, Change change) {
        if (change instanceof Change.Free c) {
            return PlanVariants.opened(plan, id(plan, c.step()), Opening.FREE);
        } else if (change instanceof Change.Led c) {
            return PlanVariants.opened(plan, id(plan, c.step()), Opening.LED);
        } else if (change instanceof Change.Beforehand c) {
            return PlanVariants.without(plan, id(plan, c.step()));
        } else if (change instanceof Change.MoreStations c) {
            return PlanVariants.served(plan, id(plan, c.step()), c.then());
        } else if (change instanceof Change.SmallerVessels c) {
            return PlanVariants.withCandles(plan, k -> PlanVariants.smaller(k, c.fillShare()).orElse(k));
        } else if (change instanceof Change.Earlier c) {
            Plan shorter = plan;
            for (Map.Entry<Integer, Double> talk : c.talks().entrySet()) {
                shorter = shorter(shorter, talk.getKey(), Math.round(talk.getValue()));
            }
            return shorter;
        }
        return plan;
    }

    /** A talk is left a minute at least. */
    private static Plan shorter(Plan plan, int talk, long minutes) {
        Duration planned = plan.steps().get(talk).planned();
        Duration then = planned.minusMinutes(minutes);
        Duration least = Duration.ofMinutes(1);
        return minutes < 1 || planned.compareTo(least) <= 0 ? plan
                : PlanVariants.lasting(plan, id(plan, talk), then.compareTo(least) < 0 ? least : then);
    }

    private static StepId id(Plan plan, int step) {
        return plan.steps().get(step).id();
    }
}

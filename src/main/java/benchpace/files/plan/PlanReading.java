package benchpace.files.plan;

import benchpace.files.Finding;
import benchpace.plan.Plan;
import java.util.List;
import java.util.Optional;

/** What reading a plan came to: the plan, or everything that is wrong with it. */
public sealed interface PlanReading {

    /** A plan that may be taught. */
    record Sound(Plan plan) implements PlanReading { }

    /** No plan, and why. @param problems at least one, in the order of the file */
    record Unsound(List<Finding> problems) implements PlanReading {
        public Unsound {
            problems = List.copyOf(problems);
        }
    }

    /** The plan, if it is sound. */
    default Optional<Plan> ifSound() {
        return this instanceof Sound sound ? Optional.of(sound.plan) : Optional.empty();
    }

    /** What is wrong; empty if the plan is sound. */
    default List<Finding> problems() {
        return this instanceof Unsound unsound ? unsound.problems : List.of();
    }
}

package benchpace.board.plans;

import benchpace.plan.Plan;

/** Why the book of plans was not changed. */
public sealed interface PlanRefusal {
    /** No plan of that id was ever kept. */
    record NoSuchPlan(String id) implements PlanRefusal { }

    /** It was deleted, and can be brought back. @param plan as it last stood */
    record Deleted(Plan plan) implements PlanRefusal { }

    /** It has no such version, or that one cannot be read any more. */
    record NoSuchVersion(Plan plan, int number) implements PlanRefusal { }

    /** It comes with the program: it can only be copied. */
    record Starter(Plan plan) implements PlanRefusal { }

    /** It was changed since whoever asks looked at it. @param now as it stands */
    record Stale(BookPlan now) implements PlanRefusal { }
}

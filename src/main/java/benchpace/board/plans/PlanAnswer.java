package benchpace.board.plans;

/** What became of a change to the book. */
public sealed interface PlanAnswer {
    /** It is done and durable. @param plan as it now stands; as it last stood, if it was deleted */
    record Kept(BookPlan plan) implements PlanAnswer { }

    /** Nothing was changed. */
    record Refused(PlanRefusal why) implements PlanAnswer { }
}

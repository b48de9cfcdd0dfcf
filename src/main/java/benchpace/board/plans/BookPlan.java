package benchpace.board.plans;

import benchpace.plan.Plan;
import benchpace.store.SavedPlans;
import java.time.Instant;
import java.util.Optional;

/**
 * A plan as it stands in the book.
 *
 * @param saved the version it is; empty for a starter plan, which comes with the program and never changes
 */
public record BookPlan(Plan plan, Optional<SavedPlans.Version> saved) {
    static BookPlan starter(Plan plan) {
        return new BookPlan(plan, Optional.empty());
    }

    static BookPlan own(SavedPlans.Version version) {
        return new BookPlan(version.plan().orElseThrow(), Optional.of(version));
    }

    public String id() {
        return plan.id().value();
    }

    public boolean starter() {
        return saved.isEmpty();
    }

    /** When it was saved. */
    public Optional<Instant> savedAt() {
        return saved.map(SavedPlans.Version::at);
    }

    /** From 1; 0 for a starter plan. */
    public int version() {
        return saved.map(SavedPlans.Version::number).orElse(0);
    }
}

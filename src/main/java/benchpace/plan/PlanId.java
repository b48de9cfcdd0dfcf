package benchpace.plan;

/** Names one plan in plan files, events and addresses. Lower-case letters, digits and hyphens, at most 40. */
public record PlanId(String value) {
    public PlanId {
        Ids.checked("the id of a plan", value);
    }

    @Override public String toString() {
        return value;
    }
}

package benchpace.plan;

/** Names one step in plan files, events and addresses. Lower-case letters, digits and hyphens, at most 40. */
public record StepId(String value) {
    public StepId {
        Ids.checked("the id of a step", value);
    }

    @Override public String toString() {
        return value;
    }
}

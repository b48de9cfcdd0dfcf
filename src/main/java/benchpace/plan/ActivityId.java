package benchpace.plan;

/** Names one activity in plan files, events and addresses. Lower-case letters, digits and hyphens, at most 40. */
public record ActivityId(String value) {
    public ActivityId {
        Ids.checked("the id of an activity", value);
    }

    @Override public String toString() {
        return value;
    }
}

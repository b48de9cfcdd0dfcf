package benchpace.plan;

/**
 * Names one plan in plan files, events and addresses.
 *
 * @param value lower-case letters, digits and hyphens, at most {@value #LONGEST}
 */
public record PlanId(String value) {
    /** Characters of the longest. */
    public static final int LONGEST = 40;

    public PlanId {
        Ids.checked("the id of a plan", value);
    }

    @Override public String toString() {
        return value;
    }
}

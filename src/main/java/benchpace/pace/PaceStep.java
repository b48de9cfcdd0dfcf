package benchpace.pace;

/**
 * One step of the class as pace sees it.
 *
 * @param id the step's id, not blank
 * @param planMinutes what the plan gives it, above 0
 * @param led whether the instructor opens it for everyone
 * @param kind what it asks of a seat
 */
public record PaceStep(String id, double planMinutes, boolean led, WorkKind kind) {
    public PaceStep {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a step needs an id");
        }
        if (!(planMinutes > 0 && planMinutes < 24 * 60)) {
            throw new IllegalArgumentException("step " + id + ": plan of " + planMinutes + " minutes");
        }
    }
}

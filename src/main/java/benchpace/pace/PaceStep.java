package benchpace.pace;

import benchpace.plan.Step;
import java.util.Optional;

/**
 * One step of the class as pace sees it.
 *
 * @param id the step's id, not blank
 * @param planMinutes what the plan gives it, above 0
 * @param led whether the instructor opens it for everyone
 * @param kind what it asks of a seat
 * @param stations what serves the seats, if it cannot serve all at once
 */
public record PaceStep(String id, double planMinutes, boolean led, WorkKind kind, Optional<PaceStations> stations) {
    public PaceStep {
        if (id.isBlank()) {
            throw new IllegalArgumentException("a step needs an id");
        }
        if (!(planMinutes > 0 && planMinutes < 24 * 60)) {
            throw new IllegalArgumentException("step " + id + ": plan of " + planMinutes + " minutes");
        }
        if (stations.isPresent() && !kind.isWorked() && kind != WorkKind.FINISH) {
            throw new IllegalArgumentException("step " + id + ": nobody waits for a turn at it");
        }
        if (stations.isPresent() && stations.get().eachMinutes() > planMinutes) {
            throw new IllegalArgumentException("step " + id + ": its stations are kept longer than it takes");
        }
    }

    /** A step at which nobody waits for a turn. */
    public PaceStep(String id, double planMinutes, boolean led, WorkKind kind) {
        this(id, planMinutes, led, kind, Optional.empty());
    }

    /** A plan's step. */
    public static PaceStep of(Step step) {
        return new PaceStep(step.id().value(), step.planned().toMillis() / 60_000.0, step.led(), kind(step),
                step.stations().map(s -> new PaceStations(s.atOnce(), s.each().toMillis() / 60_000.0)));
    }

    private static WorkKind kind(Step step) {
        return switch (step.kind()) {
            case TALK -> WorkKind.TALK;
            case HANDS_ON -> WorkKind.HANDS_ON;
            case POUR -> WorkKind.POUR;
            case CURE -> WorkKind.WAIT;
            case FINISH -> WorkKind.FINISH;
        };
    }
}

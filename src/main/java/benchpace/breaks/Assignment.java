package benchpace.breaks;

import benchpace.plan.ActivityId;
import java.time.Duration;
import java.time.Instant;

/**
 * One piece of a seat's strip.
 *
 * @param until when it ends, typically; a guest who is quicker has that much to themselves
 */
public record Assignment(ActivityId activity, Instant from, Instant until, Status status) {
    /** Where the piece stands at the instant of the plan. Taps are optional: untapped pieces count as done. */
    public enum Status {
        DONE, UNDER_WAY, PLANNED,
        /** To be expected, once the hand test allows it; nobody is called to it, and it never counts as done. */
        EXPECTED
    }

    public Assignment {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("a part of the strip ends before it begins: " + activity);
        }
    }

    public Duration length() {
        return Duration.between(from, until);
    }

    public boolean overlaps(Instant start, Instant end) {
        return from.isBefore(end) && start.isBefore(until);
    }
}

package benchpace.live;

import benchpace.plan.ActivityId;
import java.time.Instant;

/**
 * One time a seat was, or is, at an activity, as tapped. A seat's stints follow one another in the order of the log: a
 * tap that arrives late begins or ends one at its own time, but no earlier than what the log had said of the seat.
 *
 * @param until when it was left; {@link #OPEN} while nobody has tapped an end
 */
public record Stint(ActivityId activity, Instant from, Instant until) {
    /** The end of a stint that nobody has ended. */
    public static final Instant OPEN = Instant.MAX;

    public Stint {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("a stint at " + activity + " ends before it begins");
        }
    }

    /** A stint that has begun and, as far as anybody tapped, not ended. */
    public static Stint since(ActivityId activity, Instant from) {
        return new Stint(activity, from, OPEN);
    }

    public boolean open() {
        return until.equals(OPEN);
    }

    /** The same, left at an instant, or as soon as it began. */
    Stint leftAt(Instant at) {
        return new Stint(activity, from, at.isAfter(from) ? at : from);
    }
}

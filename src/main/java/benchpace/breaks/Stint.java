package benchpace.breaks;

import java.time.Instant;

import benchpace.plan.ActivityId;

/**
 * One time a seat was, or is, at an activity, as tapped.
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
}

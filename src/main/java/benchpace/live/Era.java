package benchpace.live;

import java.time.Instant;

/**
 * Which instants there can be: the one rule for what the log reads, for what is accepted, and for the computer's
 * clock. The clock's range lies well inside the other, so that whatever a class writes down by a possible clock, an
 * appointment some years off included, can be read again.
 */
public final class Era {
    /** What a log can hold: no class was held before. */
    private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    /** None that is planned lies after. */
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");
    /** This program was written in that year: no clock that is right shows an earlier one. */
    private static final Instant FIRST_CLOCK = Instant.parse("2026-01-01T00:00:00Z");
    /** Beyond the life of any computer that runs it. */
    private static final Instant LAST_CLOCK = Instant.parse("2100-01-01T00:00:00Z");

    private Era() { }

    /** Whether an event may bear that instant: from the year 2000 to 2199. */
    public static boolean holds(Instant at) {
        return !at.isBefore(EARLIEST) && at.isBefore(LATEST);
    }

    /** Whether a computer's clock that is right may show it: from the year 2026 to 2099. */
    public static boolean isPossibleNow(Instant now) {
        return !now.isBefore(FIRST_CLOCK) && now.isBefore(LAST_CLOCK);
    }
}

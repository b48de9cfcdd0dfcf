package benchpace.breaks;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;

/** Counts what of a wait was spent with nothing to do, for the plan of the wait and for the look back alike. */
public final class IdleMinutes {
    private IdleMinutes() { }

    /**
     * Whole minutes from one instant to another without any part; 0 if the other comes first.
     *
     * @param parts what was done, not overlapping; what of them lies outside is left out
     */
    public static int between(Instant from, Instant until, Collection<Assignment> parts) {
        return (int) (Math.max(0, until.getEpochSecond() - from.getEpochSecond()
                - within(from, until, parts).toSeconds()) / 60);
    }

    /** How much of the time from one instant to another these parts take, to the second. */
    public static Duration within(Instant from, Instant until, Collection<Assignment> parts) {
        long seconds = 0;
        for (Assignment part : parts) {
            long begin = Math.max(part.from().getEpochSecond(), from.getEpochSecond());
            long end = Math.min(part.until().getEpochSecond(), until.getEpochSecond());
            seconds += Math.max(0, end - begin);
        }
        return Duration.ofSeconds(seconds);
    }
}

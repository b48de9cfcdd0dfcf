package benchpace.breaks;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;

/**
 * One seat's wait as a strip of time.
 *
 * @param parts             what it did, does and will do, in order of time, not overlapping
 * @param waitFrom          when its planned wait begins: now, or when its hands come free
 * @param waitUntil         when it ends: its turn at the wrapping, its candle being ready, or its leaving; equal to
 *                          {@code waitFrom} when there is no wait left
 * @param idleMinutes       minutes with nothing to do in the wait to come
 * @param idleMinutesSoFar  minutes with nothing to do from its pour until now, as far as known
 */
public record SeatStrip(SeatNumber seat, List<Assignment> parts, Instant waitFrom, Instant waitUntil,
                        int idleMinutes, int idleMinutesSoFar) {
    public SeatStrip {
        parts = List.copyOf(parts);
        if (waitUntil.isBefore(waitFrom)) {
            throw new IllegalArgumentException("the wait of seat " + seat + " ends before it begins");
        }
    }

    /** The parts still to begin. */
    public List<Assignment> planned() {
        return parts.stream().filter(p -> p.status() == Assignment.Status.PLANNED).toList();
    }
}

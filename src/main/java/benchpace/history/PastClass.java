package benchpace.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;

/**
 * A class that is over, or that nobody closed.
 *
 * @param place   the plan's; empty is "this room"
 * @param seats   how many there were
 * @param demo    it was the board's own to try things, and no evening of anybody's
 * @param shelved how many of its candles went to the pickup shelf
 * @param figures what it came to; there exactly where it stands so
 * @param steps   names of its plan's steps, by id
 */
public record PastClass(String id, String name, String planId, String planName, String place, Instant startsAt,
                        int seats, boolean demo, int shelved, Standing standing,
                        Optional<ClassFigures> figures, Map<String, String> steps) {
    /** How far its figures are. */
    public enum Standing {
        /** They are there. */
        RECKONED,
        /** They are being made, or will be. */
        TO_COME,
        /** They cannot be made. */
        FAILED,
        /** Nobody closed the class: it has none. */
        LEFT_OPEN
    }

    public PastClass {
        steps = Map.copyOf(steps);
        if (figures.isPresent() != (standing == Standing.RECKONED)) {
            throw new IllegalArgumentException("a class that stands " + standing + " with figures " + figures);
        }
    }

    public LocalDate day(ZoneId zone) {
        return startsAt.atZone(zone).toLocalDate();
    }

    /** Whether it says something of evenings: figures, of a class that was one. */
    public boolean counts() {
        return figures.isPresent() && !demo;
    }
}

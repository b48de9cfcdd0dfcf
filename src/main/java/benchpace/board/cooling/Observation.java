package benchpace.board.cooling;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Optional;

/**
 * Something seen or measured that the forecast rests on.
 *
 * @param seat empty for the room and the pitcher
 * @param celsius what was measured; 0 for what was only seen
 */
public record Observation(Kind kind, Optional<SeatNumber> seat, Instant at, double celsius) {

    /** What was looked at. */
    public enum Kind { ROOM, POUR, SURFACE, SKIN, JUDGED_SET }
}

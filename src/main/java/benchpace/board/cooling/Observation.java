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
record Observation(Kind kind, Optional<SeatNumber> seat, Instant at, double celsius) {

    /** What was looked at. */
    enum Kind { ROOM, POUR, SURFACE, SKIN, JUDGED_SET }

    /** "the reading at seat 3". */
    String words() {
        String where = seat.map(s -> " at seat " + s).orElse("");
        return switch (kind) {
            case ROOM -> "the room's thermometer";
            case POUR -> "the pour temperature";
            case SURFACE -> "the reading" + where;
            case SKIN -> "the skin seen" + where;
            case JUDGED_SET -> "the hand test" + where;
        };
    }
}

package benchpace.report;

import benchpace.breaks.Assignment;
import benchpace.breaks.IdleMinutes;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/**
 * A seat's wait looked back on: from its hands being free after the pour to its candle's being ready, its leaving or
 * the end of the class, whichever came first.
 *
 * @param waitMinutes    how long that was
 * @param tappedMinutes  how much of it went to activities by a tap, or by a break that the instructor opened
 * @param assumedMinutes how much went to what the plan of the wait had sent the seat to, which counts as done because
 *                       nobody tapped otherwise
 * @param idleMinutes    whole minutes of the rest, counted as the plan of the wait counts them while it runs
 */
public record SeatIdle(int seat, double waitMinutes, double tappedMinutes, double assumedMinutes, int idleMinutes) {
    /** @param tapped and {@code assumed}: what it did, not overlapping */
    public static SeatIdle of(int seat, Instant from, Instant until, List<Assignment> tapped,
                              List<Assignment> assumed) {
        Duration wait = until.isAfter(from) ? Duration.between(from, until) : Duration.ZERO;
        return new SeatIdle(seat, minutes(wait), minutes(IdleMinutes.within(from, until, tapped)),
                minutes(IdleMinutes.within(from, until, assumed)),
                IdleMinutes.between(from, until, Stream.concat(tapped.stream(), assumed.stream()).toList()));
    }

    private static double minutes(Duration time) {
        return time.toMillis() / 60_000.0;
    }
}

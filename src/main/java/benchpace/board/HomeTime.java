package benchpace.board;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * When the last candle of the class should be firm enough, and what comes after it.
 *
 * @param rest     what the plan gives the steps after the cure that are still to come
 * @param ended    when the class ended, once it did
 * @param promised when the plan says it ends
 * @param driver   what it hangs on, in words: "seat 4, then the cure"
 * @param basis    what the figure rests on, in words
 */
public record HomeTime(Instant p10, Instant p50, Instant p90, Duration rest, Optional<Instant> ended, Instant promised,
                       String driver, String basis) {
    /** When everyone can go, early, likely or late: never before {@code now}. */
    public Instant home(Instant ready, Instant now) {
        return ended.orElse((ready.isBefore(now) ? now : ready).plus(rest));
    }
}

package benchpace.board;

import java.time.Instant;

/**
 * When the last candle of the class should be firm enough.
 *
 * @param promised when the plan says it ends
 * @param driver   what it hangs on, in words: "seat 4, then the cure"
 * @param basis    what the figure rests on, in words
 */
public record HomeTime(Instant p10, Instant p50, Instant p90, Instant promised, String driver, String basis) { }

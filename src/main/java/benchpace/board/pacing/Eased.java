package benchpace.board.pacing;

import java.time.Instant;

/**
 * A seat that is as slow as before and calls nobody, because somebody was there a moment ago: it calls again by itself
 * if it does not move on.
 *
 * @param flag   what it would be flagged for
 * @param helper the initials of whoever said "sorted"
 * @param at     when they did
 */
public record Eased(SeatFlag flag, String helper, Instant at) { }

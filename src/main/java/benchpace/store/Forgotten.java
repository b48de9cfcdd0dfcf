package benchpace.store;

import java.time.Instant;

/**
 * That the guests of a class are forgotten.
 *
 * @param at    when, by the board's time; whole milliseconds
 * @param byAge by the setting; else somebody asked for it
 */
public record Forgotten(Instant at, boolean byAge) { }

/**
 * The candles of a running class: which are poured, what was measured of them, and when each is ready, computed by
 * {@code cure} or taken from the plan. Start at {@link benchpace.board.cooling.CureClock}.
 */
package benchpace.board.cooling;

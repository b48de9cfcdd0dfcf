/**
 * The board's own time: it runs steadily through sleep and wrong clocks, and devices are asked which is right. Start at
 * {@link benchpace.board.time.SteadyClock}.
 */
package benchpace.board.time;

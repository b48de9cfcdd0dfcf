package benchpace.board.time;

import java.time.Duration;
import java.time.Instant;

/**
 * The computer's clock says another time than the board, and has for more than a moment.
 *
 * @param since    from when on, by the board
 * @param ahead    how far ahead of the board the computer's clock was when that was noticed; negative if behind
 * @param slept    it may be that the computer slept meanwhile, and no clock was set at all
 * @param possible the computer's clock shows a time that can be
 */
public record ClockDisagreement(Instant since, Duration ahead, boolean slept, boolean possible) { }

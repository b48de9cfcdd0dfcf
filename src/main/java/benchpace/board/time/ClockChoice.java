package benchpace.board.time;

/** What somebody says of a computer's clock and the board that differ. */
public enum ClockChoice {
    /** The board goes on by its own time. */
    BOARD,
    /** The board was wrong: it goes by the computer's clock, and what was written meanwhile moves along. */
    COMPUTER,
    /** Neither was: the computer slept, and the time passed for everybody else. */
    SLEPT
}

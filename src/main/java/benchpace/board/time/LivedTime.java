package benchpace.board.time;

import java.time.Duration;

/** Passing time, counted without any calendar. */
public interface LivedTime {

    /** From an arbitrary beginning; never less than before. */
    Duration now();

    /** Whether the time is counted during which the computer slept. */
    boolean countsSleep();
}

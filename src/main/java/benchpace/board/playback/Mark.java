package benchpace.board.playback;

import benchpace.live.ClassEvent;
import java.time.Instant;

/** Something to look at in an evening that is played back. */
public sealed interface Mark {
    /** When it is on the screens. */
    Instant at();

    /**
     * More than a tap at a seat: a step was opened, a guest came or left, a candle was poured again, something was
     * noted, it was over.
     */
    record Happened(Instant at, ClassEvent event) implements Mark { }

    /** A seat was flagged. @param behind it held the class; else it slipped @param step what its step is called */
    record Flagged(Instant at, int seat, boolean behind, String step) implements Mark { }
}

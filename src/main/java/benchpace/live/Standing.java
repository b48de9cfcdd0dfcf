package benchpace.live;

import benchpace.plan.Step;
import java.time.Instant;
import java.util.Optional;

/**
 * Where a seat stands.
 *
 * @param step  its present step; empty when it is done with all, or makes no candle of its own
 * @param since since when it has been so, pauses not taken out
 */
public record Standing(Phase phase, Optional<Step> step, Instant since) {

    /** What a seat is up to. */
    public enum Phase {
        /** Its guest is not here yet. */
        EXPECTED,
        /** Its guest went home. */
        LEFT,
        /** It shares another seat's candle. */
        SHARING,
        /** Away from the table for a moment. */
        PAUSED,
        /** Listening to the instructor. */
        LISTENING,
        /** At its present step. */
        WORKING,
        /** Finished what is open; the next step is not open yet. */
        WAITING,
        /** Poured, and the wax is setting. */
        CURING,
        /** Finished every step. */
        DONE
    }
}

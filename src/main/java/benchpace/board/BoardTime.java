package benchpace.board;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** The time that everything on the board goes by. */
public interface BoardTime extends InstantSource {

    /**
     * How long the board has lived, from an arbitrary beginning: the same however clocks are set, and never less than
     * before. What lasts, a wait after a wrong PIN or the rest of a class, is measured by it.
     */
    Duration lived();

    /**
     * Whether what is over by this time may be done away with for good. Not while the computer's clock is in doubt:
     * what is forgotten because a clock was wrong does not come back when it is right.
     */
    boolean trusted();

    /** By a clock that is never set. */
    static BoardTime of(InstantSource clock) {
        return clock instanceof BoardTime time ? time : new BoardTime() {
            @Override public Instant instant() {
                return clock.instant();
            }

            @Override public Duration lived() {
                return Duration.between(Instant.EPOCH, clock.instant());
            }

            @Override public boolean trusted() {
                return true;
            }
        };
    }
}

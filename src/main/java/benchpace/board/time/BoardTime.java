package benchpace.board.time;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;

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

    /** What the computer's clock says, which may be another time. */
    default Instant computer() {
        return instant();
    }

    /** What somebody should decide: a difference from the computer's clock that has stayed and is not settled. */
    default Optional<ClockDisagreement> disagreement() {
        return Optional.empty();
    }

    /** The board is right, and the computer's clock may stay as it is; another difference will be told again. */
    default void keep() { }

    /**
     * The computer's clock is right: the board goes by it from now on.
     *
     * @return how far the board's time was moved, in whole milliseconds; negative if back
     */
    default Duration follow() {
        return Duration.ZERO;
    }

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

package benchpace.board.view;

import java.time.Instant;
import java.util.Optional;

/**
 * How an evening is being played back.
 *
 * @param classId the class that is played; empty for the recorded evening that comes with the program
 * @param opener  the mark of the device that opened it
 * @param from    where it begins
 * @param until   where it ends
 * @param at      where it is
 * @param speed   so many times as fast as it was, while it plays
 * @param paused  whether it was told to stand still
 * @param turn    changes whenever its time no longer goes on as it did: a jump, another speed, a stop
 */
public record Playing(Optional<String> classId, String opener, Instant from, Instant until, Instant at, int speed,
                      boolean paused, long turn) {

    /** It has come to its end. */
    public boolean ended() {
        return !at.isBefore(until);
    }

    /** So many times as fast as the clock in the room its time goes on just now; 0 while it stands still. */
    public int rate() {
        return paused || ended() ? 0 : speed;
    }
}

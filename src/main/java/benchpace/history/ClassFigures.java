package benchpace.history;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one closed class came to, in figures and ids: nobody's name is among them, so that they may be kept. Each is the
 * look back's own.
 *
 * @param promised     when guests were told that they can go
 * @param ended        when the class was closed
 * @param plannedReady when the plan had the candles ready
 * @param ready        when the last one was; empty if none was poured
 * @param byHand       whether a hand told that, and not a forecast
 * @param lost         what held the class, the most first
 * @param idleMinutes  minutes that a seat had nothing to do in the wait, in the mean; empty where nobody waited
 * @param shelved      how many candles went to the pickup shelf
 */
public record ClassFigures(Instant promised, Instant ended, Instant plannedReady, Optional<Instant> ready,
                           boolean byHand, List<Lost> lost, OptionalDouble idleMinutes, FlagFigures flags,
                           CureFigures cures, int shelved) {
    /** To be raised whenever any figure is reckoned otherwise than before: all that is kept is then made anew. */
    public static final int RECKONING = 1;

    public ClassFigures {
        lost = List.copyOf(lost);
        if (byHand && ready.isEmpty()) {
            throw new IllegalArgumentException("no hand told of a candle that was not poured");
        }
        if (shelved < 0) {
            throw new IllegalArgumentException("candles on the shelf must be at least 0, not " + shelved);
        }
    }

    public Punctuality punctuality() {
        return Punctuality.of(promised, ended);
    }
}

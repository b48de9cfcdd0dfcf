package benchpace.history;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What one closed class came to, in figures and ids: nobody's name is among them, so that they may be kept. Each is the
 * look back's own.
 *
 * @param promised     when guests were told that they can go
 * @param ended        when the class was closed
 * @param plannedReady when the plan had the candles ready
 * @param ready        when the last one was; empty if none was poured
 * @param readyBy      who told that
 * @param lost         what held the class, the most first
 * @param idleSeats    how many seats had a wait to fill
 * @param idleMinutes  whole minutes in which they had nothing to do, of all of them together
 */
public record ClassFigures(Instant promised, Instant ended, Instant plannedReady, Optional<Instant> ready,
                           ReadyBy readyBy, List<Lost> lost, int idleSeats, int idleMinutes, FlagFigures flags,
                           CureFigures cures) {
    /** To be raised whenever any figure is reckoned otherwise than before: all that is kept is then made anew. */
    public static final int RECKONING = 2;

    /** Who told when the last candle was ready. */
    public enum ReadyBy {
        /** Nobody: it is only forecast, or no candle was poured. */
        NOBODY,
        /** Somebody took it in hand for a step after the cure. */
        NEXT_STEP,
        /** It was judged set by hand. */
        HAND_TEST
    }

    public ClassFigures {
        lost = List.copyOf(lost);
        if (readyBy != ReadyBy.NOBODY && ready.isEmpty()) {
            throw new IllegalArgumentException("nobody can tell of a candle that was not poured");
        }
        if (idleSeats < 0 || idleMinutes < 0 || idleSeats == 0 && idleMinutes > 0) {
            throw new IllegalArgumentException(idleSeats + " seats cannot have " + idleMinutes + " idle minutes");
        }
    }

    /** How much later than promised it ended, in minutes as the clock on the wall has them; below 0 if sooner. */
    public int lateMinutes() {
        return (int) Duration.between(promised.truncatedTo(ChronoUnit.MINUTES), ended.truncatedTo(ChronoUnit.MINUTES))
                .toMinutes();
    }

    public Punctuality punctuality() {
        return Punctuality.of(lateMinutes());
    }
}

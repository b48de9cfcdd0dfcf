package benchpace.board.pacing;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * When the last candle of the class should be firm enough, and what comes after it.
 *
 * @param rest     what the plan gives the steps after the cure that are still to come
 * @param ended    when the class ended, once it did
 * @param promised when guests were told that they can go
 * @param odds     how likely that is; empty where it could not be foretold
 * @param told     whether the table itself has told enough to foretell from: most seats are done with something
 * @param driver   the seat it hangs on, if it is one
 * @param basis    what the figure rests on
 */
public record HomeTime(Instant p10, Instant p50, Instant p90, Duration rest, Optional<Instant> ended, Instant promised,
                       Optional<HomeOdds> odds, boolean told, Optional<Driver> driver, Basis basis) {

    /** The seat that is most likely last. @param poured only its cure is left */
    public record Driver(int seat, boolean poured) { }

    /** What the figure rests on. */
    public enum Basis {
        /** Nothing is foretold. */
        NONE,
        /** The plan's figures: nobody has done anything yet. */
        PLAN,
        /** The evening's pace, and the cure by the plan's figure. */
        PACE_AND_PLANNED_CURE,
        /** The evening's pace, and the cure as computed for this room. */
        PACE_AND_COMPUTED_CURE,
        /** All have poured; the cure by the plan's figure. */
        PLANNED_CURE,
        /** All have poured; the cure as computed for this room. */
        COMPUTED_CURE,
        /** Every candle is in hand again. */
        HAND,
        /** Every candle was judged set. */
        HAND_TEST
    }


    /** What may be said of the promise. */
    public enum Promise {
        /** It is the plan's, and nothing is foretold. */
        UNTOLD,
        /** It is the plan's, and only its odds are known. */
        PLANNED,
        /** The evening tells, and it may go either way. */
        OPEN,
        /** Likely kept to within a few minutes. */
        KEPT,
        /** Everyone likely goes later. */
        LATE,
        /** Everyone can likely go sooner. */
        EARLY,
        /** The class is over. */
        ENDED
    }

    /** Late, early and kept are said where they are likely, not where the range only touches them. */
    public Promise promise() {
        if (ended.isPresent()) {
            return Promise.ENDED;
        }
        return odds.isEmpty() ? Promise.UNTOLD : told ? promise(odds.get()) : Promise.PLANNED;
    }

    private static Promise promise(HomeOdds odds) {
        if (odds.late() >= HomeOdds.LIKELY) {
            return Promise.LATE;
        }
        if (odds.early() >= HomeOdds.LIKELY) {
            return Promise.EARLY;
        }
        return 1 - odds.late() - odds.early() >= HomeOdds.LIKELY ? Promise.KEPT : Promise.OPEN;
    }

    /** When everyone can go, early, likely or late: never before {@code now}. */
    public Instant home(Instant ready, Instant now) {
        return ended.orElse((ready.isBefore(now) ? now : ready).plus(rest));
    }
}

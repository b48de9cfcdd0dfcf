package benchpace.live;

import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that has been told about one place at the table.
 *
 * @param name          the first name its guest wants shown; empty if none
 * @param presenceSince when its presence last changed: arrival, leaving, or beginning or ceasing to share a candle
 * @param finishes      the taps, by step, as they were told; a step jumped over has none
 * @param pauses        spans away from the table, in order and apart; the last may be open
 * @param sharesWith    the seat whose candle it shares; for one that went home, whose candle it would share again
 * @param stillAt       answers "still at it", in order
 * @param hint          the guests' own "we are done"
 * @param stints        the times it was at activities, in order and apart; the last may be open
 * @param candle        the plan's candle it chose; the first if it did not
 * @param party         with whom the guest came; empty if alone
 * @param mind          what to mind with this guest, such as an allergy; may be empty, and never for guests to see
 */
public record Seat(SeatNumber number, String name, Presence presence, Instant presenceSince,
                   Map<StepId, Finish> finishes, List<Pause> pauses, Optional<SeatNumber> sharesWith,
                   Optional<Instant> pouredAgainAt, List<Reading> readings, Optional<Instant> skinSeenAt,
                   Optional<Instant> judgedSetAt, Optional<Claim> claim, List<Answer> stillAt,
                   Optional<Answer> hint, List<Stint> stints, Optional<String> candle, List<Note> notes,
                   String party, String mind) {

    /** Whether somebody sits there. */
    public enum Presence { EXPECTED, PRESENT, LEFT }

    /** A tap that a step is done. @param seq the event that says so */
    public record Finish(Instant at, long seq) { }

    /** Away from {@code from} on; {@code until} is empty while it lasts. */
    public record Pause(Instant from, Optional<Instant> until) {
        Duration within(Instant start, Instant end) {
            Instant a = from.isAfter(start) ? from : start;
            Instant b = until.filter(u -> u.isBefore(end)).orElse(end);
            return b.isAfter(a) ? Duration.between(a, b) : Duration.ZERO;
        }

        boolean reaches(Instant instant) {
            return until.isEmpty() || !until.get().isBefore(instant);
        }

        /** This pause and one that it reaches, as one. */
        Pause with(Pause other) {
            boolean longer = until.isEmpty() || other.until.isPresent() && reaches(other.until.get());
            return new Pause(from, longer ? until : other.until);
        }
    }

    /** A surface temperature in degrees Celsius. */
    public record Reading(Instant at, double celsius, long seq) { }

    /** A helper on the way. */
    public record Claim(String helper, Instant at) {
        /**
         * How long others leave a seat to the one who went there: long enough to walk over and set a wick straight,
         * short enough that a forgotten "sorted" strands nobody. Common practice, no source.
         */
        private static final Duration HOLDS = Duration.ofMinutes(5);

        public boolean holds(Instant now) {
            return now.isBefore(lapsesAt());
        }

        /** From then on the seat is anybody's again. */
        public Instant lapsesAt() {
            return at.plus(HOLDS);
        }
    }

    /** Something said about a step. */
    public record Answer(StepId step, Instant at) { }

    /** A remark. */
    public record Note(Instant at, String text, long seq) { }

    public Seat {
        finishes = Collections.unmodifiableMap(new LinkedHashMap<>(finishes));
        pauses = List.copyOf(pauses);
        readings = List.copyOf(readings);
        stillAt = List.copyOf(stillAt);
        stints = List.copyOf(stints);
        notes = List.copyOf(notes);
    }

    public boolean present() {
        return presence == Presence.PRESENT;
    }

    public boolean hasLeft() {
        return presence == Presence.LEFT;
    }

    /** Whether the class waits for a candle of this seat's own. */
    public boolean makesCandle() {
        return present() && sharesWith.isEmpty();
    }

    /** What it joined and has not quit. */
    public Optional<Stint> activity() {
        return stints.isEmpty() ? Optional.empty() : Optional.of(stints.get(stints.size() - 1)).filter(Stint::open);
    }

    /** Since when it has been away from the table, if it is. */
    public Optional<Instant> pausedSince() {
        return pauses.isEmpty() || pauses.get(pauses.size() - 1).until().isPresent()
                ? Optional.empty()
                : Optional.of(pauses.get(pauses.size() - 1).from());
    }

    /** How much of the span from {@code start} to {@code end} it was away. */
    public Duration pausedWithin(Instant start, Instant end) {
        return pauses.stream().map(p -> p.within(start, end)).reduce(Duration.ZERO, Duration::plus);
    }

    public boolean finished(StepId step) {
        return finishes.containsKey(step);
    }
}

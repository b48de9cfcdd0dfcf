package benchpace.board.pacing;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a judgement of the seats says at one instant.
 *
 * @param flags      the seats that should be looked at; all others are on pace
 * @param eased      the seats that would be among them had somebody not just said "sorted"
 * @param mostUrgent the flagged seats, most minutes saved first
 * @param unticked   the seats that the next led step would leave behind, as far as they can be judged
 * @param silence    how long no tap has come from any seat, if that is strange
 * @param nextChange the first instant at which this answer may differ without a further event
 */
public record Pace(Map<SeatNumber, SeatFlag> flags, Map<SeatNumber, Eased> eased, List<SeatNumber> mostUrgent,
                   List<Unticked> unticked, HomeTime home, Optional<Duration> silence, Optional<Instant> nextChange) {

    /**
     * A seat not ticked before the next led step.
     *
     * @param doneProbability  that it is done all the same
     * @param remainingMinutes what it still needs on average, whole minutes
     * @param leaveMinutes     how much later everyone leaves if the step is opened without it, whole minutes
     */
    public record Unticked(SeatNumber seat, double doneProbability, int remainingMinutes, int leaveMinutes) { }

    /** Nobody is judged. */
    public static Pace unjudged(HomeTime home) {
        return new Pace(Map.of(), Map.of(), List.of(), List.of(), home, Optional.empty(), Optional.empty());
    }

    public Pace {
        flags = Map.copyOf(flags);
        eased = Map.copyOf(eased);
        mostUrgent = List.copyOf(mostUrgent);
        unticked = List.copyOf(unticked);
    }
}

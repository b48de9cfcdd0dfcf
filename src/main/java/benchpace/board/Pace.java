package benchpace.board;

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
 * @param mostUrgent the flagged seats, most minutes saved first
 * @param silence    how long no tap has come from any seat, if that is strange
 * @param nextChange the first instant at which this answer may differ without a further event
 */
public record Pace(Map<SeatNumber, SeatFlag> flags, List<SeatNumber> mostUrgent, HomeTime home,
                   Optional<Duration> silence, Optional<Instant> nextChange) {
    public Pace {
        flags = Map.copyOf(flags);
        mostUrgent = List.copyOf(mostUrgent);
    }
}

package benchpace.board.cooling;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a clock of the cure says of a class at one instant.
 *
 * @param clocks one for every seat that has poured a candle of its own
 * @param room   what is known of the cooling here
 */
public record Cooling(Map<SeatNumber, CandleClock> clocks, RoomView room) {
    public Cooling {
        clocks = Collections.unmodifiableMap(new TreeMap<>(clocks));
    }

    /** With a candle cut open, drawn anew whenever it is a whole minute older, until nothing moves in it any more. */
    public Cooling with(Optional<CutAway> cutAway, Instant now) {
        return new Cooling(clocks, room.with(cutAway, cutAway.flatMap(cut -> nextMinute(cut, now))));
    }

    private Optional<Instant> nextMinute(CutAway cut, Instant now) {
        Instant poured = clocks.get(new SeatNumber(cut.seats().get(cut.seats().size() - 1))).pouredAt();
        long minutes = Math.max(0, Duration.between(poured, now).toMinutes());
        return cut.section().solidFraction() >= 1 ? Optional.empty()
                : Optional.of(poured.plusSeconds((minutes + 1) * 60));
    }
}

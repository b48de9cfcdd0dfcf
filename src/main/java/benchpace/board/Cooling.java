package benchpace.board;

import benchpace.plan.SeatNumber;
import java.util.Collections;
import java.util.Map;
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
}

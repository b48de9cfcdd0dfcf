package benchpace.board.cooling;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

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

    /**
     * With candles cut open, all drawn anew with each minute of the clock, until nothing moves in them any more. What
     * was seen last is news for a while, too.
     */
    public Cooling with(Map<Integer, CutAway> cutOpen, Instant now) {
        Optional<Instant> minute = cutOpen.values().stream().anyMatch(cut -> cut.section().solidFraction() < 1)
                ? Optional.of(now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES)) : Optional.empty();
        Optional<Instant> old = room.refit().map(Refit::newsUntil).filter(until -> until.isAfter(now));
        return new Cooling(clocks, room.with(cutOpen, Stream.of(minute, old).flatMap(Optional::stream)
                .min(Comparator.naturalOrder())));
    }

    /**
     * What of it still holds after more events, without computing anything: a candle that was poured since has no clock
     * yet, and one that a hand has decided on has the hand's.
     */
    public Cooling after(LiveClass live) {
        Progress progress = live.progress();
        Map<SeatNumber, CandleClock> held = new TreeMap<>();
        for (Seat seat : live.seats()) {
            progress.pouredAt(seat).filter(at -> seat.sharesWith().isEmpty())
                    .flatMap(at -> Optional.ofNullable(clocks.get(seat.number())).filter(c -> c.pouredAt().equals(at)))
                    .flatMap(c -> c.after(seat.judgedSetAt(), progress.settledAt(seat)))
                    .ifPresent(c -> held.put(seat.number(), c));
        }
        return new Cooling(held, room.after(live, held));
    }
}

package benchpace.live;

import benchpace.live.ClassEvent.Place;
import benchpace.plan.Numbering;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How a class is set up. Where it is held and how the tables stand is said by its plan, which is the class's own.
 *
 * @param promisedEnd what guests were told, after the start and within a day of it; if they were told nothing else, the
 *                    plan's own promise
 * @param seats       every place at the table, at least one, each once; candles are of the plan
 */
public record Setup(Plan plan, String name, Instant startsAt, Optional<Instant> promisedEnd, Numbering numbering,
                    List<Place> seats) {
    private static final Duration LONGEST = Duration.ofDays(1);

    public Setup {
        seats = List.copyOf(seats);
        if (seats.isEmpty()) {
            throw new IllegalArgumentException("a class has at least one seat");
        }
        promisedEnd.ifPresent(end -> requireSoonAfter(startsAt, end));
        Set<SeatNumber> seen = new HashSet<>();
        for (Place place : seats) {
            if (!seen.add(place.seat())) {
                throw new IllegalArgumentException("seat " + place.seat() + " is there twice");
            }
            place.candle().filter(candle -> plan.candle(candle).isEmpty()).ifPresent(candle -> {
                throw new IllegalArgumentException("the plan has no candle \"" + candle + "\" for seat "
                        + place.seat());
            });
        }
    }

    /** With nothing said beyond the plan. */
    public Setup(Plan plan, String name, Instant startsAt, List<Place> seats) {
        this(plan, name, startsAt, Optional.empty(), Numbering.CLOCKWISE_FROM_LEFT, seats);
    }

    private static void requireSoonAfter(Instant startsAt, Instant end) {
        if (!end.isAfter(startsAt)) {
            throw new IllegalArgumentException("the promised end is not after the beginning");
        }
        if (end.isAfter(startsAt.plus(LONGEST))) {
            throw new IllegalArgumentException("the promised end is more than a day after the beginning");
        }
    }

    /** The same at another time; the promised end stays as far from the beginning as it was. */
    Setup startingAt(Instant other) {
        Duration by = Duration.between(startsAt, other);
        return new Setup(plan, name, other, promisedEnd.map(end -> end.plus(by)), numbering, seats);
    }
}

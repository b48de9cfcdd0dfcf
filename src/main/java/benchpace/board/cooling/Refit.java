package benchpace.board.cooling;

import benchpace.cure.room.CureOutlook;
import benchpace.plan.SeatNumber;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * By how much the last thing that was seen moved the forecast: a refit is never silent.
 *
 * @param laterMinutes by how much later the candles are expected that are waited for, on average; below 0 if sooner,
 *                     empty if there are none
 */
public record Refit(Observation seen, OptionalDouble laterMinutes) {

    /** @param before the outlooks as they were without it */
    static Refit of(Observation seen, List<PouredCandle> poured, Map<SeatNumber, CureOutlook> after,
                    Map<SeatNumber, CureOutlook> before) {
        return new Refit(seen, poured.stream()
                .filter(p -> p.judgedSetAt().isEmpty() && !p.left())
                .filter(p -> Double.isFinite(ready(after, p)) && Double.isFinite(ready(before, p)))
                .mapToDouble(p -> ready(after, p) - ready(before, p))
                .average());
    }

    private static double ready(Map<SeatNumber, CureOutlook> outlooks, PouredCandle p) {
        return outlooks.get(p.seat()).ready().p50();
    }
}

package benchpace.board.cooling;

import benchpace.cure.room.CureOutlook;
import benchpace.plan.SeatNumber;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Says by how much the last thing that was seen moved the forecast: a refit is never silent. */
final class FitWords {
    private FitWords() { }

    /** @param before the outlooks as they were without it */
    static String of(Observation seen, List<PouredCandle> poured, Map<SeatNumber, CureOutlook> after,
                     Map<SeatNumber, CureOutlook> before) {
        OptionalDouble moved = poured.stream()
                .filter(p -> p.judgedSetAt().isEmpty() && !p.left())
                .filter(p -> Double.isFinite(ready(after, p)) && Double.isFinite(ready(before, p)))
                .mapToDouble(p -> ready(after, p) - ready(before, p))
                .average();
        boolean refit = seen.seat().isPresent();
        if (moved.isEmpty()) {
            return refit ? "The room has learned from " + seen.words() + "." : "";
        }
        long minutes = Math.round(Math.abs(moved.getAsDouble()));
        if (minutes < 1) {
            return refit ? "Room refitted from " + seen.words() + ": it fits what was expected, within a minute." : "";
        }
        return (refit ? "Room refitted from " : "Recomputed from ") + seen.words() + ": candles about " + minutes
                + " min " + (moved.getAsDouble() < 0 ? "sooner." : "later.");
    }

    private static double ready(Map<SeatNumber, CureOutlook> outlooks, PouredCandle p) {
        return outlooks.get(p.seat()).ready().p50();
    }
}

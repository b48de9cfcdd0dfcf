package benchpace.board.cooling;

import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.MinuteRange;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * By how much the last thing that was seen moved the forecast: a refit is never silent.
 *
 * @param laterMinutes by how much later the candles are expected that are waited for, on average; below 0 if sooner,
 *                     empty if there are none
 * @param moved        what is said of one of them, rounded as it is, became another range
 */
public record Refit(Observation seen, OptionalDouble laterMinutes, boolean moved) {
    /** For so long everybody is told why a range has become another one. */
    private static final Duration NEWS = Duration.ofMinutes(5);

    /** @param before the outlooks as they were without it */
    static Refit of(Observation seen, List<PouredCandle> poured, Map<SeatNumber, CureOutlook> after,
                    Map<SeatNumber, CureOutlook> before) {
        List<PouredCandle> waited = poured.stream().filter(p -> p.judgedSetAt().isEmpty() && !p.left()).toList();
        return new Refit(seen, waited.stream()
                .filter(p -> Double.isFinite(ready(after, p).p50()) && Double.isFinite(ready(before, p).p50()))
                .mapToDouble(p -> ready(after, p).p50() - ready(before, p).p50())
                .average(), waited.stream().anyMatch(p -> !said(after, p).equals(said(before, p))));
    }

    private static MinuteRange ready(Map<SeatNumber, CureOutlook> outlooks, PouredCandle p) {
        return outlooks.get(p.seat()).ready();
    }

    private static SaidRange said(Map<SeatNumber, CureOutlook> outlooks, PouredCandle p) {
        return SaidRange.of(p.computed(ready(outlooks, p)));
    }

    /** Up to when that is news. */
    public Instant newsUntil() {
        return seen.at().plus(NEWS);
    }

    /** Whether a range has just become another one. */
    public boolean isNews(Instant now) {
        return moved && now.isBefore(newsUntil());
    }
}

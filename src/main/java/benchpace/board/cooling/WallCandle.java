package benchpace.board.cooling;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The candle that the wall shows cut open: the kind that most seats wait for, and of kinds alike in number the one that
 * is ready last. Among its seats the last one poured, so that nobody is shown further than they are.
 *
 * @param seats its seats, that of the candle shown last
 */
record WallCandle(PouredCandle candle, List<Integer> seats) {
    WallCandle {
        seats = List.copyOf(seats);
    }

    /** Empty when no candle is waited for. */
    static Optional<WallCandle> of(ClassCandles candles, Map<SeatNumber, CandleClock> clocks) {
        Map<String, List<PouredCandle>> kinds = new LinkedHashMap<>();
        for (PouredCandle p : candles.poured()) {
            if (!p.left() && !clocks.get(p.seat()).settled()) {
                kinds.computeIfAbsent(p.candle().id(), k -> new ArrayList<>()).add(p);
            }
        }
        return kinds.values().stream()
                .max(Comparator.comparing((List<PouredCandle> kind) -> kind.size())
                        .thenComparing(kind -> lastReady(kind, clocks)))
                .map(WallCandle::of);
    }

    private static Instant lastReady(List<PouredCandle> kind, Map<SeatNumber, CandleClock> clocks) {
        return kind.stream().map(p -> clocks.get(p.seat()).ready().likely()).max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static WallCandle of(List<PouredCandle> kind) {
        List<PouredCandle> byPour = kind.stream().sorted(Comparator.comparing(PouredCandle::pouredAt)).toList();
        PouredCandle last = byPour.get(byPour.size() - 1);
        return new WallCandle(last, byPour.stream().map(p -> p.seat().value()).toList());
    }
}

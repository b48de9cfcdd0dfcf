package benchpace.board.cooling;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The cure by the plan's own figure: every candle takes what the plan says. */
public final class PlanCureClock implements CureClock {
    /**
     * One standard deviation of a cure as a share of the plan's figure: 6 in 100 between classes and 3 between candles,
     * as the pace reckons ({@link benchpace.pace.belief.PacePriors.Cure}), taken together.
     */
    public static final double SPREAD = 0.07;
    private static final double NORMAL_P90 = 1.2816;

    @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
        Duration cure = live.plan().plannedCure();
        Progress progress = live.progress();
        Map<SeatNumber, CandleClock> clocks = new TreeMap<>();
        for (Seat seat : live.seats()) {
            Optional<Instant> poured = progress.pouredAt(seat);
            if (poured.isPresent() && seat.sharesWith().isEmpty()) {
                clocks.put(seat.number(), clock(seat, progress.settledAt(seat), poured.get(), cure));
            }
        }
        return CandleClock.saidTogether(clocks);
    }

    private static CandleClock clock(Seat seat, Optional<Instant> settled, Instant poured, Duration cure) {
        Instant ready = poured.plus(cure);
        Duration spread = Duration.ofSeconds(Math.round(NORMAL_P90 * SPREAD * cure.toSeconds()));
        ReadyWindow window = settled.map(ReadyWindow::byHand).orElseGet(() -> new ReadyWindow(ready.minus(spread),
                ready, ready.plus(spread), ReadyWindow.Basis.PLAN_FIGURE));
        return new CandleClock(poured, window, seat.judgedSetAt(), Optional.empty());
    }
}

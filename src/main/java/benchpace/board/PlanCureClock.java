package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The cure by the plan's own figure: every candle takes what the plan says. */
public final class PlanCureClock implements CureClock {
    /** For a plan with a pour and no cure step: about an hour; common practice, no source. */
    static final Duration ABOUT_AN_HOUR = Duration.ofMinutes(60);

    @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
        Duration cure = live.plan().cure().map(Step::planned).orElse(ABOUT_AN_HOUR);
        Progress progress = live.progress();
        Map<SeatNumber, CandleClock> clocks = new TreeMap<>();
        for (Seat seat : live.seats()) {
            Optional<Instant> poured = progress.pouredAt(seat);
            if (poured.isPresent() && seat.sharesWith().isEmpty()) {
                clocks.put(seat.number(), clock(seat, poured.get(), cure));
            }
        }
        return clocks;
    }

    private static CandleClock clock(Seat seat, Instant poured, Duration cure) {
        Instant ready = poured.plus(cure);
        ReadyWindow window = seat.judgedSetAt()
                .map(at -> new ReadyWindow(at, at, at, ReadyWindow.Basis.HAND_TEST))
                .orElse(new ReadyWindow(ready, ready, ready, ReadyWindow.Basis.PLAN_FIGURE));
        return new CandleClock(poured, window, seat.judgedSetAt());
    }
}

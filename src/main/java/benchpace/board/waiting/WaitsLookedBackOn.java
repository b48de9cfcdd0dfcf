package benchpace.board.waiting;

import benchpace.board.cooling.CandleClock;
import benchpace.breaks.Assignment;
import benchpace.live.ActivityRun;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.report.SeatIdle;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each seat had to do in its wait, as it went: the parts that the plan of the wait counts as done, be it by a tap
 * or, as taps are optional, because nobody tapped otherwise. While the class waits, a seat's idle minutes here are
 * those that its strip counts so far.
 */
public final class WaitsLookedBackOn {
    private final LiveClass live;
    private final Map<SeatNumber, CandleClock> clocks;
    private final Map<SeatNumber, SeatPast> past;
    private final Instant end;

    private WaitsLookedBackOn(LiveClass live, Map<SeatNumber, CandleClock> clocks, Map<SeatNumber, SeatPast> past,
                              Instant end) {
        this.live = live;
        this.clocks = clocks;
        this.past = past;
        this.end = end;
    }

    /**
     * One for each seat whose candle, or the one it shares, was poured, in order.
     *
     * @param end how far the class is looked at
     * @return empty if the plan has nothing to do in the wait
     * @throws IllegalStateException if the wait cannot be planned
     */
    public static List<SeatIdle> of(WaitChain waits, LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now,
                                    Instant end) {
        return new WaitsLookedBackOn(live, clocks, waits.past(live, now), end).seats();
    }

    private List<SeatIdle> seats() {
        List<SeatIdle> seats = new ArrayList<>();
        for (Seat seat : live.seats()) {
            SeatPast known = past.get(seat.number());
            SeatNumber maker = seat.sharesWith().orElse(seat.number());
            CandleClock clock = clocks.get(maker);
            Optional<Seat> owner = live.seat(maker);
            if (known != null && clock != null && owner.isPresent()) {
                Instant from = new WaitProblems(live, clocks, end).handsFree(owner.get(), clock.pouredAt());
                seats.add(idle(seat, from, until(known, clock), known));
            }
        }
        return seats;
    }

    private Instant until(SeatPast known, CandleClock clock) {
        Instant until = clock.ready().likely().isBefore(end) ? clock.ready().likely() : end;
        return known.over().filter(until::isAfter).orElse(until);
    }

    private SeatIdle idle(Seat seat, Instant from, Instant until, SeatPast known) {
        List<Assignment> tapped = new ArrayList<>();
        List<Assignment> assumed = new ArrayList<>();
        for (Assignment part : known.strip().parts()) {
            if (part.status() == Assignment.Status.DONE || part.status() == Assignment.Status.UNDER_WAY) {
                (isTapped(seat, part) ? tapped : assumed).add(part);
            }
        }
        return SeatIdle.of(seat.number().value(), from, until, tapped, assumed);
    }

    /** By a tap of its own, or by the opening of a break of the whole class. */
    private boolean isTapped(Seat seat, Assignment part) {
        ActivityRun run = live.activity(part.activity());
        return seat.stints().stream().anyMatch(s -> s.activity().equals(part.activity())
                        && s.from().equals(part.from()))
                || run.openedAt().filter(part.from()::equals).isPresent();
    }
}

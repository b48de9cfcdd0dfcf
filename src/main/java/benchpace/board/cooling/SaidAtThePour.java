package benchpace.board.cooling;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the board said of each candle as soon as it was told of its pour: from the log up to that event, and from what
 * the room had taught before the class. What was learned later in the class is not in it.
 */
public final class SaidAtThePour {
    private SaidAtThePour() { }

    /**
     * By seat, of every candle that a hand has decided on since; none of one that was set before its pour was told, or
     * that another seat began.
     *
     * @param live a class as far as it has come
     */
    public static Map<SeatNumber, CandleClock> of(CureClock clock, String classId, LiveClass live) {
        Map<SeatNumber, CandleClock> said = new TreeMap<>();
        for (Seat seat : live.seats()) {
            if (live.progress().settledAt(seat).isPresent() && seat.sharesWith().isEmpty()) {
                telling(live, seat).map(told -> clock.clocksOf(classId,
                                LiveClass.of(live.history().subList(0, (int) told.seq())), told.recordedAt()))
                        .map(clocks -> clocks.get(seat.number())).filter(c -> !c.settled())
                        .ifPresent(c -> said.put(seat.number(), c));
            }
        }
        return said;
    }

    /** The event that told of the pour of the wax now in the vessel. */
    private static Optional<Recorded> telling(LiveClass live, Seat seat) {
        Progress progress = live.progress();
        Optional<Instant> poured = progress.pouredAt(seat);
        List<Recorded> events = live.corrected();
        return poured.flatMap(at -> events.stream().filter(r -> !live.isUndone(r.seq()) && r.at().equals(at))
                .filter(r -> tells(live.plan(), seat.number(), r.event())).reduce((first, last) -> last));
    }

    private static boolean tells(Plan plan, SeatNumber seat, ClassEvent event) {
        int pour = plan.pour().map(p -> plan.indexOf(p.id())).orElse(Integer.MAX_VALUE);
        return event instanceof ClassEvent.PouredAgain again && again.seat().equals(seat)
                || event instanceof ClassEvent.StepFinished done && done.seat().equals(seat)
                && plan.indexOf(done.step()) >= pour;
    }
}

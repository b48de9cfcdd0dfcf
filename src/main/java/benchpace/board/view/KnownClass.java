package benchpace.board.view;

import benchpace.board.cooling.CandleClock;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The class as a screen needs it to go on by itself while the board is out of its reach.
 *
 * @param steps  of the plan, in order
 * @param closed the event that closed the class; 0 while it runs
 * @param seats  what was told about each
 * @param firm   from when each candle that is poured is said to be ready, so that a hand test may succeed
 * @param upToCure position of the step to which the class has come, the led steps after the cure left out; -1 for none
 * @param whole    the same, all steps counted
 * @param tried    whether a candle was judged set or is past the cure
 */
public record KnownClass(List<Step> steps, List<Opened> opened, long closed, List<Seat> seats,
                         Map<SeatNumber, Instant> firm, int upToCure, int whole, boolean tried) {

    /** Nothing a page could go on by. */
    static final KnownClass NOTHING = new KnownClass(List.of(), List.of(), 0, List.of(), Map.of(), -1, -1, false);

    /** A led step that is open. @param seq the event that opened it */
    public record Opened(String step, Instant at, long seq) { }

    public KnownClass {
        steps = List.copyOf(steps);
        opened = List.copyOf(opened);
        seats = List.copyOf(seats);
        firm = Map.copyOf(firm);
    }

    static KnownClass of(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        List<Opened> opened = new ArrayList<>();
        long closed = 0;
        for (Recorded recorded : live.corrected()) {
            if (!live.isUndone(recorded.seq()) && recorded.event() instanceof ClassEvent.StepOpened open) {
                opened.add(new Opened(open.step().value(), recorded.at(), recorded.seq()));
            } else if (!live.isUndone(recorded.seq()) && recorded.event() instanceof ClassEvent.ClassClosed) {
                closed = recorded.seq();
            }
        }
        Map<SeatNumber, Instant> firm = new TreeMap<>();
        clocks.forEach((seat, clock) -> firm.put(seat, clock.said().from()));
        return new KnownClass(live.plan().steps(), opened, closed, List.copyOf(live.seats()), firm,
                live.reach().upToCure().index(), live.reach().whole().index(), live.reach().firm());
    }
}

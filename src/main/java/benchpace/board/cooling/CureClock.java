package benchpace.board.cooling;

import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import benchpace.report.whatif.SmallerCandles;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** Tells when each poured candle of a class should be firm enough. Same class and instant, same answer. */
public interface CureClock {
    /** @return one clock for every seat that has poured a candle of its own and is at the table or has left */
    Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now);

    /** The clocks alone, as {@link #cooling} has them, without what only screens need. */
    default Map<SeatNumber, CandleClock> clocksOf(String classId, LiveClass live, Instant now) {
        return clocks(live, now);
    }

    /** The clocks with what is known of the room. @param classId says what the room had taught before this class */
    default Cooling cooling(String classId, LiveClass live, Instant now) {
        return new Cooling(clocks(live, now), RoomView.NONE);
    }

    /** What holds without computing anything: the plan's own figure, and what was read and chosen. */
    default Cooling byFigure(LiveClass live, Instant now) {
        return new Cooling(new PlanCureClock().clocks(live, now), RoomView.NONE);
    }

    /** The class's candles in smaller vessels, where cures are computed. @param fillShare of what they held, 0 to 1 */
    default Optional<SmallerCandles> smaller(String classId, LiveClass live, double fillShare) {
        return Optional.empty();
    }

    /** Every candle that no hand has decided on, cut open as it should be now, by seat, where that is computed. */
    default Map<Integer, CutAway> cutOpen(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                          Instant now) {
        return Map.of();
    }

    /** A seat's candle cut open as it should be now, where that is computed. */
    default Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now) {
        return Optional.empty();
    }
}

package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Map;

/** Judges who is falling behind and when everyone goes home. Pure: same class, clocks and instant, same answer. */
public interface PaceWatch {
    Pace watch(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now);
}

package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Map;

/** Tells when each poured candle of a class should be firm enough. Pure: same class and instant, same answer. */
public interface CureClock {
    /** @return one clock for every seat that has poured a candle of its own and is at the table or has left */
    Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now);
}

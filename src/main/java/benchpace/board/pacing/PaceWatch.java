package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.live.LiveClass;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Map;

/** Judges who is behind and when everyone goes home. The same class, clocks and instant give the same answer. */
public interface PaceWatch {
    /** @param classId under which what was judged before may be kept, so that it need not be judged again */
    Pace watch(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now);

    /** What the class is judged by. */
    default PaceEngine engine(String classId, LiveClass live) {
        return new PaceEngine(PacePriors.standard());
    }
}

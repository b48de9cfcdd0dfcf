package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pace's own forecast of the last candle and no flags: for tests of a thousand classes. */
public final class ForecastOnly implements PaceWatch {
    @Override public Pace watch(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        Instant origin = ClassTracks.origin(live);
        double minutes = Math.max(0, ClassTracks.minutes(origin, now));
        HomeTime home = HomeTimes.of(live, clocks, origin,
                engine(classId, live).forecast(ClassTracks.of(live, clocks), minutes), now);
        return new Pace(Map.of(), Map.of(), List.of(), List.of(), home, Optional.empty(), Optional.empty());
    }
}

package benchpace.board.cooling;

import benchpace.board.attempt.Attempts;
import benchpace.board.attempt.Model;
import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/** A clock of the cure that gives way to the plan's own figure where it fails. */
public record CureOrPlan(CureClock computed, Attempts attempts) implements CureClock {
    @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
        return clocksOf("", live, now);
    }

    @Override public Map<SeatNumber, CandleClock> clocksOf(String classId, LiveClass live, Instant now) {
        return attempts.of(Model.CURE, live.seq(), now, () -> computed.clocksOf(classId, live, now),
                () -> byFigure(live, now).clocks());
    }

    @Override public Cooling cooling(String classId, LiveClass live, Instant now) {
        return attempts.of(Model.CURE, live.seq(), now, () -> computed.cooling(classId, live, now),
                () -> byFigure(live, now));
    }

    @Override public Cooling byFigure(LiveClass live, Instant now) {
        return computed.byFigure(live, now);
    }

    /** The drawings go with the computed times: without them none is asked for. */
    @Override public Map<Integer, CutAway> cutOpen(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                                   Instant now) {
        return attempts.among(Model.CURE).has(Model.CURE) ? Map.of()
                : attempts.of(Model.CUT, live.seq(), now, () -> computed.cutOpen(classId, live, clocks, now), Map::of);
    }

    @Override public Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now) {
        return attempts.of(Model.CUT, live.seq(), now, () -> computed.cutAway(classId, live, seat, now),
                Optional::empty);
    }
}

package benchpace.web;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.Cooling;
import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PaceWatch;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.live.LiveClass;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.AbstractMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** Models that fail when a test says so. */
public final class Failing {
    /** What fails. */
    public enum Part { WAIT, CURE, CUT, PACE, FLAGS, WORDS }

    private final Set<Part> broken = ConcurrentHashMap.newKeySet();
    private final AtomicInteger cures = new AtomicInteger();

    public void breaks(Part... parts) {
        broken.addAll(List.of(parts));
    }

    public void mends() {
        broken.clear();
    }

    /** How often the cure was asked for since the test began. */
    public int cures() {
        return cures.get();
    }

    public ViewMaker maker() {
        return new ViewMaker(new Cure(), new Watch(), TestBoard.ZONE);
    }

    private void fail(Part part) {
        if (broken.contains(part)) {
            throw new ArrayIndexOutOfBoundsException("of the " + part);
        }
    }

    private final class Cure implements CureClock {
        private final CureClock sound = new PlanCureClock();

        @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
            return sound.clocks(live, now);
        }

        /** Times that the planner of the wait alone cannot make anything of. */
        @Override public Map<SeatNumber, CandleClock> clocksOf(String classId, LiveClass live, Instant now) {
            Map<SeatNumber, CandleClock> clocks = sound.clocks(live, now);
            return broken.contains(Part.WAIT) ? new AbstractMap<>() {
                @Override public Set<Entry<SeatNumber, CandleClock>> entrySet() {
                    if (StackWalker.getInstance()
                            .walk(s -> s.anyMatch(f -> f.getClassName().endsWith("WaitProblems")))) {
                        fail(Part.WAIT);
                    }
                    return clocks.entrySet();
                }
            } : clocks;
        }

        @Override public Cooling cooling(String classId, LiveClass live, Instant now) {
            cures.incrementAndGet();
            fail(Part.CURE);
            return sound.cooling(classId, live, now);
        }

        @Override public Map<Integer, CutAway> cutOpen(String classId, LiveClass live,
                                                       Map<SeatNumber, CandleClock> clocks, Instant now) {
            fail(Part.CUT);
            return Map.of();
        }

        @Override public Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now) {
            fail(Part.CUT);
            return Optional.empty();
        }
    }

    private final class Watch implements PaceWatch {
        private final PaceWatch sound = new PosteriorPaceWatch();

        @Override public Pace watch(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                    Instant now) {
            fail(Part.PACE);
            Pace pace = sound.watch(classId, live, clocks, now);
            List<SeatNumber> urgent = broken.contains(Part.WORDS) ? List.of(new SeatNumber(60)) : pace.mostUrgent();
            return new Pace(pace.flags(), pace.eased(), urgent, pace.unticked(), pace.home(), pace.silence(),
                    pace.nextChange());
        }

        @Override public PaceEngine engine(String classId, LiveClass live) {
            fail(Part.FLAGS);
            return sound.engine(classId, live);
        }
    }
}

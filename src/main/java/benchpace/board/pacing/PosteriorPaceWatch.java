package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceView;
import benchpace.pace.SeatPace;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.Evaluation;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.pace.forecast.Forecast;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Pace by what missing taps mean: working, stalled, or done and not ticked. The judgement of the last half minute is
 * kept by class, only so that it need not be made again: a board that starts anew steps over the class's history and
 * says the same. May be asked by several threads; none waits for another, and the class's own lock is never needed.
 */
public final class PosteriorPaceWatch implements PaceWatch {
    private static final double MILLIS_A_MINUTE = 60_000;

    private final Priors priors;
    private final Map<String, Judged> last = new ConcurrentHashMap<>();

    /** Where a class finds what is believed of its steps before it begins; the same whenever it is asked. */
    @FunctionalInterface
    public interface Priors {
        /** @return by step id; steps not in it are believed to take what the plan says */
        Map<String, StepPrior> of(String classId, LiveClass live);
    }

    /** What was judged of a class at the last half minute. @param origin what its minutes count from */
    private record Judged(Instant origin, ClassTrack track, PaceMemory memory) { }

    /** Every class is judged by its plan's figures. */
    public PosteriorPaceWatch() {
        this((classId, live) -> Map.of());
    }

    public PosteriorPaceWatch(Priors priors) {
        this.priors = priors;
    }

    @Override public PaceEngine engine(String classId, LiveClass live) {
        return new PaceEngine(PacePriors.standard().withSteps(priors.of(classId, live)));
    }

    @Override public Pace watch(String classId, LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        if (live.closedAt().isPresent()) {
            last.remove(classId);
            return Pace.unjudged(HomeTimes.ofClosed(live, clocks));
        }
        Instant origin = ClassTracks.origin(live);
        ClassTrack track = ClassTracks.of(live, clocks);
        PaceEngine engine = engine(classId, live);
        double minutes = ClassTracks.minutes(origin, now);
        if (minutes < 0 || live.isLeftOpen(now)) {
            Forecast forecast = engine.forecast(track, Math.max(0, minutes));
            return Pace.unjudged(HomeTimes.of(live, clocks, origin, forecast, now));
        }
        PaceMemory memory = memory(engine, classId, origin, track, minutes);
        Evaluation evaluation = engine.evaluate(track, minutes);
        PaceView view = engine.judge(evaluation, memory);
        Map<SeatNumber, SeatFlag> flags = new TreeMap<>();
        view.seats().stream().filter(s -> s.level() != Level.NONE)
                .forEach(s -> flags.put(new SeatNumber(s.seat()), SeatFlag.of(s, s.level(), stepName(live, s))));
        Map<SeatNumber, Eased> eased = eased(live, view);
        return new Pace(flags, eased, mostUrgent(view), unticked(engine, live, evaluation),
                HomeTimes.of(live, clocks, origin, evaluation.forecast(), now),
                silence(view, origin, now), nextChange(live, clocks, view, origin));
    }

    /** The seats that somebody has just left with "sorted", and that are as slow as before. */
    private static Map<SeatNumber, Eased> eased(LiveClass live, PaceView view) {
        Map<SeatNumber, Eased> eased = new TreeMap<>();
        for (SeatPace pace : view.seats()) {
            SeatNumber seat = new SeatNumber(pace.seat());
            if (pace.eased() != Level.NONE) {
                SeatFlag flag = SeatFlag.of(pace, pace.eased(), stepName(live, pace));
                SeatEvents.lastSorted(live, seat).ifPresent(r -> eased.put(seat, new Eased(flag,
                        SeatEvents.helper(r), r.at())));
            }
        }
        return eased;
    }

    /** The memory brought up to now, from what was kept if the past it rests on still stands. */
    private PaceMemory memory(PaceEngine engine, String classId, Instant origin, ClassTrack track, double minutes) {
        Judged before = last.get(classId);
        PaceMemory memory = before == null || !before.origin().equals(origin)
                ? engine.remember(track, minutes, PaceMemory.EMPTY)
                : engine.follow(before.track(), before.memory(), track, minutes);
        last.put(classId, new Judged(origin, track, memory));
        return memory;
    }

    private static String stepName(LiveClass live, SeatPace seat) {
        return live.plan().steps().get(seat.step()).name();
    }

    private static List<SeatNumber> mostUrgent(PaceView view) {
        return view.seats().stream().filter(s -> s.level() != Level.NONE)
                .sorted(Comparator.comparing(SeatPace::savedMinutes).reversed()
                        .thenComparing(s -> s.level() == Level.BEHIND ? 0 : 1).thenComparing(SeatPace::seat))
                .map(s -> new SeatNumber(s.seat()))
                .toList();
    }

    private static List<Pace.Unticked> unticked(PaceEngine engine, LiveClass live, Evaluation evaluation) {
        Optional<Step> next = live.nextLed();
        if (next.isEmpty()) {
            return List.of();
        }
        return engine.beforeOpening(evaluation, live.plan().indexOf(next.get().id())).stream()
                .map(u -> new Pace.Unticked(new SeatNumber(u.seat()), u.doneProbability(),
                        (int) Math.max(1, Math.round(u.remainingMinutes())), u.leaveMinutes()))
                .toList();
    }

    private static Optional<Duration> silence(PaceView view, Instant origin, Instant now) {
        if (!view.tabletSilent()) {
            return Optional.empty();
        }
        Instant lastTap = instant(origin, view.nowMinutes() - view.quietMinutes());
        return Optional.of(Duration.between(lastTap, now));
    }

    /** The next half minute while anybody is on the way to the pour; later only the candles' own windows count. */
    private static Optional<Instant> nextChange(LiveClass live, Map<SeatNumber, CandleClock> clocks, PaceView view,
                                                Instant origin) {
        boolean pouring = live.seats().stream().filter(Seat::makesCandle).map(Seat::number)
                .anyMatch(seat -> !clocks.containsKey(seat));
        boolean judging = view.seats().stream().anyMatch(s -> s.step() >= 0 || s.level() != Level.NONE);
        return pouring || judging ? Optional.of(instant(origin, view.nextMinutes())) : Optional.empty();
    }

    public static Instant instant(Instant origin, double minutes) {
        return origin.plusMillis(Math.round(minutes * MILLIS_A_MINUTE));
    }
}

package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.WorkKind;
import benchpace.report.ActivityNetwork.Activity;
import benchpace.report.Part.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Makes the network of a class that has happened. Each part waits for what it could not begin without: a seat's step
 * for its step before, its beginning and the opening; a cure for its pour. An opening waits for everything that went
 * before it, since that is what the instructor waited for: also for a seat that was still at an earlier step, which is
 * why such a stretch is parted a minute before. A part's length is what passed between the last of those and its own
 * end, so that the network's earliest times are the recorded ones.
 */
final class ClassNetwork {
    private static final double ROUNDING = 1e-9;
    /** From seeing that all are done to opening the next step: common practice, no source. */
    private static final double USUAL_REACTION_MINUTES = 1;

    private final ClassTrack track;
    private final Map<Part, Activity<Part>> parts = new LinkedHashMap<>();
    private final Map<Part, Double> ends = new LinkedHashMap<>();
    private final Map<Part, Double> planned = new LinkedHashMap<>();
    private final Map<Part, Double> away = new LinkedHashMap<>();
    private final Map<Integer, List<StepTime>> times = new LinkedHashMap<>();

    private ClassNetwork(ClassTrack track) {
        this.track = track;
        for (SeatTrack seat : track.seats()) {
            times.put(seat.seat(), StepTime.of(track, seat));
        }
    }

    /**
     * A class's network.
     *
     * @param network it ends with the candles
     * @param planned what the plan gives each of its parts, minutes; only talks, steps and cures have any
     * @param away how much of each part its guest was away from the table, minutes
     */
    record Made(ActivityNetwork<Part> network, Map<Part, Double> planned, Map<Part, Double> away) {
        Made {
            planned = Map.copyOf(planned);
            away = Map.copyOf(away);
        }
    }

    /** @param candles by seat, those that the class waits for, at least one */
    static Made of(ClassTrack track, Map<Integer, CandleTime> candles) {
        return new ClassNetwork(track).made(candles);
    }

    private Made made(Map<Integer, CandleTime> candles) {
        beginnings();
        for (int k = 0; k <= track.pourStep(); k++) {
            PaceStep step = track.steps().get(k);
            double opened = step.led() ? track.openedMinutes().get(k) : 0;
            if (opened == SeatTrack.NOT_YET) {
                continue;
            }
            if (step.led()) {
                opening(k, opened);
            }
            if (step.kind() == WorkKind.TALK && (step.led() || k == 0)) {
                double over = Math.min(opened + step.planMinutes(), nextOpening(k, opened));
                add(new Part(Kind.TALK, 0, k), over, step.planMinutes(), 0,
                        step.led() ? Set.of(openingOf(k)) : Set.of());
            }
            if (step.kind().isWorked()) {
                worked(k);
            }
        }
        List<Part> last = new ArrayList<>();
        candles.forEach((seat, candle) -> last.add(cure(seat, candle)));
        return new Made(new ActivityNetwork<>(parts.values(), last), planned, away);
    }

    private void beginnings() {
        for (SeatTrack seat : track.seats()) {
            double arrived = seat.arrivedMinutes();
            if (arrived > 0 && arrived < SeatTrack.NOT_YET) {
                add(new Part(Kind.BEGINNING, seat.seat(), 0), arrived, 0, 0, Set.of());
            }
        }
    }

    private void opening(int k, double opened) {
        add(openingOf(k), opened, 0, 0, ended(opened, p -> p.kind() != Kind.BEGINNING));
    }

    /** The opening of a step: the class's start, a talk's overtime, or plain waiting. */
    private Part openingOf(int k) {
        boolean talked = k > 0 && track.steps().get(k - 1).kind() == WorkKind.TALK;
        return new Part(k == 0 ? Kind.START : talked ? Kind.OVERTIME : Kind.OPENING, 0, k);
    }

    private double nextOpening(int talk, double opened) {
        for (int k = talk + 1; k < track.steps().size(); k++) {
            if (track.steps().get(k).led()) {
                return Math.max(track.openedMinutes().get(k), opened);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private Set<Part> ended(double by, Predicate<Part> which) {
        Set<Part> before = new LinkedHashSet<>();
        ends.forEach((part, end) -> {
            if (end <= by + ROUNDING && which.test(part)) {
                before.add(part);
            }
        });
        return before;
    }

    /** In the order in which they were done, as one seat's turn at a station begins with the end of another's. */
    private void worked(int k) {
        record Done(int seat, StepTime time) { }
        times.entrySet().stream()
                .flatMap(e -> e.getValue().stream().filter(t -> t.step() == k).map(t -> new Done(e.getKey(), t)))
                .sorted(Comparator.comparingDouble((Done d) -> inTurn(k) ? d.time().toMinutes() : 0))
                .forEach(done -> worked(done.seat(), done.time()));
    }

    private boolean inTurn(int k) {
        return track.steps().get(k).stations().isPresent();
    }

    /** Whether the turn of a seat at step k began as that part ended: it waited for it, and not for itself. */
    private boolean gaveWay(Part part, int k, double turn) {
        return inTurn(k) && part.kind() == Kind.STEP && part.step() == k
                && Math.abs(ends.get(part) - turn) <= ROUNDING;
    }

    private void worked(int seat, StepTime time) {
        int k = time.step();
        Set<Part> before = ended(time.toMinutes(), p -> p.step() <= k && (p.seat() == seat
                || gaveWay(p, k, time.fromMinutes())
                || p.seat() == 0 && (p.kind() != Kind.TALK || ends.get(p) <= time.fromMinutes() + ROUNDING)));
        before = freeTalk(seat, time, before);
        double plan = track.steps().get(k).planMinutes();
        double from = begin(before);
        double paused = time.awayMinutes();
        int stretch = 0;
        for (double cut : Stream.concat(laterOpenings(time, from), Stream.of(time.toMinutes())).toList()) {
            Part part = new Part(Kind.STEP, seat, k, stretch++);
            double share = time.toMinutes() - from > 0 ? (cut - begin(before)) / (time.toMinutes() - from) : 0;
            add(part, cut, plan, paused * share, before);
            plan = Math.max(0, plan - (parts.get(part).length() - away.get(part)));
            before = Set.of(part);
        }
    }

    /** When the instructor set about opening later steps while the seat was at this one. */
    private Stream<Double> laterOpenings(StepTime time, double from) {
        return Stream.iterate(time.step() + 1, k -> k <= track.pourStep(), k -> k + 1)
                .filter(k -> track.steps().get(k).led()).map(k -> track.openedMinutes().get(k))
                .filter(at -> at < time.toMinutes() - ROUNDING).map(at -> at - reaction(at))
                .filter(at -> at > from + ROUNDING).distinct().sorted();
    }

    /** How much of the time before an opening was the opening's own: up to a minute since the last thing was done. */
    private double reaction(double opened) {
        double last = 0;
        for (int k = 0; k < track.steps().size(); k++) {
            PaceStep step = track.steps().get(k);
            double begun = step.led() ? track.openedMinutes().get(k) : SeatTrack.NOT_YET;
            last = begun < opened ? Math.max(last, begun) : last;
            boolean over = step.kind() == WorkKind.TALK && begun + step.planMinutes() <= opened;
            last = over ? Math.max(last, begun + step.planMinutes()) : last;
        }
        for (List<StepTime> seat : times.values()) {
            last = seat.stream().mapToDouble(StepTime::toMinutes).filter(at -> at <= opened).reduce(last, Math::max);
        }
        return Math.min(USUAL_REACTION_MINUTES, opened - last);
    }

    /** A talk that every seat hears when it gets there: it begins with the step after the talk's time box. */
    private Set<Part> freeTalk(int seat, StepTime time, Set<Part> before) {
        int talk = time.step() - 1;
        boolean heard = talk > 0 && track.steps().get(talk).kind() == WorkKind.TALK && !track.steps().get(talk).led()
                && time.fromMinutes() > begin(before) + ROUNDING;
        if (!heard) {
            return before;
        }
        Part part = new Part(Kind.TALK, seat, talk);
        add(part, time.fromMinutes(), track.steps().get(talk).planMinutes(), 0, before);
        return Set.of(part);
    }

    private Part cure(int seat, CandleTime candle) {
        int k = track.pourStep();
        Set<Part> before = new LinkedHashSet<>(ended(Double.MAX_VALUE, p -> p.kind() == Kind.STEP && p.seat() == seat
                && p.step() == k));
        if (before.isEmpty() || candle.pouredMinutes() > begin(before) + ROUNDING) {
            Part again = new Part(Kind.POURED_AGAIN, seat, k);
            add(again, candle.pouredMinutes(), 0, 0, before);
            before = Set.of(again);
        }
        Part cure = new Part(Kind.CURE, seat, k);
        add(cure, candle.readyMinutes(), track.cureMinutes(), 0, before);
        return cure;
    }

    private double begin(Set<Part> before) {
        return before.stream().mapToDouble(ends::get).max().orElse(0);
    }

    private void add(Part part, double end, double plannedMinutes, double awayMinutes, Set<Part> before) {
        double begin = begin(before);
        double length = Math.max(0, end - begin);
        parts.put(part, new Activity<>(part, length, before));
        ends.put(part, Math.max(begin, end));
        planned.put(part, plannedMinutes);
        away.put(part, Math.min(length, awayMinutes));
    }
}

package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepKind;
import benchpace.pace.StepTime;
import benchpace.report.ActivityNetwork.Activity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Makes the network of a class that has happened. Each part waits for what it could not begin without: a seat's step
 * for its step before, its arrival and the opening; an opening for everything that was ticked before it, since that is
 * what the instructor waited for; a cure for its pour. A part's length is what passed between the last of those and its
 * own end, so that the network's earliest times are the recorded ones.
 */
final class ClassNetwork {
    private static final double ROUNDING = 1e-9;

    private final ClassTrack track;
    private final Map<Part, Activity<Part>> parts = new LinkedHashMap<>();
    private final Map<Part, Double> ends = new LinkedHashMap<>();
    private final Map<Part, Double> planned = new LinkedHashMap<>();
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
     * @param planned what the plan gives each of its parts, minutes; openings, arrivals and second pours none
     */
    record Made(ActivityNetwork<Part> network, Map<Part, Double> planned) { }

    /** @param candles by seat, those that the class waits for, at least one */
    static Made of(ClassTrack track, Map<Integer, CandleTime> candles) {
        return new ClassNetwork(track).made(candles);
    }

    private Made made(Map<Integer, CandleTime> candles) {
        arrivals();
        for (int k = 0; k <= track.pourStep(); k++) {
            PaceStep step = track.steps().get(k);
            double opened = step.led() ? track.openedMinutes().get(k) : 0;
            if (opened == SeatTrack.NOT_YET) {
                continue;
            }
            if (step.led()) {
                add(new Part(Part.Kind.OPENING, 0, k), opened, 0, allBefore(opened));
            }
            if (step.kind() == StepKind.TALK && (step.led() || k == 0)) {
                double over = Math.min(opened + step.planMinutes(), nextOpening(k));
                add(new Part(Part.Kind.TALK, 0, k), over, step.planMinutes(), opening(k));
            }
            if (step.kind().isWorked()) {
                worked(k);
            }
        }
        List<Part> last = new ArrayList<>();
        candles.forEach((seat, candle) -> last.add(cure(seat, candle)));
        return new Made(new ActivityNetwork<>(parts.values(), last), planned);
    }

    private void arrivals() {
        for (SeatTrack seat : track.seats()) {
            double arrived = seat.arrivedMinutes();
            if (arrived > 0 && arrived < SeatTrack.NOT_YET) {
                add(new Part(Part.Kind.ARRIVAL, seat.seat(), 0), arrived, 0, Set.of());
            }
        }
    }

    private double nextOpening(int talk) {
        for (int k = talk + 1; k < track.steps().size(); k++) {
            if (track.steps().get(k).led()) {
                return Math.max(track.openedMinutes().get(k), track.openedMinutes().get(talk));
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Everything that was over when the instructor opened a step. */
    private Set<Part> allBefore(double opened) {
        Set<Part> before = new LinkedHashSet<>();
        ends.forEach((part, end) -> {
            if (end <= opened + ROUNDING && part.kind() != Part.Kind.ARRIVAL) {
                before.add(part);
            }
        });
        return before;
    }

    private Set<Part> opening(int k) {
        Part opening = new Part(Part.Kind.OPENING, 0, k);
        return ends.containsKey(opening) ? Set.of(opening) : Set.of();
    }

    private void worked(int k) {
        for (Map.Entry<Integer, List<StepTime>> seat : times.entrySet()) {
            for (StepTime time : seat.getValue()) {
                if (time.step() == k) {
                    Set<Part> before = new LinkedHashSet<>();
                    for (int j = k; j >= 0; j--) {
                        before.add(new Part(Part.Kind.STEP, seat.getKey(), j));
                        before.add(new Part(Part.Kind.TALK, 0, j));
                        before.add(new Part(Part.Kind.OPENING, 0, j));
                    }
                    before.add(new Part(Part.Kind.ARRIVAL, seat.getKey(), 0));
                    before.removeIf(p -> !ends.containsKey(p) || ends.get(p) > time.toMinutes() + ROUNDING
                            || ends.get(p) > time.fromMinutes() + ROUNDING && p.kind() == Part.Kind.TALK);
                    add(new Part(Part.Kind.STEP, seat.getKey(), k), time.toMinutes(),
                            track.steps().get(k).planMinutes(), before);
                }
            }
        }
    }

    private Part cure(int seat, CandleTime candle) {
        int k = track.pourStep();
        Part pour = new Part(Part.Kind.STEP, seat, k);
        Set<Part> before = ends.containsKey(pour) ? Set.of(pour) : Set.of();
        if (before.isEmpty() || candle.pouredMinutes() > ends.get(pour) + ROUNDING) {
            Part again = new Part(Part.Kind.POURED_AGAIN, seat, k);
            add(again, candle.pouredMinutes(), 0, before);
            before = Set.of(again);
        }
        Part cure = new Part(Part.Kind.CURE, seat, k);
        add(cure, candle.readyMinutes(), track.cureMinutes(), before);
        return cure;
    }

    private void add(Part part, double end, double plannedMinutes, Set<Part> before) {
        double begin = before.stream().mapToDouble(ends::get).max().orElse(0);
        parts.put(part, new Activity<>(part, Math.max(0, end - begin), before));
        ends.put(part, Math.max(begin, end));
        planned.put(part, plannedMinutes);
    }
}

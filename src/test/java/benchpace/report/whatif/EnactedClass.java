package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatTrack;
import benchpace.pace.Tap;
import benchpace.pace.WorkKind;
import benchpace.report.CandleTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;

/**
 * A class played out event by event: guests come, work, queue and wait, the instructor opens what enough are ready
 * for. Nothing of {@link Reenactment} is used: it is what that is held to.
 */
final class EnactedClass {
    /** What a class is made of; changed copies of it are other classes with the same people. */
    record Cast(List<PaceStep> steps, double[] arrives, double[][] work, int[] few, double[] lag, double[] cure) {
        int seats() {
            return arrives.length;
        }

        Cast withSteps(List<PaceStep> other) {
            return new Cast(other, arrives, work, few, lag, cure);
        }

        Cast withWork(double[][] other) {
            return new Cast(steps, arrives, other, few, lag, cure);
        }

        Cast withLag(double[] other) {
            return new Cast(steps, arrives, work, few, other, cure);
        }

        /**
         * The same class, its instructor as strict as it shows: when a talk is over for all at once, or a step waited
         * for its turn only, more were ready than had to be, and no record tells how few would have done.
         */
        Cast asStrictAsItShows() {
            int[] missing = new EnactedClass(this).missing;
            int[] shown = few.clone();
            for (int k = 1; k < shown.length; k++) {
                shown[k] = steps.get(k).led() ? missing[k] : few[k];
            }
            return new Cast(steps, arrives, work, shown, lag, cure);
        }

        /** The same without a step. */
        Cast without(int step) {
            List<PaceStep> left = new ArrayList<>(steps);
            left.remove(step);
            double[][] works = new double[work.length][];
            for (int i = 0; i < works.length; i++) {
                works[i] = without(work[i], step);
            }
            int[] fewer = new int[few.length - 1];
            for (int k = 0; k < fewer.length; k++) {
                fewer[k] = few[k < step ? k : k + 1];
            }
            return new Cast(left, arrives, works, fewer, without(lag, step), cure);
        }

        private static double[] without(double[] all, int step) {
            double[] left = new double[all.length - 1];
            for (int k = 0; k < left.length; k++) {
                left[k] = all[k < step ? k : k + 1];
            }
            return left;
        }
    }

    private record Moment(double at, long order, Runnable what) { }

    private final Cast cast;
    private final int steps;
    private final PriorityQueue<Moment> coming = new PriorityQueue<>(
            Comparator.comparingDouble(Moment::at).thenComparing(Moment::order));
    private final boolean[] open;
    private final boolean[] called;
    private final int[] next;
    private final int[] hearing;
    private final int[] begun;
    private final List<Deque<Integer>> queues = new ArrayList<>();
    private final int[] taken;
    private long order;

    /** How many were not ready when a step was opened. */
    final int[] missing;
    final double[] opened;
    final double[][] done;

    EnactedClass(Cast cast) {
        this.cast = cast;
        this.steps = cast.steps().size();
        open = new boolean[steps];
        called = new boolean[steps];
        next = new int[cast.seats()];
        hearing = new int[cast.seats()];
        begun = new int[cast.seats()];
        taken = new int[steps];
        missing = new int[steps];
        opened = new double[steps];
        done = new double[cast.seats()][steps];
        for (int k = 0; k < steps; k++) {
            queues.add(new ArrayDeque<>());
            opened[k] = cast.steps().get(k).led() ? SeatTrack.NOT_YET : 0;
        }
        for (int i = 0; i < cast.seats(); i++) {
            int seat = i;
            next[i] = -1;
            hearing[i] = -1;
            begun[i] = -1;
            later(cast.arrives()[i], () -> comesTo(seat, 0, cast.arrives()[seat]));
        }
        call(0);
        while (!coming.isEmpty()) {
            coming.poll().what().run();
        }
    }

    private void later(double at, Runnable what) {
        coming.add(new Moment(at, order++, what));
    }

    private void comesTo(int seat, int k, double now) {
        next[seat] = k;
        call(now);
        if (k < steps && (!cast.steps().get(k).led() || open[k])) {
            begin(seat, k, now);
        }
    }

    private void begin(int seat, int k, double now) {
        begun[seat] = k;
        PaceStep step = cast.steps().get(k);
        if (step.kind() == WorkKind.TALK) {
            int led = k + 1;
            while (led < steps && !cast.steps().get(led).led()) {
                led++;
            }
            if (led < steps && open[led]) {
                through(seat, k, now);
                return;
            }
            hearing[seat] = k;
            later(now + step.planMinutes(), () -> {
                if (hearing[seat] == k) {
                    through(seat, k, now + step.planMinutes());
                }
            });
        } else if (step.stations().isPresent() && taken[k] == step.stations().get().atOnce()) {
            queues.get(k).add(seat);
        } else {
            work(seat, k, now);
        }
    }

    private void work(int seat, int k, double now) {
        double minutes = cast.work()[seat][k];
        PaceStep step = cast.steps().get(k);
        if (step.stations().isPresent()) {
            PaceStations stations = step.stations().get();
            taken[k]++;
            double rest = step.planMinutes() - stations.eachMinutes();
            double kept = Math.min(minutes, Math.max(stations.eachMinutes(), minutes - rest));
            later(now + kept, () -> {
                taken[k]--;
                Integer first = queues.get(k).poll();
                if (first != null) {
                    work(first, k, now + kept);
                }
            });
        }
        later(now + minutes, () -> through(seat, k, now + minutes));
    }

    private void through(int seat, int k, double now) {
        hearing[seat] = -1;
        done[seat][k] = now;
        comesTo(seat, k + 1, now);
    }

    /** The instructor looks whether enough are ready for the next led step. */
    private void call(double now) {
        for (int k = 0; k < steps; k++) {
            if (!cast.steps().get(k).led() || open[k]) {
                continue;
            }
            if (!called[k] && notReady(k) <= cast.few()[k]) {
                called[k] = true;
                int step = k;
                later(now + cast.lag()[k], () -> open(step, now + cast.lag()[step]));
            }
            return;
        }
    }

    private int notReady(int k) {
        int count = 0;
        for (int at : next) {
            count += at < k ? 1 : 0;
        }
        return count;
    }

    private void open(int k, double now) {
        open[k] = true;
        opened[k] = now;
        missing[k] = notReady(k);
        for (int i = 0; i < cast.seats(); i++) {
            if (hearing[i] >= 0 && hearing[i] < k) {
                through(i, hearing[i], now);
            }
        }
        for (int i = 0; i < cast.seats(); i++) {
            if (next[i] == k && begun[i] < k) {
                begin(i, k, now);
            }
        }
        call(now);
    }

    double[] ready() {
        double[] ready = new double[cast.seats()];
        for (int i = 0; i < ready.length; i++) {
            ready[i] = done[i][steps - 1] + cast.cure()[i];
        }
        return ready;
    }

    double lastReady() {
        double last = 0;
        for (double one : ready()) {
            last = Math.max(last, one);
        }
        return last;
    }

    /** Its record, each tick so many minutes late. @param late by seat and step */
    ClassTrack track(double[][] late) {
        List<SeatTrack> seats = new ArrayList<>();
        List<Double> opens = new ArrayList<>();
        for (double at : opened) {
            opens.add(at);
        }
        for (int i = 0; i < cast.seats(); i++) {
            List<Tap> taps = new ArrayList<>();
            double before = 0;
            for (int k = 0; k < steps; k++) {
                if (cast.steps().get(k).kind() != WorkKind.TALK) {
                    before = Math.max(before, done[i][k] + late[i][k]);
                    taps.add(new Tap(k, before, false));
                }
            }
            seats.add(new SeatTrack(i + 1, i + 1, false, cast.arrives()[i], SeatTrack.NOT_YET, List.of(), taps,
                    List.of(), List.of(), List.of(), SeatTrack.NOT_YET, ReadyOutlook.UNKNOWN));
        }
        return new ClassTrack(cast.steps(), opens, 60, seats);
    }

    /** As the look back has them: poured when ticked, ready when judged. */
    Map<Integer, CandleTime> candles(ClassTrack track) {
        Map<Integer, CandleTime> candles = new TreeMap<>();
        for (int i = 0; i < cast.seats(); i++) {
            List<Tap> taps = track.seats().get(i).taps();
            double poured = taps.get(taps.size() - 1).atMinutes();
            candles.put(i + 1, new CandleTime(poured, Math.max(poured, ready()[i])));
        }
        return candles;
    }
}

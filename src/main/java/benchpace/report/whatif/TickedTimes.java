package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepTime;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.forecast.Lots;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * When each seat was done with each step: as its ticks tell it, or as it may really have been, since ticks come late.
 *
 * @param done minutes from the class's start, by seat in the track's order and by step; NaN where it was not
 * @param turns when its turn began, as the ticks tell; empty where that follows from when others were done
 */
record TickedTimes(double[][] done, Optional<double[][]> turns) {

    /** As ticked. */
    static TickedTimes of(ClassTrack track) {
        int seats = track.seats().size();
        double[][] done = new double[seats][track.pourStep() + 1];
        double[][] turn = new double[seats][track.pourStep() + 1];
        for (int i = 0; i < seats; i++) {
            Arrays.fill(done[i], Double.NaN);
            for (StepTime time : StepTime.of(track, track.seats().get(i))) {
                done[i][time.step()] = time.toMinutes();
                turn[i][time.step()] = time.fromMinutes();
            }
        }
        return new TickedTimes(done, Optional.of(turn));
    }

    /** Draws how it may have been. */
    static final class Draws {
        /** Hardly a tick is later: the longest lateness that the pace reckons with. */
        private static final double LATEST_TICK_MINUTES = 9;
        private static final int OPENING = -100;

        private final ClassTempo tempo;
        private final TickedTimes ticked;
        private final ClassTrack track;
        private final List<List<SeatProgress.Done>> done = new ArrayList<>();

        Draws(ClassTrack track, ClassTempo tempo) {
            this.track = track;
            this.tempo = tempo;
            this.ticked = of(track);
            for (SeatTrack seat : track.seats()) {
                done.add(SeatProgress.of(track, seat, Double.MAX_VALUE).done());
            }
        }

        TickedTimes ticked() {
            return ticked;
        }

        /**
         * One way: each tick that is a step's own came as late as drawn, and no earlier than the step could begin.
         * Whoever opens a step sees who is done, ticked or not; so of those ticked soon after an opening as many were
         * done before it as the instructor waits for.
         *
         * @param share of the table that is waited for, 0 to 1
         */
        TickedTimes drawn(Lots lots, double share) {
            double[][] real = new double[done.size()][];
            for (int i = 0; i < real.length; i++) {
                real[i] = ticked.done[i].clone();
                double before = 0;
                for (SeatProgress.Done one : done.get(i)) {
                    int k = one.step();
                    if (one.weight() < 1) {
                        before = 0;
                        continue;
                    }
                    double u = lots.of(i, key(track, k)).nextDouble();
                    double late = tempo.drawnLateness(i, one, one.startsByTap() ? before : 0, u);
                    before = Math.min(late, ticked.done[i][k] - Math.min(ticked.done[i][k], one.startMinutes()));
                    real[i][k] -= before;
                }
            }
            for (int k = 1; k <= track.pourStep(); k++) {
                double opened = track.openedMinutes().get(k);
                if (track.steps().get(k).led() && opened < SeatTrack.NOT_YET) {
                    seen(workedBefore(k), opened, share, real, lots.ofStep(OPENING - k));
                }
            }
            return new TickedTimes(real, Optional.empty());
        }

        private int workedBefore(int k) {
            int before = k - 1;
            while (before >= 0 && !track.steps().get(before).kind().isWorked()) {
                before--;
            }
            return before;
        }

        /** Puts those done with a step before an opening that were ticked soonest after it, until enough were. */
        private void seen(int step, double opened, double share, double[][] real, SplittableRandom random) {
            if (step < 0) {
                return;
            }
            List<Integer> here = IntStream.range(0, real.length).filter(i -> track.seats().get(i).isHere(opened))
                    .boxed().toList();
            List<Integer> late = here.stream().filter(i -> !(real[i][step] <= opened))
                    .sorted(Comparator.comparing(i -> Double.isNaN(real[i][step]) ? SeatTrack.NOT_YET : real[i][step]))
                    .toList();
            int few = OpeningHabit.missing(share, here.size());
            for (int i : late.subList(0, Math.max(0, late.size() - few))) {
                double could = step > 0 ? begun(i, step, real) : 0;
                double at = opened - random.nextDouble();
                if (ticked.done[i][step] - opened <= LATEST_TICK_MINUTES && could <= opened) {
                    real[i][step] = Math.max(could, at);
                }
            }
        }

        private double begun(int i, int step, double[][] real) {
            int before = workedBefore(step);
            double opened = track.steps().get(step).led() ? track.openedMinutes().get(step) : 0;
            return Math.max(Math.max(opened, track.seats().get(i).arrivedMinutes()), before < 0 ? 0 : real[i][before]);
        }
    }

    /** Key of a step's chance, as for the evenings of the day before. */
    static int key(ClassTrack track, int step) {
        return track.steps().get(step).id().hashCode();
    }
}

package benchpace.pace.belief;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatTrack;
import benchpace.pace.Tap;
import java.util.Arrays;

/**
 * How taps came in this class so far: alone as a seat finished, or in sweeps, several seats within the same couple of
 * seconds. A tap in a sweep tells that the step was done some time before; a seat left out of a sweep, although done,
 * is the exception, so every sweep that passes a seat by speaks for its still working.
 */
public final class TapHabits {
    /** Taps this close belong to one sweep of the finger over the tablet. */
    private static final double SAME_SWEEP_MINUTES = 1.5 / 60;

    private final double[] tapMinutes;
    private final int[] groupSize;
    private final double[] sweepMinutes;
    private final double[] sweepMiss;
    private final double promptShare;
    private final double forgottenShare;

    private TapHabits(double[] tapMinutes, int[] groupSize, double[] sweepMinutes, double[] sweepMiss,
                      double promptShare, double forgottenShare) {
        this.tapMinutes = tapMinutes;
        this.groupSize = groupSize;
        this.sweepMinutes = sweepMinutes;
        this.sweepMiss = sweepMiss;
        this.promptShare = promptShare;
        this.forgottenShare = forgottenShare;
    }

    public static TapHabits of(ClassTrack track, PacePriors priors) {
        double[] at = track.seats().stream().flatMap(s -> s.taps().stream()).mapToDouble(Tap::atMinutes).sorted()
                .toArray();
        int[] size = new int[at.length];
        double[] sweeps = new double[at.length];
        double[] misses = new double[at.length];
        int count = 0;
        int swept = 0;
        for (int from = 0; from < at.length; ) {
            int to = from + 1;
            while (to < at.length && at[to] - at[to - 1] <= SAME_SWEEP_MINUTES) {
                to++;
            }
            Arrays.fill(size, from, to, to - from);
            if (to - from > 1) {
                misses[count] = priors.taps().miss(to - from, track.seats().size());
                sweeps[count++] = at[to - 1];
                swept += to - from;
            }
            from = to;
        }
        int filled = filled(track);
        PacePriors.Taps prior = priors.taps();
        double prompt = at.length == 0 ? 0 : Math.max(0.05, 1 - prior.sweptToLate() * swept / at.length);
        double share = (prior.promptPriorTaps() * prior.promptShare() + at.length * prompt)
                / (prior.promptPriorTaps() + at.length);
        double forgotten = (prior.forgottenPriorTaps() * prior.forgottenOdds() + filled)
                / (prior.forgottenPriorTaps() + at.length + filled);
        return new TapHabits(at, size, Arrays.copyOf(sweeps, count), misses, share, forgotten);
    }

    /** Steps that were never ticked although a later one was. */
    private static int filled(ClassTrack track) {
        int filled = 0;
        for (SeatTrack seat : track.seats()) {
            int last = -1;
            long mask = 0;
            for (Tap tap : seat.taps()) {
                last = Math.max(last, tap.step());
                mask |= 1L << tap.step();
            }
            for (int k = 0; k < last; k++) {
                filled += track.steps().get(k).kind().isWorked() && (mask >> k & 1) == 0 ? 1 : 0;
            }
        }
        return filled;
    }

    /** Share of steps nobody will tick before the next one. */
    double forgottenShare() {
        return forgottenShare;
    }

    /** How many taps fell together with the one at {@code minutes}, itself included. */
    public int tapsTogether(double minutes) {
        int found = Arrays.binarySearch(tapMinutes, minutes);
        return found < 0 ? 1 : groupSize[found];
    }

    /** Moments of the sweeps so far, ascending. */
    double[] sweepMinutes() {
        return sweepMinutes;
    }

    /** P(a seat that is done is left out of sweep j). */
    double sweepMiss(int j) {
        return sweepMiss[j];
    }

    /** The last tap of any seat, or 0 when there was none. */
    public double lastTapMinutes() {
        return tapMinutes.length == 0 ? 0 : tapMinutes[tapMinutes.length - 1];
    }

    /** Taps made one at a time since the last sweep. */
    public int loneTapsSinceSweep() {
        double last = sweepMinutes.length == 0 ? -1 : sweepMinutes[sweepMinutes.length - 1];
        int count = 0;
        for (int j = tapMinutes.length - 1; j >= 0 && tapMinutes[j] > last; j--) {
            count++;
        }
        return count;
    }

    /** Share of finished steps ticked at once rather than at the next sweep. */
    public double promptShare() {
        return promptShare;
    }
}

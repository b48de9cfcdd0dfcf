package benchpace.pace.belief;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import java.util.Arrays;
import java.util.List;

/**
 * How much of the table this instructor waits for before opening a led step. Somebody who stands in the room sees who
 * is done, ticked or not: a step that stays closed tells that too few are done, a step just opened that most were.
 * The share waited for is learned from the openings so far, by Bayes' rule over a handful of shares.
 */
public final class OpeningHabit {
    private static final double[] SHARES = {0.80, 0.85, 0.90, 0.95, 1.0};

    private final double[] weights;

    private OpeningHabit(double[] weights) {
        this.weights = weights;
    }

    public static OpeningHabit of(ClassTrack track, List<SeatProgress> seats, double now, PacePriors priors) {
        double[] weights = priors.openings().shares().stream().mapToDouble(s -> s).toArray();
        for (int k = 1; k <= track.pourStep(); k++) {
            double opened = track.openedMinutes().get(k);
            if (track.steps().get(k).led() && opened <= now) {
                learn(track, seats, k - 1, opened, weights, priors);
            }
        }
        double sum = Arrays.stream(weights).sum();
        for (int j = 0; j < weights.length; j++) {
            weights[j] /= sum;
        }
        return new OpeningHabit(weights);
    }

    /** An opening long after enough seats were ticked speaks against waiting for so few. */
    private static void learn(ClassTrack track, List<SeatProgress> seats, int before, double opened, double[] weights,
                              PacePriors priors) {
        double[] ticked = new double[seats.size()];
        int n = 0;
        for (int i = 0; i < ticked.length; i++) {
            SeatTrack seat = track.seats().get(i);
            if (seat.isHere(opened)) {
                double at = Double.POSITIVE_INFINITY;
                for (SeatProgress.Done done : seats.get(i).done()) {
                    at = done.step() == before ? done.tapMinutes() : at;
                }
                ticked[n++] = at;
            }
        }
        if (n < 2) {
            return;
        }
        Arrays.sort(ticked, 0, n);
        for (int j = 0; j < weights.length; j++) {
            double waited = opened - ticked[n - 1 - missing(SHARES[j], n)];
            double excess = waited - priors.openings().delayMinutes();
            weights[j] *= waited < -3 ? 0.3 : 0.05 + 0.95 * Math.exp(-Math.max(0, excess) / 0.8);
        }
    }

    /** How many of n may still be at it when the next step opens. */
    public static int missing(double share, int n) {
        return n - (int) Math.ceil(share * n - 1e-9);
    }

    int cases() {
        return weights.length;
    }

    double weight(int j) {
        return weights[j];
    }

    double share(int j) {
        return SHARES[j];
    }

    /** A share drawn by {@code u}, uniform in [0, 1). */
    public double draw(double u) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            sum += weights[j];
            if (u < sum) {
                return SHARES[j];
            }
        }
        return 1;
    }
}

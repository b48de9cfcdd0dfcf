package benchpace.pace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Everything believed about a class at one moment, before memory: odds, draws of the pour, prices. */
final class Evaluation {
    static final int DRAWS = 128;
    static final long SEED = 20_270_304L;

    final ClassTrack track;
    final double now;
    final PacePriors priors;
    final TapHabits habits;
    final List<SeatProgress> seats;
    final ClassTempo tempo;
    final List<SeatOdds> odds;
    private PourDraws draws;

    Evaluation(ClassTrack track, double now, PacePriors priors) {
        this.track = track;
        this.now = now;
        this.priors = priors;
        this.habits = TapHabits.of(track, priors);
        this.seats = track.seats().stream().map(s -> SeatProgress.of(track, s, now)).toList();
        this.tempo = new ClassTempo(track, seats, habits, priors);
        List<SeatOdds> all = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            all.add(odds(i));
        }
        this.odds = all;
    }

    boolean judged(int i) {
        return seats.get(i).standing() == SeatProgress.Standing.WORKING;
    }

    private SeatOdds odds(int i) {
        SeatProgress progress = seats.get(i);
        if (!judged(i)) {
            return new SeatOdds(1, 0, 0);
        }
        int k = progress.step();
        int following = k + 1;
        boolean open = following <= track.pourStep()
                && !(track.steps().get(following).led() && track.openedMinutes().get(following) > now);
        ClassTempo.Belief next = tempo.belief(i, open ? following : k);
        double late = 0;
        if (progress.startsByTap() && !progress.done().isEmpty()) {
            late = tempo.lateness(i, progress.done().get(progress.done().size() - 1).step());
        }
        return SeatOdds.of(track.seats().get(i), progress, tempo.belief(i, k), new SeatOdds.Next(open, next), habits,
                late, now, priors);
    }

    PourDraws draws() {
        if (draws == null) {
            draws = new PourDraws(track, seats, odds, tempo, priors, now, DRAWS, SEED);
        }
        return draws;
    }

    /** For each seat the share of draws in which it pours clearly later than the middle of the class. */
    double[] lateShare() {
        int n = seats.size();
        double[] share = new double[n];
        PourDraws d = draws();
        double[] sorted = new double[n];
        for (int b = 0; b < d.draws(); b++) {
            int m = 0;
            for (int i = 0; i < n; i++) {
                if (d.pour(b, i) > Double.NEGATIVE_INFINITY) {
                    sorted[m++] = d.pour(b, i);
                }
            }
            Arrays.sort(sorted, 0, m);
            double median = m == 0 ? 0 : m % 2 == 1 ? sorted[m / 2] : 0.5 * (sorted[m / 2 - 1] + sorted[m / 2]);
            for (int i = 0; i < n; i++) {
                if (d.pour(b, i) > median + priors.lateMinutes()) {
                    share[i] += 1.0 / d.draws();
                }
            }
        }
        return share;
    }
}

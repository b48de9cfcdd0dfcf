package benchpace.pace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Everything believed about a class at one moment, before memory: odds, draws of the pour, prices. */
final class Evaluation {
    static final int DRAWS = 128;
    private static final int ROUNDS = 3;
    private static final double CLOSED_LOOK_MINUTES = 1.3;
    private static final double OPENED_LOOK_MINUTES = 0.3;
    static final long SEED = 20_270_304L;

    final ClassTrack track;
    final double now;
    final PacePriors priors;
    final TapHabits habits;
    final List<SeatProgress> seats;
    final ClassTempo tempo;
    final List<SeatOdds> odds;
    final OpeningHabit openings;
    private PourDraws draws;

    Evaluation(ClassTrack track, double now, PacePriors priors) {
        this.track = track;
        this.now = now;
        this.priors = priors;
        this.habits = TapHabits.of(track, priors);
        this.seats = track.seats().stream().map(s -> SeatProgress.of(track, s, now)).toList();
        this.openings = OpeningHabit.of(track, seats, now, priors);
        this.tempo = new ClassTempo(track, seats, habits, priors);
        this.odds = weigh();
    }

    /**
     * Odds of every seat. How many done seats stay unticked until the next sweep differs from hour to hour: somebody
     * busy at the pot ticks nobody. So the share ticked at once since the last sweep is estimated from the other seats:
     * ticks seen against ticks missing. A tablet silent for all thereby speaks about the tablet, not about everybody.
     */
    private List<SeatOdds> weigh() {
        int n = seats.size();
        double[] share = new double[n];
        Arrays.fill(share, habits.promptShare());
        List<SeatOdds> all = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            List<SeatOdds> next = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                next.add(judged(i) ? weighing(i, share[i]).odds() : SeatOdds.NOT_JUDGED);
            }
            all = withOpenings(next, round == 0 ? next : all);
            double missing = 0;
            for (SeatOdds seat : all) {
                missing += seat.unswept();
            }
            for (int i = 0; i < n; i++) {
                double others = missing - all.get(i).unswept();
                double seen = habits.loneTapsSinceSweep();
                share[i] = (priors.promptWindowTaps() * habits.promptShare() + seen)
                        / (priors.promptWindowTaps() + seen + others);
            }
        }
        return all;
    }

    boolean judged(int i) {
        return seats.get(i).standing() == SeatProgress.Standing.WORKING;
    }

    private SeatOdds.Weighing weighing(int i, double promptShare) {
        SeatProgress progress = seats.get(i);
        int k = progress.step();
        int following = k + 1;
        boolean before = following <= track.pourStep();
        double opened = before && track.steps().get(following).led() ? track.openedMinutes().get(following) : 0;
        boolean open = before && opened <= now;
        double look = opened == 0 ? 0 : open ? opened - OPENED_LOOK_MINUTES : now - CLOSED_LOOK_MINUTES;
        double late = 0;
        if (progress.startsByTap() && !progress.done().isEmpty()) {
            late = tempo.lateness(i, progress.done().get(progress.done().size() - 1).step());
        }
        SeatOdds.Next next = new SeatOdds.Next(open, tempo.belief(i, open ? following : k), look);
        return new SeatOdds.Weighing(track.seats().get(i), progress, tempo.belief(i, k), next, habits, promptShare,
                late, priors);
    }

    /** Brings in what the led step after each step says, opened or still closed. */
    private List<SeatOdds> withOpenings(List<SeatOdds> fresh, List<SeatOdds> latest) {
        List<SeatOdds> result = new ArrayList<>(fresh);
        for (int k = 0; k < track.pourStep(); k++) {
            if (!track.steps().get(k).kind().isWorked() || !track.steps().get(k + 1).led()) {
                continue;
            }
            double opened = track.openedMinutes().get(k + 1);
            boolean closed = opened > now;
            double moment = closed ? now : opened;
            double[] undone = new double[seats.size()];
            int present = 0;
            for (int i = 0; i < undone.length; i++) {
                if (track.seats().get(i).isHere(moment)) {
                    present++;
                    undone[i] = undone(i, k, opened, latest.get(i));
                }
            }
            OpeningEvidence evidence = new OpeningEvidence(openings, present, undone);
            for (int i = 0; i < undone.length; i++) {
                if (judged(i) && seats.get(i).step() == k && track.seats().get(i).isHere(moment)) {
                    double[] likelihood = closed ? evidence.whileClosed(i, priors.openingBlind())
                            : evidence.whenOpened(i, priors.openingBlind());
                    result.set(i, fresh.get(i).given(likelihood[0], likelihood[1]));
                }
            }
        }
        return result;
    }

    /** P(seat i was still at step k, or before it, when the instructor last looked). */
    private double undone(int i, int k, double opened, SeatOdds latest) {
        SeatProgress progress = seats.get(i);
        if (progress.step() == k && judged(i)) {
            return 1 - latest.settled();
        }
        if (progress.step() <= k) {
            return 1;
        }
        for (SeatProgress.Done done : progress.done()) {
            if (done.step() == k && done.tapMinutes() > opened) {
                return habits.tapsTogether(done.tapMinutes()) > 1 ? 0.35 : 0.6;
            }
        }
        return 0;
    }

    PourDraws draws() {
        if (draws == null) {
            draws = new PourDraws(track, seats, odds, tempo, openings, priors, now, DRAWS, SEED);
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

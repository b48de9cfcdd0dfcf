package benchpace.pace.belief;

/**
 * What an opening, or its absence, says about the seats not ticked. The number of seats still at the step has the
 * Poisson-binomial law; conditioning on "more than r are" (the next step stays closed) or "at most r were" (it was
 * opened) shifts every seat's odds. Exact recursion, see Chen &amp; Liu (1997), <i>Statistica Sinica</i> 7, 875-892.
 */
public final class OpeningEvidence {
    private final OpeningHabit habit;
    private final int present;
    private final double[] undone;

    /**
     * @param present seats the instructor counts
     * @param undone for each seat not known to be done, the probability that it was not when the instructor looked
     */
    public OpeningEvidence(OpeningHabit habit, int present, double[] undone) {
        this.habit = habit;
        this.present = present;
        this.undone = undone;
    }

    /** P(the step stays closed | seat is at it or not); first with the seat at it, then with the seat done. */
    public double[] whileClosed(int seat, double blind) {
        double[] atMost = atMost(seat);
        double at = 0;
        double done = 0;
        for (int j = 0; j < habit.cases(); j++) {
            int r = OpeningHabit.missing(habit.share(j), present);
            at += habit.weight(j) * (1 - below(atMost, r - 1));
            done += habit.weight(j) * (1 - below(atMost, r));
        }
        return new double[] {blind + (1 - blind) * at, blind + (1 - blind) * done};
    }

    /** P(the step was opened | seat was at it or not), in the same order. */
    public double[] whenOpened(int seat, double blind) {
        double[] atMost = atMost(seat);
        double at = 0;
        double done = 0;
        for (int j = 0; j < habit.cases(); j++) {
            int r = OpeningHabit.missing(habit.share(j), present);
            at += habit.weight(j) * below(atMost, r - 1);
            done += habit.weight(j) * below(atMost, r);
        }
        return new double[] {blind + (1 - blind) * at, blind + (1 - blind) * done};
    }

    private static double below(double[] atMost, int r) {
        return r < 0 ? 0 : atMost[Math.min(r, atMost.length - 1)];
    }

    /** P(at most r of the others are still at it), r = 0, 1, ... */
    private double[] atMost(int except) {
        int most = OpeningHabit.missing(0.8, present) + 1;
        double[] p = new double[most + 1];
        p[0] = 1;
        for (int j = 0; j < undone.length; j++) {
            if (j == except) {
                continue;
            }
            double q = undone[j];
            for (int r = most; r > 0; r--) {
                p[r] = p[r] * (1 - q) + p[r - 1] * q;
            }
            p[0] *= 1 - q;
        }
        for (int r = 1; r <= most; r++) {
            p[r] += p[r - 1];
        }
        return p;
    }
}

package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.Cholesky;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.belief.StandardNormal;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Many possible ways the rest of the class may go, each drawn from what is believed now: class, step and guest speeds
 * together, each seat working, stalled or done, stalls to come, and the openings of led steps, which wait for most of
 * the table. The same seed gives the same draws, so the same class gives the same answer.
 */
public final class PourDraws {
    /** Somebody who walks over needs about this long to get a stuck seat going; from judgement. */
    public static final double HELPED_MINUTES = 1;

    private final ClassTrack track;
    private final List<SeatProgress> seats;
    private final List<SeatOdds> odds;
    private final ClassTempo tempo;
    private final PacePriors priors;
    private final OpeningHabit openings;
    private final double now;
    private final int draws;
    private final int pour;
    private final double[][] pours;
    private final double[][] stalls;
    private final boolean[] counted;
    private final boolean[] here;
    private final LatestDone latest;
    private final TurnDraws turns;
    private final int helped;

    public PourDraws(ClassTrack track, List<SeatProgress> seats, List<SeatOdds> odds, ClassTempo tempo,
              OpeningHabit openings, PacePriors priors, double now, int draws, long seed, Without without) {
        this.helped = without.helpedSeat();
        this.track = track;
        this.seats = seats;
        this.odds = odds;
        this.tempo = tempo;
        this.priors = priors;
        this.openings = openings;
        this.now = now;
        this.draws = draws;
        this.pour = track.pourStep();
        this.pours = new double[draws][seats.size()];
        this.stalls = new double[draws][seats.size()];
        this.counted = new boolean[seats.size()];
        this.here = new boolean[seats.size()];
        this.latest = new LatestDone(seats.size());
        double[][] lower = Cholesky.factor(tempo.covariance());
        SplittableRandom chance = new SplittableRandom(seed);
        for (int i = 0; i < seats.size(); i++) {
            here[i] = track.seats().get(i).arrivedMinutes() <= now;
            counted[i] = track.seats().get(i).leftMinutes() > now && i != without.leftOutSeat();
        }
        this.turns = new TurnDraws(track, seats, counted, now);
        for (int b = 0; b < draws; b++) {
            draw(b, chance.split(), lower);
        }
    }

    /**
     * A world that differs in one seat, drawn with the same chance otherwise.
     *
     * @param leftOutSeat index of a seat left out of account, -1 for none
     * @param helpedSeat index of a seat somebody walks to now, -1 for none
     */
    public record Without(int leftOutSeat, int helpedSeat) {
        public static final Without NOTHING = new Without(-1, -1);
    }

    /** Mean over the draws of the last pour; {@code now} when nobody pours. */
    public double meanLastPour() {
        double sum = 0;
        for (double[] draw : pours) {
            double last = now;
            for (double pour : draw) {
                last = Math.max(last, pour);
            }
            sum += last / draws;
        }
        return sum;
    }

    /** Minutes from the start at which seat i pours in draw b; negative infinity for seats that have left. */
    double pour(int b, int seat) {
        return pours[b][seat];
    }

    double[] pours(int b) {
        return pours[b];
    }

    /** Minutes of standstill still ahead at the seat's present step in draw b; what a helper could save at most. */
    double stall(int b, int seat) {
        return stalls[b][seat];
    }

    int draws() {
        return draws;
    }

    private void draw(int b, SplittableRandom random, double[][] lower) {
        double[] theta = tempo.theta().clone();
        double[] z = new double[tempo.dims()];
        for (int c = 0; c < z.length; c++) {
            z[c] = StandardNormal.draw(random);
        }
        for (int r = 0; r < z.length; r++) {
            for (int c = 0; c <= r; c++) {
                theta[r] += lower[r][c] * z[c];
            }
        }
        double[] guest = new double[seats.size()];
        double[] at = new double[seats.size()];
        int[] step = new int[seats.size()];
        for (int i = 0; i < guest.length; i++) {
            guest[i] = tempo.guestMean(i, theta)
                    + tempo.guestSd(i) * StandardNormal.draw(random);
            begin(b, i, theta, guest[i], at, step, random);
        }
        double opening = 0;
        double share = openings.draw(random.nextDouble());
        for (int k = 0; k <= pour; k++) {
            if (track.steps().get(k).led()) {
                opening = opening(k, at, step, opening, share);
            }
            if (track.steps().get(k).stations().isPresent()) {
                inTurn(k, theta, guest, at, step, opening, random);
                continue;
            }
            for (int i = 0; i < guest.length; i++) {
                if (step[i] == k) {
                    double start = track.steps().get(k).led() ? Math.max(at[i], opening) : at[i];
                    at[i] = start + time(k, theta, guest[i], random);
                    step[i] = k + 1;
                }
            }
        }
        for (int i = 0; i < guest.length; i++) {
            pours[b][i] = counted[i] ? at[i] : Double.NEGATIVE_INFINITY;
        }
    }

    /** Those at step k do it, each from its turn on. */
    private void inTurn(int k, double[] theta, double[] guest, double[] at, int[] step, double opening,
                        SplittableRandom random) {
        double[] takes = new double[guest.length];
        for (int i = 0; i < guest.length; i++) {
            if (step[i] == k) {
                at[i] = track.steps().get(k).led() ? Math.max(at[i], opening) : at[i];
                takes[i] = time(k, theta, guest[i], random);
            }
        }
        turns.at(k, at, step, takes);
        for (int i = 0; i < guest.length; i++) {
            if (step[i] == k) {
                at[i] += takes[i];
                step[i] = k + 1;
            }
        }
    }

    /** When a led step opens: at its recorded time, else once most of the table is through with the one before. */
    private double opening(int k, double[] at, int[] step, double before, double share) {
        double opened = track.openedMinutes().get(k);
        if (opened <= now) {
            return opened;
        }
        int n = 0;
        for (int i = 0; i < at.length; i++) {
            n += counts(i) ? 1 : 0;
        }
        if (n == 0) {
            return Math.max(now, before);
        }
        latest.clear(OpeningHabit.missing(share, n));
        for (int i = 0; i < at.length; i++) {
            if (counts(i)) {
                latest.add(step[i] > k ? 0 : at[i]);
            }
        }
        return Math.max(Math.max(now, before), latest.allButMissing()) + priors.openings().delayMinutes();
    }

    private boolean counts(int i) {
        return counted[i] && here[i];
    }

    /** Puts seat i where it may truly be now: {@code step} is the next step it has to do, from {@code at} on. */
    private void begin(int b, int i, double[] theta, double guest, double[] at, int[] step, SplittableRandom random) {
        SeatProgress progress = seats.get(i);
        step[i] = Math.min(progress.step(), pour + 1);
        at[i] = progress.startMinutes();
        // as many draws whatever holds, so that worlds that differ a little are drawn with the same chance
        double choice = random.nextDouble();
        double u = random.nextDouble();
        double length = random.nextDouble();
        double begun = random.nextDouble();
        switch (progress.standing()) {
            case POURED -> at[i] = progress.startMinutes() - tempo.lateness(i, pour);
            case WAITING -> hear(i, at, step);
            case QUEUED -> { } // since it came; its turn follows from who is before it
            case AWAY -> at[i] = now - priors.times().arrivalMinutes() * Math.log(1 - u);
            case PAUSED -> {
                double back = now - priors.times().pauseMinutes() * Math.log(1 - choice);
                if (turns.isStillToCome(i)) {
                    at[i] = back;
                } else {
                    resume(i, theta, guest, at, step, back, u);
                }
            }
            case WORKING -> {
                SeatOdds seatOdds = odds.get(i);
                if (choice < seatOdds.forgotten()) {
                    at[i] = Math.max(progress.startMinutes(), now - u * Math.min(2, progress.workedMinutes()));
                    step[i]++;
                } else if (choice < seatOdds.forgotten() + seatOdds.stalled()) {
                    standStill(b, i, theta, guest, at, step, new double[] {u, length, begun});
                } else {
                    resume(i, theta, guest, at, step, now, u);
                }
            }
        }
    }

    /** Who waits for a step hears the talk before it first: all of it, or what is left of its time box. */
    private void hear(int i, double[] at, int[] step) {
        double start = seats.get(i).startMinutes();
        at[i] = Double.isFinite(start) ? Math.max(now, start) : now;
        for (int k = step[i] - 1; k >= 0 && track.steps().get(k).kind() == WorkKind.TALK; k--) {
            PaceStep talk = track.steps().get(k);
            double opened = track.openedMinutes().get(k);
            if (talk.led() && opened <= now) {
                at[i] = Math.max(at[i], opened + talk.planMinutes());
                return;
            }
            step[i] = talk.led() ? k : step[i];
        }
    }

    /** The rest of the present step from {@code from} on, given the minutes already worked (inverse of survival). */
    private void resume(int i, double[] theta, double guest, double[] at, int[] step, double from, double u) {
        SeatProgress progress = seats.get(i);
        int k = progress.step();
        double mean = tempo.logPlan(k) + theta[0] + theta[k + 1] + guest;
        double sd = tempo.noiseSd(k);
        double worked = progress.workedMinutes();
        double below = worked <= 0 ? 0 : StandardNormal.cdf((Math.log(worked) - mean) / sd);
        double total = Math.exp(mean + sd * StandardNormal.quantile(below + u * (1 - below)));
        at[i] = from + Math.max(0, total - worked);
        step[i] = k + 1;
    }

    /**
     * The rest of a step that holds a standstill, given the minutes already spent: the work itself is drawn, then a
     * stall long enough to explain that it is not over yet, begun at any moment of the work.
     *
     * @param chance for the work, the stall's length and its beginning
     */
    private void standStill(int b, int i, double[] theta, double guest, double[] at, int[] step, double[] chance) {
        SeatProgress progress = seats.get(i);
        int k = progress.step();
        double mean = tempo.logPlan(k) + theta[0] + theta[k + 1] + guest;
        double worked = progress.workedMinutes();
        double work = Math.exp(mean + tempo.noiseSd(k) * StandardNormal.quantile(chance[0]));
        double length = priors.stalls().lengths().lengthBeyond(worked - work, chance[1]);
        double left = Math.max(0, work + length - worked);
        double begun = chance[2] * Math.min(work, worked);
        stalls[b][i] = Math.min(left, Math.max(0, begun + length - worked));
        double standing = i == helped ? Math.min(HELPED_MINUTES, stalls[b][i]) : stalls[b][i];
        at[i] = now + left - stalls[b][i] + standing;
        step[i] = k + 1;
    }

    private double time(int k, double[] theta, double guest, SplittableRandom random) {
        if (!track.steps().get(k).kind().isWorked()) {
            return track.steps().get(k).planMinutes();
        }
        double work = StepDraws.work(tempo.logPlan(k) + theta[0] + theta[k + 1] + guest, tempo.noiseSd(k), random);
        return work + StepDraws.stall(priors.stalls(), random);
    }
}

package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.Cholesky;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import benchpace.pace.belief.StandardNormal;
import java.util.SplittableRandom;

/**
 * Draws ways of the seats from what is believed: class, step and guest speeds together, each seat working, stalled or
 * done, stalls to come. The same seed gives the same ways one after the other.
 */
final class WayDraws {
    private final ClassTrack track;
    private final ClassTempo tempo;
    private final PacePriors priors;
    private final Posterior posterior;
    private final double now;
    private final int pour;
    private final SplittableRandom chance;
    private final double[][] lower;
    private final Present[] present;

    // of one draw
    private final double[] z;
    private final double[] theta;
    private final double[] usual;
    private final double[] guest;

    WayDraws(Posterior posterior, long seed) {
        this.posterior = posterior;
        this.track = posterior.track();
        this.tempo = posterior.tempo();
        this.priors = posterior.priors();
        this.now = posterior.now();
        this.pour = track.pourStep();
        this.chance = new SplittableRandom(seed);
        this.lower = Cholesky.factor(tempo.covariance());
        this.z = new double[tempo.dims()];
        this.theta = new double[tempo.dims()];
        this.usual = new double[pour + 1];
        this.guest = new double[posterior.seats().size()];
        this.present = new Present[guest.length];
        for (int i = 0; i < guest.length; i++) {
            SeatProgress progress = posterior.seats().get(i);
            present[i] = new Present(progress, Math.log(progress.workedMinutes()), tempo.guestSd(i));
        }
    }

    /** What holds of a seat's present step in every draw. @param logWorked log of the minutes spent at it */
    private record Present(SeatProgress progress, double logWorked, double guestSd) { }

    /** A way to be drawn into. */
    Way blank() {
        return new Way(guest.length, pour + 1);
    }

    /** Puts the next way in place of what was there. */
    void draw(Way way) {
        SplittableRandom random = chance.split();
        drawTempo(random);
        for (int i = 0; i < guest.length; i++) {
            guest[i] = tempo.guestMean(i, theta) + present[i].guestSd() * StandardNormal.draw(random);
            begin(way, i, random);
        }
        way.share = posterior.openings().draw(random.nextDouble());
        for (int k = 0; k <= pour; k++) {
            drawTimes(k, way, random);
        }
    }

    private void drawTempo(SplittableRandom random) {
        for (int c = 0; c < z.length; c++) {
            z[c] = StandardNormal.draw(random);
        }
        for (int r = 0; r < z.length; r++) {
            theta[r] = tempo.theta()[r];
            for (int c = 0; c <= r; c++) {
                theta[r] += lower[r][c] * z[c];
            }
        }
        for (int k = 0; k <= pour; k++) {
            usual[k] = tempo.logPlan(k) + theta[0] + theta[k + 1];
        }
    }

    /** How long those that still have to do step k will take over it. */
    private void drawTimes(int k, Way way, SplittableRandom random) {
        boolean worked = track.steps().get(k).kind().isWorked();
        double noiseSd = tempo.noiseSd(k);
        for (int i = 0; i < guest.length; i++) {
            if (way.isToDo(i, k)) {
                way.setTakes(i, k, worked
                        ? StepDraws.work(usual[k] + guest[i], noiseSd, random)
                                + StepDraws.stall(priors.stalls(), random)
                        : track.steps().get(k).planMinutes());
            }
        }
    }

    /** Puts seat i where it may truly be now. */
    private void begin(Way way, int i, SplittableRandom random) {
        SeatProgress progress = present[i].progress();
        way.step[i] = Math.min(progress.step(), pour + 1);
        way.from[i] = progress.startMinutes();
        // as many draws whatever holds, so that moments that differ a little are drawn with the same chance
        double choice = random.nextDouble();
        double u = random.nextDouble();
        double length = random.nextDouble();
        double begun = random.nextDouble();
        switch (progress.standing()) {
            case POURED -> way.from[i] = progress.startMinutes() - tempo.lateness(i, pour);
            case WAITING -> hear(way, i);
            case QUEUED -> { } // since it came; its turn follows from who is before it
            case AWAY -> way.from[i] = now - priors.times().arrivalMinutes() * Math.log(1 - u);
            case PAUSED -> {
                double back = now - priors.times().pauseMinutes() * Math.log(1 - choice);
                if (TurnDraws.isStillToCome(track, progress)) {
                    way.from[i] = back;
                } else {
                    resume(way, i, back, u);
                }
            }
            case WORKING -> {
                SeatOdds odds = posterior.odds().get(i);
                if (choice < odds.forgotten()) {
                    way.from[i] = Math.max(progress.startMinutes(), now - u * Math.min(2, progress.workedMinutes()));
                    way.step[i]++;
                } else if (choice < odds.forgotten() + odds.stalled()) {
                    standStill(way, i, u, length, begun);
                    return;
                } else {
                    resume(way, i, now, u);
                }
            }
        }
        way.fromIfHelped[i] = way.from[i];
    }

    /** Who waits for a step hears the talk before it first: all of it, or what is left of its time box. */
    private void hear(Way way, int i) {
        double start = present[i].progress().startMinutes();
        way.from[i] = Double.isFinite(start) ? Math.max(now, start) : now;
        for (int k = way.step[i] - 1; k >= 0 && track.steps().get(k).kind() == WorkKind.TALK; k--) {
            PaceStep talk = track.steps().get(k);
            double opened = track.openedMinutes().get(k);
            if (talk.led() && opened <= now) {
                way.from[i] = Math.max(way.from[i], opened + talk.planMinutes());
                return;
            }
            way.step[i] = talk.led() ? k : way.step[i];
        }
    }

    /** The rest of the present step from {@code from} on, given the minutes already worked (inverse of survival). */
    private void resume(Way way, int i, double from, double u) {
        int k = present[i].progress().step();
        double mean = usual[k] + guest[i];
        double sd = tempo.noiseSd(k);
        double worked = present[i].progress().workedMinutes();
        double below = worked <= 0 ? 0 : StandardNormal.cdf((present[i].logWorked() - mean) / sd);
        double total = Math.exp(mean + sd * StandardNormal.quantile(below + u * (1 - below)));
        way.from[i] = from + Math.max(0, total - worked);
        way.step[i] = k + 1;
    }

    /**
     * The rest of a step that holds a standstill, given the minutes already spent: the work itself is drawn, then a
     * stall long enough to explain that it is not over yet, begun at any moment of the work.
     *
     * @param u      chance for the work
     * @param length chance for the stall's length
     * @param begun  chance for its beginning
     */
    private void standStill(Way way, int i, double u, double length, double begun) {
        int k = present[i].progress().step();
        double worked = present[i].progress().workedMinutes();
        double work = Math.exp(usual[k] + guest[i] + tempo.noiseSd(k) * StandardNormal.quantile(u));
        double stall = priors.stalls().lengths().lengthBeyond(worked - work, length);
        double left = Math.max(0, work + stall - worked);
        double ahead = Math.min(left, Math.max(0, begun * Math.min(work, worked) + stall - worked));
        way.from[i] = now + left - ahead + ahead;
        way.fromIfHelped[i] = now + left - ahead + Math.min(PourDraws.HELPED_MINUTES, ahead);
        way.step[i] = k + 1;
    }
}

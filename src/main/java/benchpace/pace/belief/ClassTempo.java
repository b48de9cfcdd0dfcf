package benchpace.pace.belief;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How fast this class, this step and this guest are, learned from the steps finished so far and from those that are
 * not. The log of a seat's time at a step, over the plan's, is {@code c + d_k + u_i + e}: class, step, guest, noise,
 * all normal. That is a linear mixed model (Gelman et al., <i>Bayesian Data Analysis</i>, 3rd ed., ch. 15); guest
 * effects are eliminated seat by seat, the rest is solved exactly. Three rounds of refinement:
 *
 * <ul>
 * <li>a finished step's tap lateness is averaged over its likely values, given the present estimate (EM);</li>
 * <li>times far off (a stall, a forgotten tap) lose weight as under a Student-t law with 4 degrees of freedom;</li>
 * <li>an unfinished step enters as the normal factor that matches mean and variance of its survival term (assumed
 * density filtering; Rasmussen &amp; Williams, <i>Gaussian Processes for Machine Learning</i>, 2006, ch. 3.6-3.9).</li>
 * </ul>
 */
public final class ClassTempo {
    private static final int ROUNDS = 3;
    private static final double STUDENT_DEGREES = 4;
    private static final double LEAST_GAIN = 0.97;

    private final PacePriors priors;
    private final ClassTrack track;
    private final TapHabits habits;
    private final List<SeatProgress> seats;
    private final int dims;
    private final double[] noiseVariance;
    private final double[] logPlan;

    // per seat, per step: what is observed (log time over plan) and with what precision
    private final double[][] value;
    private final double[][] precision;
    private final double[][] meanLateness;

    private double[] theta;
    private double[][] covariance;
    private final double[] guestPrecision;
    private final double[] guestPull;

    public ClassTempo(ClassTrack track, List<SeatProgress> seats, TapHabits habits, PacePriors priors) {
        this.track = track;
        this.seats = seats;
        this.habits = habits;
        this.priors = priors;
        int steps = track.pourStep() + 1;
        this.dims = steps + 1;
        this.noiseVariance = new double[steps];
        this.logPlan = new double[steps];
        for (int k = 0; k < steps; k++) {
            PaceStep step = track.steps().get(k);
            noiseVariance[k] = priors.noiseVariance(step);
            logPlan[k] = Math.log(step.planMinutes()) + priors.stepPrior(step).meanLogShift();
        }
        this.value = new double[seats.size()][steps];
        this.precision = new double[seats.size()][steps];
        this.meanLateness = new double[seats.size()][steps + 1];
        this.guestPrecision = new double[seats.size()];
        this.guestPull = new double[seats.size()];
        solve();
        for (int round = 0; round < ROUNDS; round++) {
            refine();
            solve();
        }
    }

    /** Mean of the log of this seat's minutes at the step, were it observed without its present own evidence. */
    public Belief belief(int seat, int step) {
        double mean = logPlan[step] + predictedMean(seat, step);
        double variance = predictedVariance(seat, step);
        double own = precision[seat][step];
        if (own > 0) {
            double cavity = Math.max(1e-3, 1 / variance - own);
            double ownMean = logPlan[step] + value[seat][step];
            return new Belief((mean / variance - own * ownMean) / cavity, 1 / cavity, noiseVariance[step]);
        }
        return new Belief(mean, variance, noiseVariance[step]);
    }

    /** How late this seat's tick of the step was, on average given what is known, minutes. */
    public double lateness(int seat, int step) {
        return meanLateness[seat][step];
    }

    /**
     * A normal belief about the log of minutes.
     *
     * @param meanLog its mean
     * @param modelVariance variance of the unknown class, step and guest effects together
     * @param noiseVariance variance of a single time around them
     */
    public record Belief(double meanLog, double modelVariance, double noiseVariance) {
        public double sdLog() {
            return Math.sqrt(modelVariance + noiseVariance);
        }

        public double meanMinutes() {
            return Math.exp(meanLog + 0.5 * (modelVariance + noiseVariance));
        }
    }

    public int dims() {
        return dims;
    }

    public double[] theta() {
        return theta;
    }

    public double[][] covariance() {
        return covariance;
    }

    public double logPlan(int step) {
        return logPlan[step];
    }

    public double noiseSd(int step) {
        return Math.sqrt(noiseVariance[step]);
    }

    /** Mean of the guest effect of {@code seat} when the class and step effects are {@code at}. */
    public double guestMean(int seat, double[] at) {
        double pull = guestPull[seat];
        for (int k = 0; k < dims - 1; k++) {
            pull -= precision[seat][k] * (at[0] + at[k + 1]);
        }
        return pull / guestPrecision[seat];
    }

    public double guestSd(int seat) {
        return Math.sqrt(1 / guestPrecision[seat]);
    }

    /** Log times of finished seats at the step, beyond what class, step and guest explain. */
    public List<Double> residuals(int step) {
        List<Double> residuals = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            int seat = i;
            seats.get(i).done().stream().filter(d -> d.step() == step && d.weight() == 1)
                    .forEach(d -> residuals.add(value[seat][step] - predictedMean(seat, step)));
        }
        return residuals;
    }

    private void refine() {
        for (int i = 0; i < seats.size(); i++) {
            SeatProgress progress = seats.get(i);
            double previousLateness = 0;
            for (SeatProgress.Done done : progress.done()) {
                previousLateness = finished(i, done, done.startsByTap() ? previousLateness : 0);
                meanLateness[i][done.step()] = previousLateness;
            }
            if (progress.standing() == SeatProgress.Standing.WORKING && progress.step() < dims - 1) {
                unfinished(i, progress, progress.startsByTap() ? previousLateness : 0);
            }
        }
    }

    private double finished(int seat, SeatProgress.Done done, double previousLateness) {
        int k = done.step();
        double[] nodes = PacePriors.LATENESS_MINUTES;
        double mean = predictedMean(seat, k);
        double variance = predictedVariance(seat, k) + noiseVariance[k];
        double[] likelihoods = latenesses(done, previousLateness, mean, variance);
        double sum = 0;
        double logSum = 0;
        double lateSum = 0;
        for (int j = 0; j < nodes.length; j++) {
            sum += likelihoods[j];
            logSum += likelihoods[j] * logRatio(done, previousLateness, j);
            lateSum += likelihoods[j] * nodes[j];
        }
        double x = logSum / sum;
        double z2 = (x - mean) * (x - mean) / variance;
        double robust = (STUDENT_DEGREES + 1) / (STUDENT_DEGREES + z2);
        value[seat][k] = x;
        precision[seat][k] = done.weight() * Math.min(1, robust) / noiseVariance[k];
        return lateSum / sum;
    }

    /**
     * How likely each lateness of a tick is, up to a factor; none that leaves next to no time for the step.
     *
     * @param mean what is expected of the log of the step's time over its plan
     * @param variance of that log
     */
    private double[] latenesses(SeatProgress.Done done, double previousLateness, double mean, double variance) {
        int k = done.step();
        double[] nodes = PacePriors.LATENESS_MINUTES;
        double[] weights = habits.tapsTogether(done.tapMinutes()) > 1 ? PacePriors.SWEPT_LATENESS
                : PacePriors.LONE_LATENESS;
        double[] likelihoods = new double[nodes.length];
        for (int j = 0; j < nodes.length; j++) {
            if (j > 0 && done.minutes() + previousLateness - nodes[j] < shortest(k)) {
                break;
            }
            double off = logRatio(done, previousLateness, j) - mean;
            likelihoods[j] = weights[j] * (0.02 + Math.exp(-0.5 * off * off / variance));
        }
        return likelihoods;
    }

    private double logRatio(SeatProgress.Done done, double previousLateness, int node) {
        double minutes = done.minutes() + previousLateness - PacePriors.LATENESS_MINUTES[node];
        return Math.log(Math.max(shortest(done.step()), minutes)) - logPlan[done.step()];
    }

    private double shortest(int step) {
        return 0.1 * track.steps().get(step).planMinutes();
    }

    /**
     * How late a seat's tick of a step was, drawn from what is believed of it, minutes.
     *
     * @param previousLateness how late the tick before was, if the step began with it; else 0
     * @param u uniform in [0, 1)
     */
    public double drawnLateness(int seat, SeatProgress.Done done, double previousLateness, double u) {
        int k = done.step();
        double[] likelihoods = latenesses(done, previousLateness, predictedMean(seat, k),
                predictedVariance(seat, k) + noiseVariance[k]);
        double left = u * Arrays.stream(likelihoods).sum();
        int j = 0;
        while (j + 1 < likelihoods.length && left >= likelihoods[j] && likelihoods[j + 1] > 0) {
            left -= likelihoods[j++];
        }
        return PacePriors.LATENESS_MINUTES[j];
    }

    private void unfinished(int seat, SeatProgress progress, double previousLateness) {
        int k = progress.step();
        double seen = progress.workedMinutes() - priors.taps().censoringLatenessMinutes();
        double[] sweeps = habits.sweepMinutes();
        if (sweeps.length > 0 && sweeps[sweeps.length - 1] > progress.startMinutes()) {
            double sinceSweep = sweeps[sweeps.length - 1] - progress.startMinutes();
            seen = Math.max(seen, Math.min(progress.workedMinutes(), sinceSweep));
        }
        seen += previousLateness;
        if (seen < 0.2 * track.steps().get(k).planMinutes()) {
            return;
        }
        Belief cavity = belief(seat, k);
        double v = cavity.modelVariance();
        double root = Math.sqrt(v + noiseVariance[k]);
        double z = (cavity.meanLog() - Math.log(seen)) / root;
        double floor = priors.taps().censoringFloor();
        double evidence = floor + (1 - floor) * StandardNormal.cdf(z);
        double slope = (1 - floor) * StandardNormal.density(z) / evidence;
        double mean = cavity.meanLog() + v * slope / root;
        double tilted = v - v * v / (root * root) * slope * (z + slope);
        // far out the mixture is wider than before; the site then keeps its mean and next to no precision
        tilted = Math.max(1e-4, Math.min(tilted, LEAST_GAIN * v));
        double sitePrecision = 1 / tilted - 1 / v;
        double siteMean = (mean / tilted - cavity.meanLog() / v) / sitePrecision;
        value[seat][k] = siteMean - logPlan[k];
        precision[seat][k] = sitePrecision;
    }

    private double predictedMean(int seat, int step) {
        return theta[0] + theta[step + 1] + guestMean(seat, theta);
    }

    private double predictedVariance(int seat, int step) {
        double tau = guestPrecision[seat];
        double[] a = new double[dims];
        double all = 0;
        for (int k = 0; k < dims - 1; k++) {
            a[k + 1] = -precision[seat][k] / tau;
            all += precision[seat][k];
        }
        a[0] = 1 - all / tau;
        a[step + 1] += 1;
        double sum = 0;
        for (int r = 0; r < dims; r++) {
            double row = 0;
            for (int c = 0; c < dims; c++) {
                row += covariance[r][c] * a[c];
            }
            sum += a[r] * row;
        }
        return sum + 1 / tau;
    }

    private void solve() {
        double[][] a = new double[dims][dims];
        double[] b = new double[dims];
        a[0][0] = 1 / priors.times().classVariance();
        for (int k = 0; k < dims - 1; k++) {
            a[k + 1][k + 1] = 1 / priors.stepPrior(track.steps().get(k)).variance();
        }
        double[] g = new double[dims];
        for (int i = 0; i < seats.size(); i++) {
            addSeat(i, a, b, g);
        }
        covariance = Cholesky.inverse(a);
        theta = new double[dims];
        for (int r = 0; r < dims; r++) {
            for (int c = 0; c < dims; c++) {
                theta[r] += covariance[r][c] * b[c];
            }
        }
    }

    private void addSeat(int seat, double[][] a, double[] b, double[] g) {
        double all = 0;
        double pull = 0;
        for (int k = 0; k < dims - 1; k++) {
            double w = precision[seat][k];
            double wx = w * value[seat][k];
            all += w;
            pull += wx;
            g[k + 1] = w;
            a[k + 1][k + 1] += w;
            a[0][k + 1] += w;
            a[k + 1][0] += w;
            b[k + 1] += wx;
        }
        g[0] = all;
        a[0][0] += all;
        b[0] += pull;
        guestPrecision[seat] = 1 / priors.times().guestVariance() + all;
        guestPull[seat] = pull;
        for (int r = 0; r < dims; r++) {
            b[r] -= g[r] * pull / guestPrecision[seat];
            for (int c = 0; c < dims; c++) {
                a[r][c] -= g[r] * g[c] / guestPrecision[seat];
            }
        }
    }
}

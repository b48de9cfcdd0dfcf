package benchpace.cure.room;

import benchpace.cure.CuringCandle;
import benchpace.cure.solver.CureMilestones;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Posterior of a room's loss multiplier and ready fraction by Bayes's rule on a grid. The model is never quite right:
 * each candle has its own factor exp(delta), delta ~ N(0, own sd), over which its observations are averaged together,
 * so that ten readings of one candle do not make the room certain.
 */
public final class RoomPosterior {
    static final int LOSSES = 89;
    private static final double SMALLEST = 1e-290;
    static final double LOSS_SPACING = -2 * LossTrajectories.LOWEST_LOG / (LOSSES - 1);
    /**
     * Nodes and weights of the five-point Gauss-Hermite rule for the standard normal (Abramowitz and Stegun,
     * 25.4.46).
     */
    private static final double[] NODES = {-2.8569700138728056, -1.3556261799742657, 0, 1.3556261799742657,
        2.8569700138728056};
    private static final double[] WEIGHTS = {0.011257411327720689, 0.22207592200561266, 0.53333333333333333,
        0.22207592200561266, 0.011257411327720689};

    /** Weights [loss][fraction], adding up to one. */
    private final double[][] weight;
    /** Of each candle that was looked at, by its id: likelihood [loss][node of its own factor][fraction]. */
    private final Map<String, double[][][]> byCandle;
    private final int observations;

    private RoomPosterior(double[][] weight, Map<String, double[][][]> byCandle, int observations) {
        this.weight = weight;
        this.byCandle = byCandle;
        this.observations = observations;
    }

    /** What is believed before anything is seen in this class. */
    public static RoomPosterior of(RoomFit prior) {
        return of(prior, List.of(), new TrajectoryCache());
    }

    /**
     * What is believed after all that was seen in this class.
     *
     * @param prior the room's fit when the class began
     * @param evidence all of this class so far, in any order
     * @param cache of the candles' trajectories
     */
    public static RoomPosterior of(RoomFit prior, Collection<? extends Evidence> evidence, TrajectoryCache cache) {
        Map<String, List<Evidence>> byCandle = new LinkedHashMap<>();
        for (Evidence e : evidence) {
            byCandle.computeIfAbsent(e.candle().id(), id -> new ArrayList<>()).add(e);
        }
        double[][] log = logPrior(prior);
        Map<String, double[][][]> likelihoods = new LinkedHashMap<>();
        byCandle.forEach((candle, seen) -> {
            double[][][] likelihood = likelihood(seen, cache);
            add(log, likelihood);
            likelihoods.put(candle, likelihood);
        });
        return new RoomPosterior(normalised(log), likelihoods, prior.observations() + evidence.size());
    }

    static double logLoss(int i) {
        return LossTrajectories.LOWEST_LOG + i * LOSS_SPACING;
    }

    private static double[][] logPrior(RoomFit prior) {
        double[][] log = new double[LOSSES][LossTrajectories.FRACTIONS];
        for (int i = 0; i < LOSSES; i++) {
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                log[i][k] = logNormal(logLoss(i) - prior.logLossMean(), prior.logLossSd())
                        + logNormal(LossTrajectories.fraction(k) - prior.readyMean(), prior.readySd());
            }
        }
        return log;
    }

    private static double logNormal(double difference, double sd) {
        double z = difference / sd;
        return -z * z / 2;
    }

    private static void add(double[][] log, double[][][] likelihood) {
        for (int i = 0; i < LOSSES; i++) {
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                log[i][k] += Math.log(Math.max(over(likelihood[i], k), SMALLEST));
            }
        }
    }

    private static double[][][] likelihood(List<Evidence> seen, TrajectoryCache cache) {
        LossTrajectories trajectories = cache.of(seen.get(0).candle().coolingCase());
        boolean judged = seen.stream().anyMatch(e -> e instanceof Evidence.JudgedSet);
        double[][][] likelihood = new double[LOSSES][][];
        for (int i = 0; i < LOSSES; i++) {
            likelihood[i] = likelihood(seen, judged, i, trajectories);
        }
        return likelihood;
    }

    /** Likelihood [node of the candle's own factor][fraction] of all seen at one candle, times the node's weight. */
    private static double[][] likelihood(List<Evidence> seen, boolean judged, int loss,
                                         LossTrajectories trajectories) {
        double[][] likelihood = new double[NODES.length][LossTrajectories.FRACTIONS];
        for (int j = 0; j < NODES.length; j++) {
            double ownLoss = logLoss(loss) + NODES[j] * seen.get(0).candle().ownSd();
            double whatever = ofLoss(seen, ownLoss, trajectories);
            if (!judged) { // nothing tells the fractions apart
                Arrays.fill(likelihood[j], WEIGHTS[j] * Math.exp(whatever));
                continue;
            }
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                double ofFraction = ofFraction(seen, ownLoss, LossTrajectories.fraction(k), trajectories);
                likelihood[j][k] = WEIGHTS[j] * Math.exp(whatever + ofFraction);
            }
        }
        return likelihood;
    }

    private static double over(double[][] likelihood, int fraction) {
        double sum = 0;
        for (double[] node : likelihood) {
            sum += node[fraction];
        }
        return sum;
    }

    /** Log likelihood of what depends on the loss alone. */
    private static double ofLoss(List<Evidence> seen, double loss, LossTrajectories t) {
        double sum = 0;
        for (Evidence e : seen) {
            if (e instanceof Evidence.SurfaceReading reading) {
                sum += logNormal(reading.celsius() - t.surfaceCelsius(loss, e.elapsedMinutes()),
                        Evidence.SurfaceReading.READING_SD_KELVIN);
            } else if (e instanceof Evidence.SkinFormed) {
                double expected = Math.min(t.skinMinutes(loss), 2 * CureMilestones.HORIZON_MINUTES);
                sum += logNormal(Math.log(Math.max(e.elapsedMinutes(), 0.5) / Math.max(expected, 0.5)),
                        Evidence.SkinFormed.SD_LOG_MINUTES);
            }
        }
        return sum;
    }

    /** Log likelihood of the hand tests, which depend on the ready fraction too. */
    private static double ofFraction(List<Evidence> seen, double loss, double fraction, LossTrajectories t) {
        double sum = 0;
        for (Evidence e : seen) {
            if (e instanceof Evidence.JudgedSet) {
                sum += logNormal(t.solidFraction(loss, e.elapsedMinutes()) - fraction, Evidence.JudgedSet.SD_FRACTION);
            }
        }
        return sum;
    }

    private static double[][] normalised(double[][] log) {
        double most = Double.NEGATIVE_INFINITY;
        for (double[] row : log) {
            for (double value : row) {
                most = Math.max(most, value);
            }
        }
        double sum = 0;
        for (double[] row : log) {
            for (int k = 0; k < row.length; k++) {
                row[k] = Math.exp(row[k] - most);
                sum += row[k];
            }
        }
        for (double[] row : log) {
            for (int k = 0; k < row.length; k++) {
                row[k] /= sum;
            }
        }
        return log;
    }

    /**
     * Weights [loss][fraction] of one candle's own loss, the room's times the candle's factor. Where the candle itself
     * was looked at, that has taught its factor too: its nodes weigh by how well they explain what was seen.
     */
    double[][] ofCandle(CuringCandle candle) {
        double[][][] seen = byCandle.get(candle.id());
        double[][] own = new double[LOSSES][LossTrajectories.FRACTIONS];
        for (int i = 0; i < LOSSES; i++) {
            double[][] likelihood = seen == null ? null : seen[i];
            for (int j = 0; j < NODES.length; j++) {
                double at = i + NODES[j] * candle.ownSd() / LOSS_SPACING;
                double inside = Math.min(Math.max(at, 0), LOSSES - 1);
                int low = Math.min((int) inside, LOSSES - 2);
                double part = inside - low;
                for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                    double node = likelihood == null ? WEIGHTS[j]
                            : likelihood[j][k] / Math.max(over(likelihood, k), SMALLEST);
                    own[low][k] += weight[i][k] * node * (1 - part);
                    own[low + 1][k] += weight[i][k] * node * part;
                }
            }
        }
        return own;
    }

    /** Mean and standard deviation of both parameters: what is stored for the room. */
    public RoomFit fit() {
        double meanLoss = 0;
        double meanReady = 0;
        for (int i = 0; i < LOSSES; i++) {
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                meanLoss += weight[i][k] * logLoss(i);
                meanReady += weight[i][k] * LossTrajectories.fraction(k);
            }
        }
        double varianceLoss = 0;
        double varianceReady = 0;
        for (int i = 0; i < LOSSES; i++) {
            for (int k = 0; k < LossTrajectories.FRACTIONS; k++) {
                varianceLoss += weight[i][k] * Math.pow(logLoss(i) - meanLoss, 2);
                varianceReady += weight[i][k] * Math.pow(LossTrajectories.fraction(k) - meanReady, 2);
            }
        }
        return new RoomFit(meanLoss, Math.max(Math.sqrt(varianceLoss), 0.01), meanReady,
                Math.max(Math.sqrt(varianceReady), 0.01), observations);
    }
}

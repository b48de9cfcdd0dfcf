package benchpace.pace;

import java.util.Map;

/**
 * Every number the judgements rest on before a class begins. PLACEHOLDER_DOC
 */
public record PacePriors(
        double classVariance,
        double stepVariance,
        double guestVariance,
        double noiseSdLog,
        double tapNoiseMinutes,
        double stallOdds,
        double forgottenOdds,
        double hintOdds,
        double sweepMiss,
        double missScale,
        double missFade,
        double promptShare,
        double promptPriorTaps,
        double promptWindowTaps,
        double promptShareOfLoneTaps,
        double promptDelayMinutes,
        double censoringLatenessMinutes,
        double censoringFloor,
        double cureClassMean,
        double cureClassSd,
        double cureSeatSd,
        double openingBlind,
        double openingDelayMinutes,
        double behindOdds,
        double behindOddsOff,
        double slippingOdds,
        double slippingOddsOff,
        double lateMinutes,
        double arrivalMinutes,
        double pauseMinutes,
        Map<String, StepPrior> steps) {

    public PacePriors {
        steps = Map.copyOf(steps);
    }

    public static PacePriors standard() {
        return new PacePriors(0.09, 0.045, 0.05, 0.27, 0.3, 0.02, 0.08, 20, 0.13, 0.8, 0.07, 0.47, 12, 2, 0.75, 0.25,
                1.5, 0.15, 0.02, 0.06, 0.03, 0.08, 0.8, 0.5, 0.35, 0.2, 0.12, 6.0, 4, 2.5, Map.of());
    }

    private static final double[] LATENESS = {0.05, 0.2, 0.5, 1, 1.5, 2.2, 3.2, 4.5, 6.5, 9};
    private static final double[] LONE = {0.38, 0.30, 0.13, 0.07, 0.035, 0.03, 0.025, 0.015, 0.01, 0.005};
    private static final double[] SWEPT = {0.09, 0.11, 0.14, 0.13, 0.12, 0.13, 0.11, 0.085, 0.055, 0.03};
    private static final double[] STALL = {5.5, 8, 11, 14, 19, 26};
    private static final double[] STALL_WEIGHTS = {.13, .2, .22, .22, .15, .08};

    private static final double[] OPENING = {0.2, 0.2, 0.25, 0.1, 0.25};

    double[] openingShares() {
        return OPENING;
    }

    double miss(int size, int seats) {
        return sweepMiss + missScale * Math.exp(-(size - 1.0) / seats / missFade);
    }

    double[] latenessMinutes() {
        return LATENESS;
    }

    double[] loneLateness() {
        return LONE;
    }

    double[] sweptLateness() {
        return SWEPT;
    }

    double[] stallMinutes() {
        return STALL;
    }

    double[] stallWeights() {
        return STALL_WEIGHTS;
    }

    double noiseVariance(PaceStep step) {
        double learned = stepPrior(step).noiseVariance();
        if (!Double.isNaN(learned)) {
            return learned;
        }
        double tap = tapNoiseMinutes / step.planMinutes();
        return noiseSdLog * noiseSdLog + Math.min(0.2, tap * tap);
    }

    StepPrior stepPrior(PaceStep step) {
        StepPrior learned = steps.get(step.id());
        return learned != null ? learned : new StepPrior(0, stepVariance, Double.NaN);
    }
}

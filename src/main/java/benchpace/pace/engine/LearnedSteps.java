package benchpace.pace.engine;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.NormalInverseGamma;
import benchpace.pace.belief.PacePriors;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What past classes taught about each step, by step id. Each class gives one figure a step, its usual log time over
 * plan, freed of tap lateness and robust to stalls and forgotten taps (as {@link ClassTempo} sees it at the end of the
 * class). Over classes a normal-inverse-gamma law, starting from the plan, collects them; older classes fade.
 */
public final class LearnedSteps {
    /** The plan counts as much as two classes; from judgement. */
    private static final double PLAN_CLASSES = 2;
    private static final double PRIOR_SHAPE = 3;
    /** A class's opinion keeps so much of its weight when the next one comes: half after some seven classes. */
    private static final double KEEP = 0.9;
    private static final double LEAST_VARIANCE = 0.012;
    /** Of a step's log shift, while a class that is over is asked about it. */
    private static final double OPEN_VARIANCE = 0.25;
    /**
     * What late taps add to log times beyond what can be told from them, were no tap prompt. Invented classes whose
     * steps took what the plan says taught 0.09 with every other tap prompt, 0.15 with three in ten.
     */
    private static final double LATE_TAPS = 0.22;
    /** The general spread counts as many guests as this. */
    private static final double SPREAD_GUESTS = 20;

    private LearnedSteps() { }

    /**
     * Learns from classes that are over.
     *
     * @param past oldest first
     * @return what to believe of each step seen, for {@link PacePriors#withSteps}
     */
    public static Map<String, StepPrior> learn(List<ClassTrack> past, PacePriors priors) {
        double spread = priors.times().stepVariance() + priors.times().classVariance();
        NormalInverseGamma plan = new NormalInverseGamma(0, PLAN_CLASSES, PRIOR_SHAPE, spread * (PRIOR_SHAPE - 1));
        PacePriors open = unprejudiced(priors);
        Map<String, NormalInverseGamma> shifts = new LinkedHashMap<>();
        Map<String, double[]> spreads = new HashMap<>();
        for (ClassTrack track : past) {
            double end = track.moments().stream().mapToDouble(m -> m).max().orElse(0);
            Evaluation over = new Evaluation(track, end, open);
            shifts.replaceAll((id, law) -> law.decayed(KEEP, plan));
            spreads.values().forEach(s -> {
                s[0] *= KEEP;
                s[1] *= KEEP;
            });
            for (int k = 0; k <= track.pourStep(); k++) {
                learnStep(over, k, plan, shifts, spreads);
            }
        }
        Map<String, StepPrior> learned = new LinkedHashMap<>();
        shifts.forEach((id, law) -> {
            double next = law.meanVariance() * (1 + 1 / law.count()) - priors.times().classVariance();
            double[] squares = spreads.get(id);
            learned.put(id, new StepPrior(law.mean(), Math.max(LEAST_VARIANCE, next),
                    Math.max(squares[2], squares[0] / squares[1])));
        });
        return learned;
    }

    /** What a class that is over says of its steps, with next to nothing believed of them before. */
    private static PacePriors unprejudiced(PacePriors priors) {
        PacePriors.Times t = priors.times();
        return priors.withSteps(Map.of()).withTimes(new PacePriors.Times(t.classVariance(), OPEN_VARIANCE,
                t.guestVariance(), t.noiseSdLog(), t.tapNoiseMinutes(), t.arrivalMinutes(), t.pauseMinutes()));
    }

    private static void learnStep(Evaluation over, int k, NormalInverseGamma plan,
                                  Map<String, NormalInverseGamma> shifts, Map<String, double[]> spreads) {
        PaceStep step = over.track.steps().get(k);
        List<Double> residuals = over.tempo.residuals(k);
        if (!step.kind().isWorked() || residuals.isEmpty()) {
            return;
        }
        double shift = over.tempo.theta()[0] + over.tempo.theta()[k + 1]
                - LATE_TAPS * (1 - over.habits.promptShare());
        shifts.merge(step.id(), plan.update(shift, 1), (old, fresh) -> old.update(shift, 1));
        double general = over.priors.noiseVariance(step);
        double[] squares = spreads.computeIfAbsent(step.id(),
                id -> new double[] {general * SPREAD_GUESTS, SPREAD_GUESTS, general});
        double deviation = medianDeviation(residuals);
        squares[0] += residuals.size() * deviation * deviation;
        squares[1] += residuals.size();
    }

    /** 1.4826 times the median absolute value: the standard deviation of a normal law (Rousseeuw &amp; Croux 1993). */
    private static double medianDeviation(List<Double> residuals) {
        double[] sorted = residuals.stream().mapToDouble(Math::abs).sorted().toArray();
        return 1.4826 * 0.5 * (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]);
    }

    /** The usual minutes a step will take, as the organiser is shown them: "wicks: 4.6 min, plan 4". */
    public static double usualMinutes(PaceStep step, StepPrior learned) {
        return step.planMinutes() * Math.exp(learned.meanLogShift());
    }
}

package benchpace.prep.evening;

import benchpace.plan.Opening;
import benchpace.plan.Step;
import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * A class that really happens, by the law that the pace model believes in, written down a second time and otherwise:
 * log minutes of seat i at step k are log plan + class + step + guest + noise, each normal; one step in so many holds a
 * stall; led steps open when a share of the table is through; seats queue at stations.
 *
 * @param classSd of the class effect, and so on: standard deviations of log minutes
 * @param tapNoise minutes of noise that weigh most on short steps
 * @param mostTapVariance what that adds at most
 * @param stallOdds chance of a stall at a step
 */
record MadeUpClass(double classSd, double stepSd, double guestSd, double noiseSd, double tapNoise,
                   double mostTapVariance, double stallOdds) {
    /** What the board believes of a class, as figures. */
    static final MadeUpClass AS_BELIEVED = new MadeUpClass(0.3, Math.sqrt(0.045), Math.sqrt(0.05), 0.3, 0.3, 0.2, 0.02);
    /** The model that the board's was made from, with wider classes and steps. */
    static final MadeUpClass WIDER = new MadeUpClass(0.35, 0.25, 0.22, 0.33, 0.7, 0.36, 0.015);
    /** Tighter ones, as those recorded were. */
    static final MadeUpClass TIGHTER = new MadeUpClass(0.2, 0.2, 0.22, 0.27, 0, 0, 0.02);

    private static final double[] STALLS = {5.5, 8, 11, 14, 19, 26, 40};
    private static final double[] STALL_WEIGHTS = {0.13, 0.2, 0.22, 0.22, 0.15, 0.05, 0.03};
    private static final double[] SHARES = {0.8, 0.85, 0.9, 0.95, 1};
    private static final double[] SHARE_WEIGHTS = {0.2, 0.2, 0.25, 0.1, 0.25};

    /** When everybody was through with everything, minutes from the start; the cure goes by the plan. */
    double done(Setting setting, SplittableRandom random) {
        int n = setting.seats();
        double tempo = classSd * random.nextGaussian();
        double share = pick(SHARES, SHARE_WEIGHTS, random);
        double cureOfClass = 0.005 + 0.06 * random.nextGaussian();
        double[] guests = IntStream.range(0, n).mapToDouble(i -> guestSd * random.nextGaussian()).toArray();
        double[] at = new double[n];
        double[] ready = new double[n];
        double opened = 0;
        for (Step step : setting.plan().steps()) {
            if (step.opening() == Opening.LED) {
                double[] through = at.clone();
                Arrays.sort(through);
                opened = Math.max(opened, through[(int) Math.ceil(share * n - 1e-9) - 1]) + 0.8;
            }
            for (int i = 0; i < n; i++) {
                at[i] = step.opening() == Opening.LED ? Math.max(at[i], opened) : at[i];
            }
            switch (step.kind()) {
                case TALK -> Arrays.setAll(at, i -> at[i] + minutes(step));
                case CURE -> Arrays.setAll(at, i -> Math.max(at[i], ready[i]));
                default -> work(step, tempo, guests, at, random);
            }
            if (setting.plan().pour().filter(step::equals).isPresent()) {
                double cure = setting.plan().plannedCure().toSeconds() / 60.0;
                Arrays.setAll(ready, i -> at[i] + cure * Math.exp(cureOfClass + 0.03 * random.nextGaussian()));
            }
        }
        return Arrays.stream(at).max().orElseThrow();
    }

    private void work(Step step, double tempo, double[] guests, double[] at, SplittableRandom random) {
        double plan = minutes(step);
        double effect = stepSd * random.nextGaussian();
        double sd = Math.sqrt(noiseSd * noiseSd + Math.min(mostTapVariance, Math.pow(tapNoise / plan, 2)));
        double[] work = new double[at.length];
        double[] stall = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            work[i] = plan * Math.exp(tempo + effect + guests[i] + sd * random.nextGaussian());
            if (random.nextDouble() < stallOdds) {
                double seen = 2 - 20 * Math.log(1 - random.nextDouble());
                stall[i] = Math.min(seen, pick(STALLS, STALL_WEIGHTS, random));
            }
        }
        step.stations().ifPresent(stations -> {
            double kept = stations.each().toMillis() / (double) step.planned().toMillis();
            PriorityQueue<Double> free = new PriorityQueue<>();
            IntStream.range(0, stations.atOnce()).forEach(j -> free.add(0.0));
            IntStream.range(0, at.length).boxed().sorted(Comparator.comparingDouble(i -> at[i])).forEach(i -> {
                at[i] = Math.max(at[i], free.remove());
                free.add(at[i] + kept * (work[i] + stall[i]));
            });
        });
        Arrays.setAll(at, i -> at[i] + work[i] + stall[i]);
    }

    private static double minutes(Step step) {
        return step.planned().toSeconds() / 60.0;
    }

    private static double pick(double[] values, double[] weights, SplittableRandom random) {
        double u = random.nextDouble();
        for (int j = 0; j < values.length; j++) {
            u -= weights[j];
            if (u < 0) {
                return values[j];
            }
        }
        return values[values.length - 1];
    }
}

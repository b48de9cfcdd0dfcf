package benchpace.pace.engine;

import benchpace.pace.PaceStations;
import benchpace.pace.belief.StandardNormal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Invents classes: true times, stalls and tapping, from a seed. Several habits of time and of tapping, so that a rule
 * is not fitted to one of them. Writes what a class log holds, and the truth beside it.
 */
public final class ClassSimulator {
    static final String[] STEPS = {"vessel", "fragrance", "wicks", "mix", "pour", "centre", "label", "second"};
    private static final double[] PLAN = {2, 5, 4, 5, 3, 2, 12, 15};
    private static final int POUR = 4;

    /**
     * A habit of guests and of the person with the tablet.
     *
     * @param gamma times follow a gamma law instead of a lognormal one
     * @param planBias the plan's own error, as a factor on true times
     * @param promptShare finished steps ticked at once
     * @param sweepGapMinutes mean time between sweeps
     * @param sweepCatch share of done seats a sweep ticks
     * @param stallChance chance of a stall at a step
     */
    public record Habit(boolean gamma, double planBias, double promptShare, double sweepGapMinutes,
                        double sweepCatch, double stallChance) {
        public static final Habit USUAL = new Habit(false, 1, 0.47, 2, 0.8, 0.02);
        public static final Habit GAMMA = new Habit(true, 1.13, 0.47, 2, 0.8, 0.02);
        public static final Habit BUNCHED = new Habit(false, 0.87, 0.3, 3, 0.7, 0.02);
        public static final Habit GAMMA_BUNCHED = new Habit(true, 0.88, 0.38, 2.4, 0.7, 0.02);
        public static final Habit LATE = new Habit(false, 1.14, 0.3, 2.6, 0.75, 0.02);
        public static final Habit PROMPT = new Habit(false, 1, 1, 3, 1, 0.02);
    }

    /** A true stall, seconds. */
    public record Stall(int seat, int step, double start, double end, double stepDone) { }

    /** What really happened: pour times in seconds, NaN when never poured. */
    public record Truth(String classId, int seats, double finish, double[] pourDone, List<Stall> stalls) {
        public String json() {
            StringBuilder text = new StringBuilder(String.format(Locale.ROOT,
                    "{\"class_id\": \"%s\", \"n\": %d, \"finish\": %.1f, \"pour_done\": [", classId, seats, finish));
            for (int i = 0; i < seats; i++) {
                text.append(i == 0 ? "" : ", ").append(Double.isNaN(pourDone[i]) ? "null"
                        : String.format(Locale.ROOT, "%.1f", pourDone[i]));
            }
            text.append("], \"stalls\": [");
            for (int j = 0; j < stalls.size(); j++) {
                Stall s = stalls.get(j);
                text.append(j == 0 ? "" : ", ").append(String.format(Locale.ROOT, "{\"seat\": %d, \"step\": \"%s\", "
                        + "\"start\": %.1f, \"end\": %.1f, \"step_done\": %.1f}", s.seat, STEPS[s.step], s.start,
                        s.end, s.stepDone));
            }
            return text.append("]}").toString();
        }
    }

    public record Simulated(List<String> lines, Truth truth) { }

    private record Line(double at, String text) { }

    private final SplittableRandom random;
    private final Habit habit;
    private final double[] venue;
    private final String classId;
    private final int n;
    private final boolean[] led = new boolean[STEPS.length];
    private final double[] open = new double[STEPS.length];
    private final double[][] done;
    private final double[][] tapped;
    private final double[] arrive;
    private final double[] leave;
    private final double[][] pause;
    private final List<Stall> stalls = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final double classEffect;
    private final double[] stepEffect = new double[STEPS.length];
    private final double[] guestEffect;
    private final boolean[][] dull;
    private final double openingShare;
    private final Optional<PaceStations> stations;
    private int id;

    private ClassSimulator(String classId, int n, Habit habit, double[] venue, Optional<PaceStations> stations,
                           long seed) {
        this.stations = stations;
        this.classId = classId;
        this.n = n;
        this.habit = habit;
        this.venue = venue;
        this.random = new SplittableRandom(seed);
        this.done = new double[n][STEPS.length];
        this.tapped = new double[n][STEPS.length];
        this.openingShare = new double[] {0.82, 0.85, 0.9, 1}[random.nextInt(4)];
        this.dull = new boolean[n][STEPS.length + 1];
        this.arrive = new double[n];
        this.leave = new double[n];
        this.pause = new double[n][];
        this.guestEffect = new double[n];
        this.classEffect = Math.log(habit.planBias) + 0.2 * normal();
    }

    /** One class of {@code n} seats. */
    public static Simulated simulate(String classId, int n, Habit habit, long seed) {
        return simulate(classId, n, habit, new double[STEPS.length], seed);
    }

    /**
     * One class at a place with steps of its own.
     *
     * @param venue log of what each step takes there over the plan, for every class alike
     */
    public static Simulated simulate(String classId, int n, Habit habit, double[] venue, long seed) {
        return new ClassSimulator(classId, n, habit, venue, Optional.empty(), seed).run();
    }

    /** One class whose pour is served by so many stations, first come, first served. */
    public static Simulated simulate(String classId, int n, Habit habit, PaceStations pour, long seed) {
        return new ClassSimulator(classId, n, habit, new double[STEPS.length], Optional.of(pour), seed).run();
    }

    private double normal() {
        return StandardNormal.quantile(random.nextDouble());
    }

    private double exponential(double mean) {
        return -mean * Math.log(1 - random.nextDouble());
    }

    private Simulated run() {
        int firstLed = new int[] {1, 2, 2, 99}[random.nextInt(4)];
        for (int k = 0; k < STEPS.length; k++) {
            led[k] = k >= firstLed && k <= POUR;
            stepEffect[k] = venue[k] + 0.2 * normal();
        }
        Arrays.fill(leave, Double.POSITIVE_INFINITY);
        for (int i = 0; i < n; i++) {
            guestEffect[i] = 0.22 * normal();
            arrive[i] = random.nextDouble() < 0.035 ? 3 + exponential(6) : 0;
            if (random.nextDouble() < 0.03) {
                double at = 2 + 35 * random.nextDouble();
                pause[i] = new double[] {at, at + 2 + 4 * random.nextDouble()};
            }
            if (random.nextDouble() < 0.006) {
                leave[i] = 8 + 30 * random.nextDouble();
            }
        }
        for (int k = 0; k < STEPS.length; k++) {
            openStep(k);
            if (k == POUR && stations.isPresent()) {
                serve(k, stations.get());
                continue;
            }
            for (int i = 0; i < n; i++) {
                work(i, k, begin(i, k));
            }
        }
        tap();
        double finish = cure();
        lines.sort(Comparator.comparingDouble(Line::at));
        List<String> text = new ArrayList<>();
        text.add(head());
        lines.forEach(l -> text.add(l.text));
        double[] pours = new double[n];
        for (int i = 0; i < n; i++) {
            pours[i] = Double.isInfinite(done[i][POUR]) ? Double.NaN : 60 * done[i][POUR];
        }
        return new Simulated(text, new Truth(classId, n, 60 * finish, pours, stalls));
    }

    private String head() {
        StringBuilder text = new StringBuilder("{\"t\": 0, \"type\": \"class\", \"class_id\": \"" + classId
                + "\", \"steps\": [");
        for (int k = 0; k < STEPS.length; k++) {
            text.append(k == 0 ? "" : ", ").append("{\"step\": \"").append(STEPS[k]).append("\", \"planMinutes\": ")
                    .append(PLAN[k]).append(", \"opening\": \"").append(led[k] ? "led" : "free")
                    .append("\", \"kind\": \"").append(k == POUR ? "pour" : k > 5 ? "wait" : "hands-on")
                    .append("\"").append(k == POUR ? stationsJson() : "").append("}");
        }
        text.append("], \"cureMinutes\": 60, \"helpers\": ").append(n / 12).append(", \"seats\": [");
        for (int i = 0; i < n; i++) {
            text.append(i == 0 ? "" : ", ").append("{\"seat\": ").append(i + 1).append(", \"party\": ")
                    .append(i / 2 + 1).append(", \"sharesCandle\": false, \"present\": ").append(arrive[i] == 0)
                    .append("}");
        }
        return text.append("]}").toString();
    }

    private String stationsJson() {
        return stations.map(s -> ", \"stations\": {\"atOnce\": " + s.atOnce() + ", \"minutesEach\": "
                + s.eachMinutes() + "}").orElse("");
    }

    private void openStep(int k) {
        if (!led[k]) {
            return;
        }
        double[] before = new double[n];
        int m = 0;
        for (int i = 0; i < n; i++) {
            if (arrive[i] < 10 && (k == 0 || Double.isFinite(done[i][k - 1]))) {
                before[m++] = k == 0 ? 0 : done[i][k - 1];
            }
        }
        Arrays.sort(before, 0, m);
        int needed = (int) Math.ceil(openingShare * m - 1e-9) - 1;
        open[k] = before[needed] + 0.4 + exponential(0.6);
        if (Double.isFinite(open[k])) { // else everybody went home before
            add(open[k], "open-step", ", \"step\": \"" + STEPS[k] + "\"");
        }
    }

    private double begin(int i, int k) {
        return Math.max(k == 0 ? arrive[i] : done[i][k - 1], open[k]);
    }

    /** Each in turn, as they come; of what a seat takes, its stalls included, it keeps its station for a share. */
    private void serve(int k, PaceStations served) {
        List<Integer> coming = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            coming.add(i);
        }
        coming.sort(Comparator.comparingDouble(i -> begin(i, k)));
        double[] free = new double[served.atOnce()];
        for (int i : coming) {
            Arrays.sort(free);
            double turn = Math.max(begin(i, k), free[0]);
            work(i, k, turn);
            double kept = done[i][k] - turn;
            free[0] = Double.isFinite(kept) ? turn + kept * served.eachMinutes() / PLAN[k] : free[0];
        }
    }

    private void work(int i, int k, double start) {
        if (k == 1 && random.nextDouble() < 0.03) {
            done[i][k] = start + 0.05;
            return;
        }
        double median = PLAN[k] * Math.exp(classEffect + stepEffect[k] + guestEffect[i]);
        double minutes = habit.gamma ? gamma(12) * median / 11.67 : median * Math.exp(0.27 * normal());
        double stallLength = 0;
        if (k <= 5 && random.nextDouble() < habit.stallChance) {
            double length = Math.max(5, 12 * Math.exp(0.42 * normal()));
            double noticed = 2 + exponential(22);
            stallLength = Math.min(length, noticed);
            double begun = start + minutes * random.nextDouble();
            boolean somebodyCame = noticed < length && random.nextDouble() < 0.67;
            if (somebodyCame && Double.isFinite(begun)) { // a step that was never opened has no stall
                add(begun + Math.max(0.1, noticed - 1 - 1.2 * random.nextDouble()), "claim", seat(i));
            }
            stalls.add(new Stall(i + 1, k, 60 * begun, 60 * (begun + stallLength),
                    60 * (start + minutes + stallLength)));
        }
        double end = start + minutes + stallLength;
        if (pause[i] != null && pause[i][0] >= start && pause[i][0] < end) {
            end += pause[i][1] - pause[i][0];
            add(pause[i][0], "pause", seat(i));
            add(pause[i][1], "resume", seat(i));
            pause[i] = null;
        }
        done[i][k] = end > leave[i] ? Double.POSITIVE_INFINITY : end;
        if (Double.isInfinite(done[i][k])) {
            stalls.removeIf(s -> s.seat == i + 1 && s.step == k);
        }
    }

    /** Gamma of a whole shape: a sum of exponentials (Devroye 1986, IX.2). */
    private double gamma(int shape) {
        double sum = 0;
        for (int j = 0; j < shape; j++) {
            sum += exponential(1);
        }
        return sum;
    }

    private static String seat(int i) {
        return ", \"seat\": " + (i + 1);
    }

    private void add(double minutes, String type, String rest) {
        long t = Math.round(60 * minutes);
        lines.add(new Line(minutes, "{\"t\": " + t + ", \"type\": \"" + type + "\"" + rest + "}"));
    }

    /** The person at the tablet: some steps ticked at once, the others when a sweep finds them, some never. */
    private void tap() {
        for (double[] row : tapped) {
            Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        List<double[]> prompt = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < STEPS.length; k++) {
                dull[i][k] = random.nextDouble() < 0.07;
                if (Double.isFinite(done[i][k]) && random.nextDouble() < habit.promptShare) {
                    prompt.add(new double[] {done[i][k] + 0.03 + exponential(0.15), i, k});
                }
            }
        }
        prompt.sort(Comparator.comparingDouble(p -> p[0]));
        int next = 0;
        double sweep = exponential(habit.sweepGapMinutes);
        while (sweep < 200) {
            while (next < prompt.size() && prompt.get(next)[0] <= sweep) {
                tick(prompt.get(next));
                next++;
            }
            for (int i = 0; i < n; i++) {
                int k = position(i);
                double caught = dull[i][k] ? 0.3 : habit.sweepCatch;
                if (k < STEPS.length && done[i][k] < sweep && random.nextDouble() < caught) {
                    while (k + 1 < STEPS.length && done[i][k + 1] < sweep - 1) {
                        k++;
                    }
                    tick(new double[] {sweep + 0.01 * random.nextDouble(), i, k});
                }
            }
            sweep += 0.15 + exponential(habit.sweepGapMinutes);
        }
        for (int i = 0; i < n; i++) {
            if (arrive[i] > 0) {
                add(arrive[i], "arrive", seat(i));
            }
            if (Double.isFinite(leave[i])) {
                add(leave[i], "leave", seat(i));
            }
        }
    }

    private int position(int i) {
        int k = STEPS.length;
        while (k > 0 && Double.isInfinite(tapped[i][k - 1])) {
            k--;
        }
        return k;
    }

    private void tick(double[] tap) {
        int i = (int) tap[1];
        int k = (int) tap[2];
        if (Double.isInfinite(tapped[i][k]) && k >= position(i)) {
            tapped[i][k] = tap[0];
            add(tap[0], "finish-step", seat(i) + ", \"step\": \"" + STEPS[k] + "\", \"id\": " + ++id);
        }
    }

    private double cure() {
        double factor = 1.02 * Math.exp(0.055 * normal());
        double last = 0;
        for (int i = 0; i < n; i++) {
            if (Double.isFinite(done[i][POUR]) && Double.isInfinite(leave[i])) {
                last = Math.max(last, done[i][POUR] + 60 * factor * Math.exp(0.03 * normal()));
            }
        }
        return last;
    }
}

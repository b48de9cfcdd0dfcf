package benchpace.pace.engine;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.belief.AlarmBudget;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Forecast;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Plays many invented classes through the engine and scores them: how the figures in {@link PacePriors.Rule} were set
 * and can be set again. What the evaluations say does not depend on the rule, so it is kept, and any number of rules
 * are tried on it. {@code main} prints what the rule in force does by size of table, habit and history.
 */
public final class PaceCalibration {
    private static final double LAST_MINUTE = 75;
    /** Classes held before, at the same place. */
    private static final int PAST = 12;

    private PaceCalibration() { }

    /**
     * A kind of class.
     *
     * @param off by how much steps may differ at the place from the plan, log; 0 when only single classes differ
     * @param history whether the place's past classes have been learned from
     */
    public record Kind(int seats, ClassSimulator.Habit habit, double off, boolean history) { }

    /** A class, what each half minute's evaluation said of it, and its forecasts. */
    public record Played(ClassSimulator.Truth truth, List<PaceMemory.Look[]> looks, String forecasts, double spread) { }

    /** Classes of a kind, the first numbered {@code seed}; the same seed gives the same classes, past or none. */
    public static List<Played> play(Kind kind, int classes, long seed, boolean forecasts) throws IOException {
        List<Played> played = new ArrayList<>();
        for (int j = 0; j < classes; j++) {
            SplittableRandom random = new SplittableRandom(seed * 7919 + j);
            double[] venue = new double[ClassSimulator.STEPS.length];
            for (int k = 0; k < venue.length; k++) {
                venue[k] = kind.off() * (random.nextBoolean() ? 1 : -1) * (0.5 + 0.5 * random.nextDouble());
            }
            PacePriors priors = PacePriors.standard();
            if (kind.history()) {
                List<ClassTrack> past = new ArrayList<>();
                for (int p = 0; p < PAST; p++) {
                    past.add(track(ClassSimulator.simulate("p", kind.seats(), kind.habit(), venue,
                            random.nextLong()).lines()));
                }
                priors = priors.withSteps(LearnedSteps.learn(past, priors));
            }
            ClassSimulator.Simulated made = ClassSimulator.simulate("c" + (seed + j), kind.seats(), kind.habit(),
                    venue, seed * 1_000_003 + j);
            played.add(play(made, priors, forecasts));
        }
        return played;
    }

    static ClassTrack track(List<String> lines) throws IOException {
        try {
            ClassLog log = ClassLogReader.read("c", new StringReader(String.join("\n", lines)));
            TrackFold fold = new TrackFold(log);
            log.events().forEach(fold::apply);
            return fold.track();
        } catch (benchpace.files.BadFile bad) {
            throw new IOException(bad);
        }
    }

    public static Played play(ClassSimulator.Simulated made, PacePriors priors, boolean forecasts) throws IOException {
        ClassTrack whole = track(made.lines());
        PaceEngine engine = new PaceEngine(priors);
        List<PaceMemory.Look[]> looks = new ArrayList<>();
        StringBuilder csv = new StringBuilder("class_id,t,p10,p50,p90\n");
        int events = -1;
        double end = Math.min(LAST_MINUTE, whole.moments().get(whole.moments().size() - 1));
        for (int tick = 0; tick * PaceEngine.TICK_MINUTES <= end; tick++) {
            double now = tick * PaceEngine.TICK_MINUTES;
            ClassTrack track = whole.asOf(now + 1e-9);
            int count = track.moments().size();
            looks.add(engine.looks(track, now, count == events));
            events = count;
            if (forecasts && tick > 0 && now % 5 == 0) {
                Forecast f = engine.forecast(track, now);
                csv.append(String.format(Locale.ROOT, "%s,%.0f,%.1f,%.1f,%.1f%n", made.truth().classId(), 60 * now,
                        60 * f.p10(), 60 * f.p50(), 60 * f.p90()));
            }
        }
        return new Played(made.truth(), looks, csv.toString(), priors.spread(whole));
    }

    /** The levels a rule would have shown, as rows of {@code class_id,seat,t,level}. */
    static void levels(Played played, AlarmBudget rule, StringBuilder csv) {
        int n = played.truth().seats();
        Map<Integer, PaceMemory.SeatMemory> memory = new HashMap<>();
        PacePriors.Rule here = rule.at(n, played.spread());
        for (int tick = 0; tick < played.looks().size(); tick++) {
            for (int i = 0; i < n; i++) {
                PaceMemory.SeatMemory before = memory.getOrDefault(i, PaceMemory.SeatMemory.NOTHING);
                PaceMemory.SeatMemory after = before.next(tick, played.looks().get(tick)[i], here);
                memory.put(i, after);
                if (after.level() != before.level()) {
                    csv.append(played.truth().classId()).append(',').append(i + 1).append(',').append(tick * 30)
                            .append(',').append(after.level().name().toLowerCase(Locale.ROOT)).append('\n');
                }
            }
        }
    }

    /** @param args how many classes of each kind; 40 if not given */
    public static void main(String[] args) throws IOException {
        int classes = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        for (int seats : new int[] {6, 8, 12, 24}) {
            for (ClassSimulator.Habit habit : List.of(ClassSimulator.Habit.USUAL, ClassSimulator.Habit.GAMMA,
                    ClassSimulator.Habit.BUNCHED, ClassSimulator.Habit.GAMMA_BUNCHED, ClassSimulator.Habit.LATE)) {
                for (boolean history : new boolean[] {false, true}) {
                    ReplayScore score = score(play(new Kind(seats, habit, 0.4, history), classes, 1, true),
                            AlarmBudget.STANDARD);
                    System.out.printf(Locale.ROOT, "%2d seats, history %-5s false %.2f, flags %.1f, missed %.2f, "
                            + "minutes to behind %.1f, to any %.1f, covered %.2f, pinball %.2f  %s%n", seats, history,
                            score.falseBehindPerClass(), score.flagsPerClass(), score.shareMissed(),
                            score.medianToBehind(), score.medianToAnyFlag(), score.coverage(),
                            score.pinballMinutes(), habit);
                }
            }
        }
    }

    public static ReplayScore score(List<Played> all, AlarmBudget rule) {
        StringBuilder flags = new StringBuilder("class_id,seat,t,level\n");
        StringBuilder forecasts = new StringBuilder("class_id,t,p10,p50,p90\n");
        for (Played played : all) {
            levels(played, rule, flags);
            forecasts.append(played.forecasts().substring(played.forecasts().indexOf('\n') + 1));
        }
        ReplayScore score = new ReplayScore(flags.toString(), forecasts.toString());
        all.forEach(p -> score.add(p.truth()));
        return score;
    }
}

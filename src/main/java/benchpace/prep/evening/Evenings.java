package benchpace.prep.evening;

import benchpace.cure.room.TrajectoryCache;
import benchpace.pace.forecast.Lots;
import benchpace.plan.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Simulated evenings of one setting: when each step, the last candle and the class were done on every one of them. */
public final class Evenings {
    /** As many as a timetable rests on unless somebody asks for fewer: a chance is then right to about one in 100. */
    public static final int USUAL = 2000;
    private static final int TOLD_EVERY = 50;

    private final Setting setting;
    private final long seed;
    private final CureBasis basis;
    /** [step][evening], minutes from the class's start. */
    private final double[][] ends;
    private final double[][] waits;
    private final double[] lastCandle;

    private Evenings(Setting setting, long seed, CureBasis basis, double[][] ends, double[][] waits,
                     double[] lastCandle) {
        this.setting = setting;
        this.seed = seed;
        this.basis = basis;
        this.ends = ends;
        this.waits = waits;
        this.lastCandle = lastCandle;
    }

    /** Told now and then how far a simulation is. */
    @FunctionalInterface
    public interface Progress {
        /** Nobody asks. */
        Progress UNTOLD = (done, of) -> { };

        /** @param done evenings so far, @param of all */
        void at(int done, int of);
    }

    /** The usual number of evenings, nobody told of the progress. */
    public static Evenings of(Setting setting, long seed) {
        return of(setting, seed, USUAL, new TrajectoryCache(), Progress.UNTOLD);
    }

    /**
     * Simulates.
     *
     * @param seed     the same gives the same evenings, and two settings the same chance
     * @param count    how many evenings, at least 1
     * @param cache    of candles solved; keep it for the next time
     * @param progress told every few evenings and at the end; what it throws ends the simulation
     */
    public static Evenings of(Setting setting, long seed, int count, TrajectoryCache cache, Progress progress) {
        if (count < 1) {
            throw new IllegalArgumentException(count + " evenings");
        }
        Cures cures = new Cures(setting, cache);
        Course course = new Course(setting, cures);
        int steps = setting.plan().steps().size();
        double[][] ends = new double[steps][count];
        double[][] waits = new double[steps][count];
        double[] lastCandle = new double[count];
        double[] end = new double[steps];
        double[] wait = new double[steps];
        for (int b = 0; b < count; b++) {
            lastCandle[b] = course.walk(new Lots(seed, b), end, wait);
            for (int k = 0; k < steps; k++) {
                ends[k][b] = end[k];
                waits[k][b] = wait[k];
            }
            if ((b + 1) % TOLD_EVERY == 0 || b + 1 == count) {
                progress.at(b + 1, count);
            }
        }
        return new Evenings(setting, seed, cures.basis(), ends, waits, lastCandle);
    }

    public Setting setting() {
        return setting;
    }

    /** How many. */
    public int count() {
        return lastCandle.length;
    }

    /** Being done by then, in minutes from the class's start. */
    public Chance doneBy(double minutes) {
        int done = 0;
        for (int b = 0; b < count(); b++) {
            done += done(b) <= minutes ? 1 : 0;
        }
        return Chance.of(done, count());
    }

    /** What they say of the promise of their setting. */
    public Timetable timetable() {
        List<Step> steps = setting.plan().steps();
        List<StepEnd> table = new ArrayList<>();
        for (int k = 0; k < steps.size(); k++) {
            Optional<Quantiles> wait = steps.get(k).stations().isPresent() ? Optional.of(Quantiles.of(waits[k]))
                    : Optional.empty();
            table.add(new StepEnd(steps.get(k).id(), Quantiles.of(ends[k]), wait));
        }
        return new Timetable(count(), setting.promisedMinutes(), doneBy(setting.promisedMinutes()), table,
                Quantiles.of(ends[ends.length - 1]),
                basis == CureBasis.NONE ? Optional.empty() : Optional.of(Quantiles.of(lastCandle)), basis);
    }

    /**
     * One of them that is neither quick nor slow: half of the others were done before it. Gone through once more.
     *
     * @param cache of candles solved, as for the evenings themselves
     */
    public TypicalEvening typical(TrajectoryCache cache) {
        int middle = IntStream.range(0, count()).boxed().sorted(Comparator.comparing(this::done)).toList()
                .get((count() - 1) / 2);
        int steps = setting.plan().steps().size();
        double[][] bySeat = new double[setting.seats()][steps];
        new Course(setting, new Cures(setting, cache)).walk(new Lots(seed, middle), new double[steps],
                new double[steps], (step, at) -> {
                    for (int seat = 0; seat < bySeat.length; seat++) {
                        bySeat[seat][step] = at[seat];
                    }
                });
        return new TypicalEvening(Arrays.stream(bySeat).map(ends -> Arrays.stream(ends).boxed().toList()).toList());
    }

    /** As many evenings of another setting, drawn with the same chance. */
    Evenings changed(Setting other, TrajectoryCache cache, Progress progress) {
        boolean promiseOnly = other.equals(setting.withPromisedMinutes(other.promisedMinutes()));
        if (promiseOnly) {
            progress.at(count(), count());
            return new Evenings(other, seed, basis, ends, waits, lastCandle);
        }
        return of(other, seed, count(), cache, progress);
    }

    /** Whether evening {@code b} kept the promise. */
    boolean onTime(int b) {
        return done(b) <= setting.promisedMinutes();
    }

    /** When the class was done on evening {@code b}, minutes from its start. */
    double done(int b) {
        return ends[ends.length - 1][b];
    }
}

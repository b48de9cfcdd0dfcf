package benchpace.bench;

import benchpace.cure.room.TrajectoryCache;
import benchpace.files.plan.PlanFile;
import benchpace.plan.Plan;
import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.Timetable;
import benchpace.prep.evening.WhatWouldHelp;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What 2,000 evenings of twelve steps cost on one core; run with {@code -Dbench=Evenings}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
public class EveningsBenchmark {
    @Param({"8", "40"})
    public int seats;

    private final TrajectoryCache cache = new TrajectoryCache();
    private Setting setting;
    private Evenings evenings;

    @Setup
    public void read() throws Exception {
        Plan plan = PlanFile.read(Path.of("demo-data/plans/evening-pour.json")).ifSound().orElseThrow();
        setting = Setting.of(plan, seats);
        evenings = Evenings.of(setting, 1, Evenings.USUAL, cache, Evenings.Progress.UNTOLD);
    }

    /** As somebody opens a sheet for the first time: the candle is solved, too. */
    @Benchmark
    public Timetable first() {
        return Evenings.of(setting, 1).timetable();
    }

    /** The same with the candle known. */
    @Benchmark
    public Timetable again() {
        return Evenings.of(setting, 1, Evenings.USUAL, cache, Evenings.Progress.UNTOLD).timetable();
    }

    /** All changes of the plan. */
    @Benchmark
    public List<Effect> whatWouldHelp() {
        return WhatWouldHelp.of(evenings, cache, Evenings.Progress.UNTOLD);
    }
}

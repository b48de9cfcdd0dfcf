package benchpace.bench;

import benchpace.files.log.ClassLog;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.TrackFold;
import benchpace.pace.ClassTrack;
import benchpace.pace.PaceView;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.ClassSimulator;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.pace.forecast.Forecast;
import java.io.StringReader;
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

/** What judging a class of 40 seats costs in the middle of the work; run with {@code -Dbench=PaceBenchmark}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PaceBenchmark {
    @Param({"8", "20"})
    public double minute;

    private final PaceEngine engine = new PaceEngine(PacePriors.standard());
    private ClassTrack track;
    private PaceMemory memory;
    private PaceMemory before;

    @Setup
    public void prepare() throws Exception {
        ClassSimulator.Simulated class40 = ClassSimulator.simulate("bench", 40, ClassSimulator.Habit.USUAL, 7);
        ClassLog log = ClassLogReader.read("bench", new StringReader(String.join("\n", class40.lines())));
        TrackFold fold = new TrackFold(log);
        log.events().forEach(fold::apply);
        track = fold.track().asOf(minute);
        memory = engine.remember(track, minute, PaceMemory.EMPTY);
        before = engine.remember(track, minute - 0.5, PaceMemory.EMPTY);
    }

    /** One half minute of the rule: every seat weighed, levels decided. */
    @Benchmark
    public PaceMemory evaluation() {
        return engine.remember(track, minute, before);
    }

    /** The whole view with reasons and prices. */
    @Benchmark
    public PaceView view() {
        return engine.judge(track, minute, memory);
    }

    /** Home time: a thousand draws. */
    @Benchmark
    public Forecast forecast() {
        return engine.forecast(track, minute);
    }
}

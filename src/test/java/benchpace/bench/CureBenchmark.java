package benchpace.bench;

import benchpace.cure.CoolingCase;
import benchpace.cure.CuringCandle;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.Evidence;
import benchpace.cure.room.OpenCases;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of the cooling model on one core: a case, a class of forty seats, its outlooks after a reading, a drawing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CureBenchmark {
    private static final int SEATS = 40;

    private final List<CoolingCase> cases = new ArrayList<>();
    private final TrajectoryCache warm = new TrajectoryCache();
    private int turn;

    @Setup
    public void fill() {
        OpenCases.all().forEach(open -> cases.add(open.c()));
        cases.forEach(warm::of);
    }

    private CuringCandle seat(int number) {
        return new CuringCandle("seat " + number, cases.get(number % cases.size()), true);
    }

    /** One case; the open cases in turn. */
    @Benchmark
    public CureMilestones oneCase() {
        turn = (turn + 1) % cases.size();
        return CureSolver.solve(cases.get(turn)).milestones();
    }

    /** Forty cases, one after another. */
    @Benchmark
    public List<CureMilestones> fortySeats() {
        List<CureMilestones> found = new ArrayList<>();
        for (int i = 0; i < SEATS; i++) {
            found.add(CureSolver.solve(cases.get(i % cases.size())).milestones());
        }
        return found;
    }

    /** A reading arrives: the room is refitted and the ranges of forty seats with twelve kinds of candle move. */
    @Benchmark
    public List<CureOutlook> fortySeatsAfterAReading() {
        Evidence reading = new Evidence.SurfaceReading(seat(3), 12, 55);
        RoomPosterior room = RoomPosterior.of(RoomFit.untaught(), List.of(reading), warm);
        List<CureOutlook> outlooks = new ArrayList<>();
        for (int i = 0; i < SEATS; i++) {
            outlooks.add(CureOutlook.of(seat(i), room, warm));
        }
        return outlooks;
    }

    /** The first candle of a kind is poured: its trajectories are solved and its range found. */
    @Benchmark
    public CureOutlook firstOfItsKind() {
        return CureOutlook.of(seat(0), RoomPosterior.of(RoomFit.untaught()), new TrajectoryCache());
    }

    /** An hour of sections, one a minute. */
    @Benchmark
    public List<CandleSection> anHourOfSections() {
        return CandleSection.everyMinute(cases.get(0), 0, 60);
    }
}

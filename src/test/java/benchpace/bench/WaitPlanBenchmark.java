package benchpace.bench;

import benchpace.breaks.ReadyRange;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.breaks.search.Evenings;
import benchpace.breaks.search.FirstComeFirstServed;
import benchpace.breaks.search.WaitPlanner;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

/**
 * Time to plan a wait for the first time, and to plan it again ten minutes later after one candle turned out four
 * minutes slower. Prints idle minutes beside first come, first served. Invented class; lengths are common practice.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 4, time = 2)
@Fork(1)
public class WaitPlanBenchmark {
    @Param({"8", "12", "40"})
    public int seats;

    @Param({"false", "true"})
    public boolean classBreak;

    private WaitProblem first;
    private WaitProblem again;

    @Setup
    public void makeProblems() {
        first = Evenings.usual(seats, classBreak);
        again = tenMinutesLater(first, WaitPlanner.plan(first));
        System.out.println(idleTable(first));
    }

    @Benchmark
    public WaitPlan firstPlan() {
        return WaitPlanner.plan(first);
    }

    @Benchmark
    public WaitPlan planAgain() {
        return WaitPlanner.plan(again);
    }

    /** The same class ten minutes on, with what the screens showed announced and one candle four minutes slower. */
    public static WaitProblem tenMinutesLater(WaitProblem before, WaitPlan plan) {
        List<SeatWait> seats = new ArrayList<>(before.seats());
        SeatWait slow = seats.get(seats.size() / 2);
        Instant p50 = slow.ready().p50().plusSeconds(240);
        seats.set(seats.size() / 2, SeatWait.of(slow.seat(), slow.freeFrom(),
                new ReadyRange(p50.minusSeconds(480), p50, p50.plusSeconds(660))));
        return new WaitProblem(before.now().plusSeconds(600), before.activities(), seats, Map.of(),
                before.promisedEnd(), plan, plan.announcedWithin(Duration.ofMinutes(15)));
    }

    /** Idle minutes, planned and first come, first served. */
    public static String idleTable(WaitProblem problem) {
        WaitPlan plan = WaitPlanner.plan(problem);
        WaitPlan queue = FirstComeFirstServed.plan(problem);
        int seats = problem.seats().size();
        return String.format("%d seats: idle minutes planned %d (%.1f a seat, most %d); first come, first served "
                + "%d (%.1f a seat, most %d)", seats, plan.idleMinutes(), plan.idleMinutes() / (double) seats,
                plan.longestIdleMinutes(), queue.idleMinutes(), queue.idleMinutes() / (double) seats,
                queue.longestIdleMinutes());
    }

    /** Prints the table of idle minutes without timing anything. */
    public static void main(String[] args) {
        for (int seats : new int[] {4, 6, 8, 12, 20, 40}) {
            for (boolean together : new boolean[] {false, true}) {
                WaitProblem problem = Evenings.usual(seats, together);
                System.out.println((together ? "with a class break, " : "own pace only, ") + idleTable(problem));
            }
        }
    }
}

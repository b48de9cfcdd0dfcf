package benchpace.bench;

import benchpace.board.Stories;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What the pace of a class costs the board, all of it: flags, prices, who is not ticked, home time. Two thirds of the
 * table have ticked each step; the others are slow, and flagged after a while.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
public class WatchBenchmark {
    private static final String CLASS = "bench";
    private static final Duration HALF_A_MINUTE = Duration.ofSeconds(30);
    private static final Duration SHORTLY = Duration.ofSeconds(10);

    /** A class, and the same with one tap more. */
    @State(Scope.Benchmark)
    public static class Table {
        @Param({"8", "24", "40"})
        public int seats;

        @Param({"start", "middle", "pouring"})
        public String moment;

        private LiveClass before;
        private LiveClass after;
        private Instant now;
        private Map<SeatNumber, CandleClock> clocks;
        private Map<SeatNumber, CandleClock> clocksAfter;

        @Setup
        public void play() {
            TestClass c = TestClass.of(Stories.plan(), seats);
            String next = switch (moment) {
                case "start" -> "vessel";
                case "middle" -> wicks(c);
                case "pouring" -> pour(c);
                default -> throw new IllegalArgumentException(moment);
            };
            double minute = Math.ceil(TestClass.minuteOf(c.now())) + 4;
            now = TestClass.instant(minute);
            before = c.live();
            after = c.minute(minute + 0.1).finish(seats, next).live();
            clocks = new PlanCureClock().clocks(before, now);
            clocksAfter = new PlanCureClock().clocks(after, now);
        }

        private String wicks(TestClass c) {
            tick(c, "vessel", 1, seats, 2);
            tick(c.minute(4).open("wicks"), "wicks", 1, 2 * seats / 3, 8);
            return "wicks";
        }

        private String pour(TestClass c) {
            wicks(c);
            tick(c, "wicks", 2 * seats / 3 + 1, seats, 11);
            tick(c.minute(14).open("mix"), "mix", 1, seats, 19);
            tick(c.minute(22).open("pour"), "pour", 1, 2 * seats / 3, 25);
            return "pour";
        }

        /** Those seats tick the step, each a few seconds after the one before. */
        private static void tick(TestClass c, String step, int from, int to, double minute) {
            for (int seat = from; seat <= to; seat++) {
                c.minute(minute + 0.04 * seat).finish(seat, step);
            }
        }
    }

    /** A board that has judged the class half a minute ago. */
    @State(Scope.Thread)
    public static class Board {
        private PosteriorPaceWatch watch;

        @Setup(Level.Invocation)
        public void judged(Table table) {
            watch = new PosteriorPaceWatch();
            watch.watch(CLASS, table.before, table.clocks, table.now);
        }
    }

    /** A board that has judged the class a moment ago, with or without the tap. */
    @State(Scope.Thread)
    public static class Watching {
        private final PosteriorPaceWatch watch = new PosteriorPaceWatch();
        private boolean tapped;
    }

    /** A tap has come, or was taken back, within the half minute. */
    @Benchmark
    public Pace tap(Table table, Watching board) {
        board.tapped = !board.tapped;
        return board.tapped
                ? board.watch.watch(CLASS, table.after, table.clocksAfter, table.now.plus(SHORTLY))
                : board.watch.watch(CLASS, table.before, table.clocks, table.now);
    }

    /** Nothing has come for half a minute. */
    @Benchmark
    public Pace clock(Table table, Board board) {
        return board.watch.watch(CLASS, table.before, table.clocks, table.now.plus(HALF_A_MINUTE));
    }
}

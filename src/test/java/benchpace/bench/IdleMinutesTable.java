package benchpace.bench;

import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.breaks.search.Evenings;
import benchpace.breaks.search.FirstComeFirstServed;
import benchpace.breaks.search.WaitPlanner;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.LongFunction;
import java.util.stream.LongStream;

/**
 * Prints, for random classes of each size, what planning leaves: minutes with nothing to do, labels and clean-ups
 * missed, class breaks without a time, and the milliseconds of the processor a plan takes. Asserts nothing.
 * {@code java -cp target/test-classes:target/classes:... benchpace.bench.IdleMinutesTable [classes]}
 */
public final class IdleMinutesTable {
    private static final int[] SIZES = {4, 6, 8, 12, 20, 40};

    private IdleMinutesTable() { }

    public static void main(String[] args) {
        int classes = args.length == 0 ? 40 : Integer.parseInt(args[0]);
        for (int seats : SIZES) {
            print("usual", seats, classes, seed -> Evenings.usual(seats, seed % 2 == 1, seed));
        }
        for (int seats : SIZES) {
            print("any", seats, classes, seed -> Evenings.random(seats, seed));
        }
    }

    private static void print(String kind, int seats, int classes, LongFunction<WaitProblem> problem) {
        List<WaitProblem> problems = LongStream.range(0, classes).mapToObj(problem).toList();
        problems.forEach(WaitPlanner::plan);
        long from = processorNanos();
        List<WaitPlan> plans = problems.stream().map(WaitPlanner::plan).toList();
        double milliseconds = (processorNanos() - from) / 1e6 / classes;
        int missed = 0;
        for (int n = 0; n < classes; n++) {
            missed += Evenings.missed(problems.get(n), plans.get(n));
        }
        System.out.printf("%-5s %2d seats: idle %6.2f a class, most of a seat %5.2f, missed %.2f, "
                + "breaks unplaced %.2f, first come %6.2f; %.1f ms%n", kind, seats,
                plans.stream().mapToInt(WaitPlan::idleMinutes).average().orElseThrow(),
                plans.stream().mapToInt(WaitPlan::longestIdleMinutes).average().orElseThrow(),
                missed / (double) classes, plans.stream().mapToInt(p -> p.unplaced().size()).average().orElseThrow(),
                problems.stream().map(FirstComeFirstServed::plan).mapToInt(WaitPlan::idleMinutes).average()
                        .orElseThrow(), milliseconds);
    }

    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}

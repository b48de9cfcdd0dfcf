package benchpace.bench;

import benchpace.bench.growth.PastClasses;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;

/**
 * How long the page of past classes and the start page take with as many of them as a busy studio has after years, how
 * long the board takes to open, and what a closed class weighs in memory; beside the same with few. Every class is the
 * recorded evening, each on a day of its own. Prints; asserts nothing. {@code java -cp
 * target/test-classes:target/classes:... benchpace.bench.HistoryBenchmark [many [few]]}
 */
public final class HistoryBenchmark {
    private static final int WARM = 8;
    private static final int ROUNDS = 25;

    private final Path folder;

    private HistoryBenchmark(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        int many = args.length == 0 ? 2000 : Integer.parseInt(args[0]);
        int few = args.length < 2 ? 20 : Integer.parseInt(args[1]);
        HistoryBenchmark benchmark = new HistoryBenchmark(Files.createTempDirectory("history"));
        PastClasses classes = new PastClasses(benchmark.folder);
        classes.first();
        classes.upTo(few);
        Measured small = benchmark.measured();
        classes.upTo(many);
        Measured large = benchmark.measured();
        System.out.printf("%-34s %10d %10d %8s%n", "closed classes", few, many, "ratio");
        row("/history, ms", small.history, large.history);
        row("/history of one plan, late, ms", small.chosen, large.chosen);
        row("/, ms", small.start, large.start);
        row("opening the board, ms", small.open, large.open);
        System.out.printf("a closed class in memory: %.1f kB%n", (large.bytes - small.bytes) / 1e3 / (many - few));
    }

    private static void row(String what, double few, double many) {
        System.out.printf("%-34s %10.1f %10.1f %8.1f%n", what, few, many, many / few);
    }

    /** @param history and the others: medians, ms @param bytes in use once all is open */
    private record Measured(double history, double chosen, double start, double open, long bytes) { }

    private Measured measured() {
        long from = System.nanoTime();
        try (TestBoard board = board()) {
            double open = (System.nanoTime() - from) / 1e6;
            long bytes = inUse();
            return new Measured(median(board, "/history"),
                    median(board, "/history?plan=evening-pour&kept=late"), median(board, "/"), open, bytes);
        }
    }

    private TestBoard board() {
        return new TestBoard(folder, InstantSource.system(), StreamLimits.USUAL);
    }

    private static double median(TestBoard board, String path) {
        double[] took = new double[ROUNDS];
        for (int round = -WARM; round < ROUNDS; round++) {
            long from = System.nanoTime();
            board.get(path, board.instructor()).ok();
            if (round >= 0) {
                took[round] = (System.nanoTime() - from) / 1e6;
            }
        }
        Arrays.sort(took);
        return took[ROUNDS / 2];
    }

    private static long inUse() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}

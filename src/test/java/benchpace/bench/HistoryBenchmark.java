package benchpace.bench;

import static org.awaitility.Awaitility.await;

import benchpace.files.roster.Demo;
import benchpace.history.PastClass.Standing;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;

/**
 * How long the page of past classes and the start page take with as many of them as a busy studio has after years, how
 * long the board takes to open, and what a closed class weighs in memory; beside the same with few. Every class is the
 * recorded evening, each on a day of its own. Prints; asserts nothing. {@code java -cp
 * target/test-classes:target/classes:... benchpace.bench.HistoryBenchmark [many [few]]}
 */
public final class HistoryBenchmark {
    private static final int WARM = 8;
    private static final int ROUNDS = 25;
    private static final long DAY_MILLIS = Duration.ofDays(1).toMillis();
    private static final String COPIED = "past-0";

    private final Path folder;

    private HistoryBenchmark(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        int many = args.length == 0 ? 2000 : Integer.parseInt(args[0]);
        int few = args.length < 2 ? 20 : Integer.parseInt(args[1]);
        HistoryBenchmark benchmark = new HistoryBenchmark(Files.createTempDirectory("history"));
        benchmark.first();
        benchmark.copies(1, few);
        Measured small = benchmark.measured();
        benchmark.copies(few, many);
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

    /** The recorded evening, and what it came to. */
    private void first() {
        List<Recorded> evening = Demo.recordedEvening();
        LiveClass live = LiveClass.of(evening);
        try (Database database = Database.open(folder)) {
            SqliteEventLog log = new SqliteEventLog(database);
            evening.forEach(recorded -> log.append(COPIED, recorded));
        }
        System.out.printf("an evening of %d seats and %d events%n", live.seats().size(), live.seq());
        long from = System.nanoTime();
        try (TestBoard board = board()) {
            await().pollInterval(Duration.ofMillis(20)).atMost(Duration.ofMinutes(5)).until(
                    () -> board.history().classes().get(0).standing() != Standing.TO_COME);
            System.out.printf("its figures, %s, made in the background %.1f s after the start%n",
                    board.history().classes().get(0).standing(),
                    (System.nanoTime() - from) / 1e9);
        }
    }

    /** The same with its figures, each a day before the last, up to so many. */
    private void copies(int from, int until) {
        String start = LiveClass.of(Demo.recordedEvening()).startsAt().toString();
        try (Database database = Database.open(folder)) {
            database.write(connection -> {
                for (int n = from; n < until; n++) {
                    long shift = n * DAY_MILLIS;
                    String began = Instant.parse(start).minusMillis(shift).toString();
                    Statements.change(connection, "insert into event (class_id, seq, command_id, type, by_whom, at_ms, "
                            + "recorded_ms, payload, device) select 'past-' || ?, seq, command_id, type, by_whom, "
                            + "at_ms - ?, recorded_ms - ?, replace(payload, ?, ?), device from event "
                            + "where class_id = '" + COPIED + "' order by seq", n, shift, shift, start, began);
                    Statements.change(connection, "insert into class_summary select 'past-' || ?, seq, reckoning, "
                            + "promised_ms - ?, ended_ms - ? + 60000 * (? % 11), planned_ready_ms - ?, ready_ms - ?, "
                            + "ready_by, idle_seats, idle_minutes + ? % 7, flags, flags_answered, answer_minutes, "
                            + "flags_wrong, cures, cures_in_range, cure_minutes from class_summary "
                            + "where class_id = '" + COPIED + "'", n, shift, shift, n, shift, shift, n);
                    Statements.change(connection, "insert into class_lost select 'past-' || ?, ordinal, cause, "
                            + "step_id, minutes from class_lost where class_id = '" + COPIED + "'", n);
                }
                return until - from;
            });
        }
    }
}

package benchpace.bench.growth;

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
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;

/**
 * Classes that are over, in a data folder: the recorded evening with what it came to, each on a day of its own, written
 * as the board itself writes them.
 */
public final class PastClasses {
    private static final long DAY_MILLIS = Duration.ofDays(1).toMillis();
    private static final String ID = "past-";

    private final Path folder;
    private int count;

    public PastClasses(Path folder) {
        this.folder = folder;
    }

    public static String id(int n) {
        return ID + n;
    }

    /** The recorded evening, and what it came to, as the board reckons it in the background. */
    public void first() {
        List<Recorded> evening = Demo.recordedEvening();
        LiveClass live = LiveClass.of(evening);
        try (Database database = Database.open(folder)) {
            SqliteEventLog log = new SqliteEventLog(database);
            evening.forEach(recorded -> log.append(id(0), recorded));
        }
        System.out.printf("a past class is an evening of %d seats and %d events%n", live.seats().size(), live.seq());
        long from = System.nanoTime();
        try (TestBoard board = new TestBoard(folder, InstantSource.system(), StreamLimits.USUAL)) {
            await().pollInterval(Duration.ofMillis(20)).atMost(Duration.ofMinutes(5)).until(
                    () -> board.history().classes().get(0).standing() != Standing.TO_COME);
            System.out.printf("its figures, %s, made in the background %.1f s after the start%n",
                    board.history().classes().get(0).standing(), (System.nanoTime() - from) / 1e9);
        }
        count = 1;
    }

    /** The same with its figures, each a day before the last, until there are so many. */
    public void upTo(int many) {
        String start = LiveClass.of(Demo.recordedEvening()).startsAt().toString();
        try (Database database = Database.open(folder)) {
            database.write(connection -> {
                for (int n = count; n < many; n++) {
                    long shift = n * DAY_MILLIS;
                    String began = Instant.parse(start).minusMillis(shift).toString();
                    Statements.change(connection, "insert into event (class_id, seq, command_id, type, by_whom, at_ms, "
                            + "recorded_ms, payload, device) select 'past-' || ?, seq, command_id, type, by_whom, "
                            + "at_ms - ?, recorded_ms - ?, replace(payload, ?, ?), device from event "
                            + "where class_id = 'past-0' order by seq", n, shift, shift, start, began);
                    Statements.change(connection, "insert into class_summary select 'past-' || ?, seq, reckoning, "
                            + "promised_ms - ?, ended_ms - ? + 60000 * (? % 11), planned_ready_ms - ?, ready_ms - ?, "
                            + "ready_by, idle_seats, idle_minutes + ? % 7, flags, flags_answered, answer_minutes, "
                            + "flags_wrong, cures, cures_in_range, cure_minutes from class_summary "
                            + "where class_id = 'past-0'", n, shift, shift, n, shift, shift, n);
                    Statements.change(connection, "insert into class_lost select 'past-' || ?, ordinal, cause, "
                            + "step_id, minutes from class_lost where class_id = 'past-0'", n);
                }
                return many - count;
            });
        }
        count = Math.max(count, many);
    }
}

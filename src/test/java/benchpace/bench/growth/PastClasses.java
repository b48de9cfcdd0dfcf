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
import java.sql.Connection;
import java.sql.SQLException;
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
    private static final String RECORDED = "recorded";
    /** So long ago the latest was held at least: what is over for less than a day is no past class to the board. */
    private static final long DAYS_AGO = 2;

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
        long days = DAYS_AGO + Math.max(0, Duration.between(Instant.now(), live.lastRecordedAt()).toDays() + 1);
        try (Database database = Database.open(folder)) {
            SqliteEventLog log = new SqliteEventLog(database);
            evening.forEach(recorded -> log.append(RECORDED, recorded));
            database.write(connection -> copy(connection, RECORDED, id(0), live.startsAt(), days * DAY_MILLIS));
            log.delete(RECORDED, Instant.now());
            log.erase(RECORDED);
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
        try (Database database = Database.open(folder)) {
            Instant start = LiveClass.of(new SqliteEventLog(database).read(id(0))).startsAt();
            database.write(connection -> {
                for (int n = count; n < many; n++) {
                    long shift = n * DAY_MILLIS;
                    copy(connection, id(0), id(n), start, shift);
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

    /** The same events of another class whole days earlier, and with them the times that they name. */
    private static int copy(Connection connection, String of, String id, Instant start, long earlierMillis)
            throws SQLException {
        return Statements.change(connection, "insert into event (class_id, seq, command_id, type, by_whom, at_ms, "
                + "recorded_ms, payload, device) select ?, seq, command_id, type, by_whom, at_ms - ?, "
                + "recorded_ms - ?, replace(payload, ?, ?), device from event where class_id = ? order by seq", id,
                earlierMillis, earlierMillis, date(start), date(start.minusMillis(earlierMillis)), of);
    }

    /** As the times of that day begin in JSON. */
    private static String date(Instant at) {
        return '"' + at.toString().substring(0, "2027-03-04T".length());
    }
}

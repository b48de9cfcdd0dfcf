package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.live.ClassEvent;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SqliteEventLogTest {
    @TempDir Path folder;
    private Database database;
    private SqliteEventLog log;

    @BeforeEach void open() {
        database = Database.open(folder);
        log = new SqliteEventLog(database);
    }

    @AfterEach void close() {
        database.close();
    }

    @Test void what_was_appended_is_read_back_equal_after_a_restart() {
        List<Recorded> events = List.of(ClassOfThree.created(),
                ClassOfThree.event(2, new ClassEvent.SeatArrived(new SeatNumber(3), "Zoë \"Z\" \uD83D\uDD6F")),
                ClassOfThree.event(3, new ClassEvent.TemperatureRead(new SeatNumber(3), 61.3)));
        events.forEach(e -> log.append("thursday", e));

        close();
        open();

        assertThat(log.read("thursday")).isEqualTo(events);
    }

    @Test void classes_are_listed_from_the_earliest_created() {
        Recorded first = ClassOfThree.created();
        log.append("b", first);
        log.append("a", new Recorded(1, "x", "instructor", first.at(), first.recordedAt().plusMillis(1),
                first.event()));
        log.append("b", ClassOfThree.note(2, "begun"));

        assertThat(log.classIds()).containsExactly("b", "a");
        assertThat(log.read("c")).isEmpty();
    }

    @Test void an_event_that_does_not_follow_the_last_is_refused() {
        log.append("a", ClassOfThree.created());

        assertThatThrownBy(() -> log.append("a", ClassOfThree.note(3, "gap"))).isInstanceOf(SeqTaken.class)
                .hasMessage("Event 3 of class a does not follow the last one in the store.");
        Recorded again = new Recorded(1, "another", "instructor", ClassOfThree.START, ClassOfThree.START,
                new ClassEvent.ClassClosed());
        assertThatThrownBy(() -> log.append("a", again)).isInstanceOf(SeqTaken.class);
        assertThat(log.read("a")).containsExactly(ClassOfThree.created());
    }

    @Test void a_command_counts_once_in_a_class_and_may_count_in_another() {
        log.append("a", ClassOfThree.created());
        log.append("b", ClassOfThree.created());
        Recorded twice = new Recorded(2, "command-1", "instructor", ClassOfThree.START, ClassOfThree.START,
                new ClassEvent.ClassClosed());

        assertThatThrownBy(() -> log.append("a", twice)).isInstanceOf(CommandTaken.class)
                .hasMessage("Command command-1 of class a is in the store already.");
        log.append("a", ClassOfThree.note(2, "goes on"));
        assertThat(log.read("a")).hasSize(2);
    }

    @Test void an_instant_finer_than_the_log_keeps_is_a_bug_of_the_caller() {
        Instant fine = ClassOfThree.START.plusNanos(1);

        assertThatThrownBy(() -> log.append("a", new Recorded(1, "c", "instructor", fine, fine,
                ClassOfThree.created().event()))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test void nobody_changes_or_removes_what_happened() {
        log.append("a", ClassOfThree.created());

        for (String sql : List.of("update event set by_whom = 'nobody'", "delete from event")) {
            assertThatThrownBy(() -> database.write(connection -> {
                try (Statement statement = connection.createStatement()) {
                    return statement.executeUpdate(sql);
                }
            })).isInstanceOf(StoreException.class).hasRootCauseMessage(
                    "[SQLITE_CONSTRAINT_TRIGGER] A RAISE function within a trigger fired, causing the SQL statement to "
                            + "abort (events are never " + (sql.startsWith("update") ? "changed)" : "removed)"));
        }
        assertThat(log.read("a")).containsExactly(ClassOfThree.created());
    }

    @Test void a_full_disk_keeps_nothing_half_and_the_next_append_works() {
        log.append("a", ClassOfThree.created());
        long pages = pragma("page_count");
        pragma("max_page_count = " + (pages + 2));
        List<Recorded> kept = new ArrayList<>(log.read("a"));

        assertThatThrownBy(() -> {
            while (kept.size() < 1_000) {
                Recorded next = ClassOfThree.note(kept.size() + 1, "x".repeat(500));
                log.append("a", next);
                kept.add(next);
            }
        }).isInstanceOf(StoreException.class).hasMessage("The disk of " + folder.resolve(Database.FILE)
                + " is full: nothing was written.");

        assertThat(log.read("a")).isEqualTo(kept);
        pragma("max_page_count = 1000000");
        Recorded next = ClassOfThree.note(kept.size() + 1, "there is room again");
        log.append("a", next);
        kept.add(next);
        close();
        open();
        assertThat(log.read("a")).isEqualTo(kept);
    }

    private long pragma(String pragma) {
        return database.write(connection -> {
            try (Statement statement = connection.createStatement();
                    var row = statement.executeQuery("pragma " + pragma)) {
                return row.getLong(1);
            }
        });
    }

    @Test void an_event_that_cannot_be_read_back_is_told_in_one_sentence() {
        log.append("a", ClassOfThree.created());
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate("insert into event values "
                        + "('a', 2, 'c', 'finish-step', 'instructor', 0, 0, '{\"seat\":1}', '')");
            }
        });

        assertThatThrownBy(() -> log.read("a")).isInstanceOf(StoreException.class)
                .hasMessage("Event 2 of class a cannot be read back: \"step\" is missing.");
    }

    @Test void what_would_not_be_read_back_as_it_is_is_never_written() {
        log.append("a", ClassOfThree.created());
        Instant now = ClassOfThree.START;
        Map<Recorded, String> unreadable = Map.of(
                ClassOfThree.note(2, "two\nlines"), "\"text\" holds a control character.",
                ClassOfThree.note(2, "x".repeat(501)), "\"text\" is longer than 500 characters.",
                ClassOfThree.note(2, "half \ud83d"), "it would be read back as something else.",
                ClassOfThree.event(2, new ClassEvent.TapRetimed(1, Instant.parse("1999-12-31T23:59:59Z"))),
                "\"to\" must lie between the years 2000 and 2199.",
                new Recorded(2, "c", "helper \udd6f", now, now, new ClassEvent.ClassClosed()),
                "it would be read back as something else.");

        unreadable.forEach((event, why) -> assertThatThrownBy(() -> log.append("a", event))
                .isInstanceOf(CannotBeKept.class).hasMessage("It cannot be kept: " + why));
        assertThat(log.read("a")).containsExactly(ClassOfThree.created());
        log.append("a", ClassOfThree.note(2, "goes on"));
    }

    @Test void readers_never_wait_for_a_writer_and_see_only_what_is_whole() throws Exception {
        log.append("a", ClassOfThree.created());

        List<Recorded> seen = database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                statement.executeUpdate("insert into event values ('a', 2, 'c', 'close', 'instructor', "
                        + "1804185000000, 1804185000000, '{}', '')");
            }
            return log.read("a");
        });

        assertThat(seen).hasSize(1);
        assertThat(log.read("a")).hasSize(2);
    }

    @Test void many_classes_are_written_at_once_by_many_threads() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Future<?>> runs = new ArrayList<>();
            for (int c = 0; c < 8; c++) {
                String classId = "class-" + c;
                runs.add(threads.submit(() -> {
                    log.append(classId, ClassOfThree.created());
                    for (int seq = 2; seq <= 25; seq++) {
                        log.append(classId, ClassOfThree.note(seq, classId));
                        assertThat(log.read(classId)).hasSize(seq);
                    }
                }));
            }
            for (Future<?> run : runs) {
                run.get();
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(log.classIds()).hasSize(8)
                .allSatisfy(id -> assertThat(log.read(id)).hasSize(25));
    }
}

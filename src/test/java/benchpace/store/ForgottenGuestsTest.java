package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.log.EventJson;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words of guests are gone from the bytes of every file, and from nowhere else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForgottenGuestsTest {
    private static final Instant NOW = Instant.parse("2027-04-04T09:00:00Z");
    private static final List<String> WORDS = List.of("Quillonia", "Zephyrinaé", "Tarrowmead party", "hazelnuttery",
            "left her scarf by the window", "Mirrabeth wanted oil");

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

    private static List<Recorded> evening() {
        SeatNumber one = new SeatNumber(1);
        List<ClassEvent> events = List.of(
                new ClassEvent.ClassCreated(ClassOfThree.PLAN, "Thursday", ClassOfThree.START, List.of(
                        new ClassEvent.Place(one, WORDS.get(0), WORDS.get(2), Optional.empty(), WORDS.get(3)))),
                new ClassEvent.SeatAdded(new ClassEvent.Place(new SeatNumber(2), WORDS.get(1), WORDS.get(2),
                        Optional.empty(), "")),
                new ClassEvent.SeatArrived(one, WORDS.get(1)), new ClassEvent.SeatNoted(one, WORDS.get(4)),
                new ClassEvent.ClassNoted(WORDS.get(5)),
                new ClassEvent.GuestCorrected(one, WORDS.get(0), WORDS.get(2), WORDS.get(3)),
                new ClassEvent.Undone(4), new ClassEvent.ClassClosed());
        List<Recorded> recorded = new ArrayList<>();
        events.forEach(event -> recorded.add(ClassOfThree.event(recorded.size() + 1L, event)));
        return recorded;
    }

    private static List<Recorded> nameless(List<Recorded> log) {
        return Nameless.ofGuests().all(log);
    }

    private void keep(String classId, List<Recorded> events) {
        events.forEach(event -> log.append(classId, event));
    }

    @Test void every_file_of_the_folder_holds_them_no_more_and_the_class_is_read_as_it_was() {
        keep("a", evening());
        assertThat(Remnants.of(folder, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());

        log.forgetGuests("a", new Forgotten(NOW, false), nameless(evening()));

        assertThat(log.read("a")).isEqualTo(nameless(evening()));
        assertThat(LiveClass.of(log.read("a")).closedAt()).isPresent();
        assertThat(log.forgotten()).containsExactly(Map.entry("a", new Forgotten(NOW, false)));
        FileSweep sweep = new FileSweep(database);
        assertThat(sweep.owed()).isTrue();
        assertThat(sweep.sweep()).isTrue();
        assertThat(sweep.owed()).isFalse();
        assertThat(Remnants.of(folder, WORDS)).isEmpty();
        database.close();
        assertThat(Remnants.of(folder, WORDS)).isEmpty();
        open();
        assertThat(log.read("a")).isEqualTo(nameless(evening()));
        assertThat(log.forgotten()).containsKey("a");
        assertThat(Remnants.of(folder, WORDS)).isEmpty();
    }

    @Test void a_board_that_ended_before_the_file_was_rewritten_still_owes_it() {
        keep("a", evening());
        log.forgetGuests("a", new Forgotten(NOW, true), nameless(evening()));
        database.close();
        open();

        assertThat(new FileSweep(database).owed()).isTrue();
        assertThat(new FileSweep(database).sweep()).isTrue();
        assertThat(Remnants.of(folder, WORDS)).isEmpty();
    }

    @Test void other_classes_keep_theirs() {
        keep("a", evening());
        keep("b", evening());
        log.forgetGuests("a", new Forgotten(NOW, false), nameless(evening()));
        new FileSweep(database).sweep();

        assertThat(log.read("b")).isEqualTo(evening());
        assertThat(Remnants.of(folder, WORDS)).hasSize(WORDS.size());
    }

    @Test void whoever_reads_meanwhile_holds_the_rewriting_up_and_loses_nothing() throws Exception {
        keep("a", evening());
        FileSweep sweep = new FileSweep(database);
        database.read(connection -> {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("select payload from event")) {
                row.next();
                log.forgetGuests("a", new Forgotten(NOW, false), nameless(evening()));
                assertThat(sweep.sweep()).isFalse();
                assertThat(sweep.owed()).isTrue();
            }
            return 0;
        });

        assertThat(sweep.sweep()).isTrue();
        assertThat(Remnants.of(folder, WORDS)).isEmpty();
    }

    @Test void words_erased_while_the_file_is_rewritten_are_owed_again() {
        FileSweep sweep = new FileSweep(database);
        database.write(ForgottenGuestsTest::owe);
        String before = new Settings(database).get("file.sweep-owed").orElseThrow();
        database.write(ForgottenGuestsTest::owe);

        assertThat(new Settings(database).get("file.sweep-owed")).isPresent().get().isNotEqualTo(before);
        assertThat(sweep.sweep()).isTrue();
        assertThat(sweep.owed()).isFalse();
    }

    private static int owe(Connection connection) throws SQLException {
        FileSweep.owe(connection);
        return 0;
    }

    @Test void nothing_but_the_words_of_a_forgotten_class_may_change() {
        keep("a", evening());
        assertThatThrownBy(() -> change("update event set payload = '{}' where seq = 3"))
                .isInstanceOf(StoreException.class);
        log.forgetGuests("a", new Forgotten(NOW, false), nameless(evening()));
        for (String change : List.of("seq = 30", "type = 'close'", "command_id = 'x'", "by_whom = 'x'", "at_ms = 1",
                "recorded_ms = 1", "device = 'x'", "class_id = 'b'")) {
            assertThatThrownBy(() -> change("update event set " + change + " where seq = 3")).as(change)
                    .isInstanceOf(StoreException.class);
        }
        assertThatThrownBy(() -> change("update event set payload = '{\"seq\":5}' where seq = 7"))
                .isInstanceOf(StoreException.class);
        assertThatThrownBy(() -> change("delete from event where seq = 3")).isInstanceOf(StoreException.class);
        assertThat(log.read("a")).isEqualTo(nameless(evening()));
    }

    private void change(String sql) {
        database.write(connection -> Statements.change(connection, sql));
    }

    @Test void those_events_bear_words_that_lose_some() {
        assertThat(evening().stream().map(Recorded::event)
                .filter(event -> !event.match(Nameless.ofGuests()).equals(event)).map(EventJson::type))
                .containsOnly("create", "arrive", "note", "add-seat", "correct-guest")
                .isSubsetOf(ForgottenGuests.WORDED);
        assertThat(EventJson.types()).containsAll(ForgottenGuests.WORDED);
    }

    @Test void a_class_that_is_erased_leaves_none_of_its_words_in_the_file() {
        keep("a", evening());
        log.delete("a", NOW);
        log.erase("a");
        assertThat(new FileSweep(database).sweep()).isTrue();

        assertThat(Remnants.of(folder, WORDS)).isEmpty();
        log.erase("a");
        assertThat(new FileSweep(database).owed()).as("nothing more was there").isFalse();
    }

    @Test void a_candle_that_is_erased_leaves_none_of_its_words_in_the_file() {
        ShelfLog shelf = new ShelfLog(database);
        EntryId first = new EntryId(1);
        shelf.append("1", List.of(new ShelfEvent.Placed(first, NOW, "a", new SeatNumber(1), new ShelfPlace("Window", 1),
                NOW, NOW, new ClaimWord("maple", 42), WORDS.get(0))));
        shelf.append("2", List.of(new ShelfEvent.Collected(first, NOW)));
        shelf.append("3", List.of(new ShelfEvent.Erased(first, NOW)));
        assertThat(new FileSweep(database).sweep()).isTrue();

        assertThat(Remnants.of(folder, WORDS)).isEmpty();
    }

    /** Pages keep bytes of rows that were moved to others: overwriting what is deleted does not reach those. */
    @Test void not_even_a_copy_on_a_page_that_a_row_has_left_is_found() {
        Random random = new Random(7);
        String name = "Quillonia-of-the-hills";
        for (int round = 0; round < 60; round++) {
            database.write(connection -> {
                for (int i = 0; i < 40; i++) {
                    String id = "c" + Integer.toString(random.nextInt(1 << 30), 36);
                    for (int seq = 1; seq <= 1 + random.nextInt(12); seq++) {
                        Statements.change(connection, "insert into event values (?, ?, ?, 'note', '', 0, 0, ?, '')",
                                id, seq, "n" + seq, "{\"text\":\"" + name + "x".repeat(random.nextInt(1500)) + "\"}");
                    }
                }
                return 0;
            });
        }
        int overwritten = database.write(connection -> {
            Statements.change(connection, "insert into forgotten_class select distinct class_id, 0, 0 from event");
            FileSweep.owe(connection);
            return Statements.change(connection, "update event set payload = '{\"text\":\"\"}'");
        });
        database.emptyWriteAheadLog();
        assertThat(overwritten).isGreaterThan(5_000);
        assertThat(Remnants.of(folder, List.of(name))).as("why the file is rewritten").isNotEmpty();

        assertThat(new FileSweep(database).sweep()).isTrue();

        assertThat(Remnants.of(folder, List.of(name))).isEmpty();
    }
}

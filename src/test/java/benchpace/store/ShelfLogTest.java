package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfArrangement;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfLayout;
import benchpace.shelf.ShelfPlace;
import benchpace.shelf.ShelfSettings;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShelfLogTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T20:00:00.123Z");
    private static final EntryId FIRST = new EntryId(1);
    private static final ShelfPlace WINDOW_3 = new ShelfPlace("Window", 3);
    private static final ShelfPlace WINDOW_4 = new ShelfPlace("Window", 4);

    @TempDir Path folder;
    private Database database;
    private ShelfLog log;

    @BeforeEach void open() {
        database = Database.open(folder);
        log = new ShelfLog(database);
    }

    @AfterEach void close() {
        database.close();
    }

    private static ShelfEvent.Placed placed(EntryId id, String word, int number, String name) {
        return new ShelfEvent.Placed(id, EVENING, "evening-x1", new SeatNumber(4), WINDOW_3,
                EVENING.plus(Duration.ofHours(2)), EVENING.plus(Duration.ofDays(14)), new ClaimWord(word, number),
                name);
    }

    private static List<ShelfEvent> everyKind() {
        return List.of(placed(FIRST, "maple", 42, "Ida"), new ShelfEvent.Moved(FIRST, EVENING.plusSeconds(1), WINDOW_4),
                new ShelfEvent.Collected(FIRST, EVENING.plusSeconds(2)),
                new ShelfEvent.CollectionUndone(FIRST, EVENING.plusSeconds(3), WINDOW_3),
                new ShelfEvent.TakenBack(FIRST, EVENING.plusSeconds(4)),
                new ShelfEvent.PutBack(FIRST, EVENING.plusSeconds(5), WINDOW_4),
                new ShelfEvent.Collected(FIRST, EVENING.plusSeconds(6)));
    }

    @Test void events_are_read_back_equal_also_after_a_restart() {
        int n = 0;
        for (ShelfEvent event : everyKind()) {
            log.append("c" + n++, List.of(event));
        }
        assertThat(log.read().events()).isEqualTo(everyKind());
        database.close();
        open();

        assertThat(log.read().events()).isEqualTo(everyKind());
        assertThat(Shelf.of(log.read().events()).entries()).singleElement()
                .satisfies(e -> assertThat(e.collected()).isTrue());
    }

    @Test void a_command_is_found_again_by_its_id() {
        log.append("tap-1", List.of(placed(FIRST, "maple", 42, "")));

        assertThat(log.eventOf("tap-1").map(ShelfEvent::entry)).contains(FIRST);
        assertThat(log.eventOf("tap-2")).isEmpty();
    }

    @Test void the_same_command_is_not_recorded_twice() {
        log.append("tap-1", List.of(placed(FIRST, "maple", 42, "")));

        assertThatThrownBy(() -> log.append("tap-1", List.of(new ShelfEvent.Collected(FIRST, EVENING))))
                .isInstanceOf(StoreException.class);
        assertThat(log.read().events()).hasSize(1);
    }

    @Test void erased_words_are_nowhere_in_the_folder_any_more() throws IOException {
        log.append("a", List.of(placed(FIRST, "umbrella", 42, "Melisande Quill")));
        log.append("b", List.of(placed(new EntryId(2), "thimble", 77, "Oswin Thrupp")));
        log.append("c", List.of(new ShelfEvent.Collected(FIRST, EVENING.plusSeconds(5))));
        assertThat(bytes()).contains("umbrella 42", "Melisande");

        log.append("d", List.of(new ShelfEvent.Erased(FIRST, EVENING.plus(Duration.ofDays(8)))));

        assertThat(bytes()).doesNotContain("umbrella", "Melisande", "Quill").contains("thimble 77", "Oswin Thrupp");
        assertThat(log.read().events()).first()
                .isEqualTo(placed(FIRST, "umbrella", 42, "Melisande Quill").withoutWords());
        assertThat(Shelf.of(log.read().events()).entry(FIRST)).get()
                .satisfies(e -> assertThat(e.collected() && e.erased()).as("the fact stays").isTrue());
    }

    @Test void a_candle_taken_back_loses_its_words_when_they_are_erased() throws IOException {
        log.append("a", List.of(placed(FIRST, "umbrella", 42, "Melisande Quill")));
        log.append("b", List.of(new ShelfEvent.TakenBack(FIRST, EVENING.plusSeconds(9))));
        assertThat(Shelf.of(log.read().events()).takenWords()).containsExactly(new ClaimWord("umbrella", 42));

        log.append("c", List.of(new ShelfEvent.Erased(FIRST, EVENING.plus(Duration.ofDays(8)))));

        assertThat(Shelf.of(log.read().events()).takenWords()).isEmpty();
        assertThat(bytes()).doesNotContain("umbrella", "Melisande");
        assertThat(Shelf.of(log.read().events()).entries()).isEmpty();
        assertThat(Shelf.of(log.read().events()).nextId()).as("no number is given twice").isEqualTo(new EntryId(2));
    }

    @Test void what_a_reader_held_in_the_write_ahead_log_goes_with_the_next_event() throws IOException {
        log.append("a", List.of(placed(FIRST, "umbrella", 42, "Melisande Quill")));
        log.append("b", List.of(new ShelfEvent.Collected(FIRST, EVENING.plusSeconds(5))));
        database.read(connection -> {
            try (Statement select = connection.createStatement();
                 java.sql.ResultSet rows = select.executeQuery("select seq from shelf_event")) {
                rows.next();
                log.append("c", List.of(new ShelfEvent.Erased(FIRST, EVENING.plus(Duration.ofDays(8)))));
                return rows.getLong(1);
            }
        });
        assertThat(log.read().events()).as("written although the log could not be emptied").hasSize(3);

        log.append("d", List.of(placed(new EntryId(2), "thimble", 77, "")));

        assertThat(bytes()).doesNotContain("umbrella", "Melisande");
    }

    private String bytes() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("benchpace.db")).toList()) {
                all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    @Test void what_would_not_be_read_back_as_it_is_is_never_written() {
        ShelfEvent sound = placed(FIRST, "maple", 42, "Ida");
        for (ShelfEvent unreadable : List.of(placed(new EntryId(2), "maple", 43, "half \ud83d"),
                new ShelfEvent.Moved(FIRST, EVENING, new ShelfPlace("Window", 201)),
                new ShelfEvent.Moved(FIRST, EVENING, new ShelfPlace("W".repeat(31), 1)),
                new ShelfEvent.Collected(FIRST, EVENING.plusNanos(1)))) {
            assertThatThrownBy(() -> log.append("a", List.of(sound, unreadable))).isInstanceOf(CannotBeKept.class)
                    .hasMessageStartingWith("It cannot be kept: ");
        }
        assertThat(log.read().events()).isEmpty();
        assertThat(log.eventOf("a")).isEmpty();
    }

    @Test void a_row_is_never_changed_but_to_erase_words_nor_removed() {
        log.append("a", List.of(placed(FIRST, "maple", 42, "Ida")));
        log.append("b", List.of(new ShelfEvent.Collected(FIRST, EVENING.plusSeconds(5))));

        List<String> wrong = new ArrayList<>(List.of("delete from shelf_event",
                "update shelf_event set at_ms = 1 where seq = 1", "update shelf_event set entry = 2 where seq = 1",
                "update shelf_event set payload = '{}' where seq = 2",
                "update shelf_event set payload = '{\"claim\":\"birch 99\"}' where seq = 1",
                "insert into shelf_event values (9, 'z', 1, 'collect', 1, '{}')"));
        for (String sql : wrong) {
            assertThatThrownBy(() -> run(sql)).as(sql).isInstanceOf(StoreException.class);
        }
        assertThat(log.read().events()).hasSize(2);
    }

    private void run(String sql) {
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(sql);
            } catch (SQLException e) {
                throw new StoreException("refused", e);
            }
        });
    }

    @Test void what_the_shop_arranged_is_remembered() {
        ShelfArrangements arrangements = new ShelfArrangements(new Settings(database));
        assertThat(arrangements.get()).isEqualTo(ShelfArrangement.STANDARD);
        ShelfArrangement own = new ShelfArrangement(new ShelfLayout(List.of(new ShelfLayout.Board("Window", 5))),
                new ShelfSettings(Duration.ofMinutes(45), Duration.ofDays(10), Duration.ofDays(3)));
        arrangements.put(own);
        database.close();
        open();

        assertThat(new ShelfArrangements(new Settings(database)).get()).isEqualTo(own);
    }
}

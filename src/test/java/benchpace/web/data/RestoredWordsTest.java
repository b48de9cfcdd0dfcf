package benchpace.web.data;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfPlace;
import benchpace.store.Remnants;
import benchpace.store.backup.Backup;
import benchpace.store.backup.Progress;
import benchpace.store.backup.Restore;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup holds words whose days are over by the time that it is restored. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestoredWordsTest {
    private static final List<String> WORDS = List.of("Quillonia", "Velvetscarfe", "Brackenwick");
    private static final EntryId FIRST = new EntryId(1);

    @TempDir Path temp;
    private TestBoard board;
    private Path restored;

    @BeforeEach void restore() {
        board = TestBoard.open(temp.resolve("data"));
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":2,\"name\":\"Thursday\",\"names\":[\""
                + WORDS.get(0) + "\"]}");
        board.tap(id, TestBoard.command("note").put("text", WORDS.get(1))).ok();
        board.shelf().submit("put", e -> true, s -> Optional.empty(), (rules, s, now) -> rules.put(s, id,
                new SeatNumber(1), new ShelfPlace("Upper", 3), now, new ClaimWord("umbrella", 42), WORDS.get(2), now));
        board.shelf().submit("collect", e -> true, s -> Optional.empty(), (rules, s, now) ->
                rules.collect(s, FIRST, true, now));
        board.tap(id, TestBoard.command("close")).ok();
        board.put("/api/settings/forget-guests", "{\"days\":30}", board.instructor()).ok();
        Path backup = temp.resolve("b.backup");
        Path data = temp.resolve("data");
        board.goAway();
        new Backup(data, "Benchpace").make(backup, false, board.clock.instant(), Progress.UNHEARD);
        board.testClock().advance(Duration.ofDays(31));
        restored = temp.resolve("restored");
        new Restore(restored).from(backup, false, Progress.UNHEARD);
        board.comeBack();
        assertThat(Remnants.of(data, WORDS)).as("where it was not restored").isEmpty();
        assertThat(Remnants.of(restored, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());
    }

    @AfterEach void close() {
        board.close();
    }

    @Test void none_of_them_is_in_any_byte_by_the_time_that_the_first_page_is_served() {
        try (TestBoard again = new TestBoard(restored, board.clock, StreamLimits.USUAL)) {
            assertThat(Remnants.of(restored, WORDS)).isEmpty();
            assertThat(again.get("/data", again.instructor()).ok().body())
                    .contains("are forgotten already.").doesNotContain("it is tried again");
        }
        assertThat(Remnants.of(restored, WORDS)).isEmpty();
    }

    @Test void what_cannot_be_erased_is_told_on_the_page_of_the_data_until_it_can() throws Exception {
        sql("create trigger full before insert on forgotten_class begin select raise(abort, 'disk full'); end");
        try (TestBoard again = new TestBoard(restored, board.clock, StreamLimits.USUAL)) {
            assertThat(again.get("/data", again.instructor()).ok().body())
                    .contains("The guests of classes that are over that are due to be erased cannot be");
            assertThat(Remnants.of(restored, WORDS.subList(2, 3))).as("candles all the same").isEmpty();
            sql("drop trigger full");
            again.testClock().advance(Duration.ofMinutes(2));
            again.erasing().look();

            assertThat(again.get("/data", again.instructor()).ok().body()).doesNotContain("cannot be; it is tried");
            again.testClock().advance(Duration.ofHours(1));
            again.erasing().look();
            assertThat(Remnants.of(restored, WORDS)).isEmpty();
        }
    }

    private void sql(String text) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + restored.resolve("benchpace.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(text);
        }
    }
}

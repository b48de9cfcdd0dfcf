package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.time.SettableClocks;
import benchpace.board.time.SteadyClock;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfPlace;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody opens a page here: time alone passes. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ErasingTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T20:00:00Z");
    private static final EntryId FIRST = new EntryId(1);

    @TempDir Path data;
    private final SettableClocks computer = new SettableClocks(EVENING, true);
    private SteadyClock clock;
    private Database database;
    private ShelfBoard shelf;

    @BeforeEach void open() {
        database = Database.open(data);
        clock = computer.start();
        shelf = ShelfBoard.open(database, clock);
    }

    @AfterEach void close() {
        database.close();
    }

    private Erasing erasing() {
        return new Erasing(clock, List.of(new Erasing.Part("words of candles that left the shelf", shelf::eraseDue)));
    }

    /** Put on the shelf for somebody called Melisande, and handed out. */
    private void collected() {
        shelf.submit("put", e -> true, s -> Optional.empty(), (rules, s, now) -> rules.put(s, "evening-x1",
                new SeatNumber(4), new ShelfPlace("Upper", 3), now, new ClaimWord("umbrella", 42), "Melisande", now));
        shelf.submit("collect", e -> true, s -> Optional.empty(), (rules, s, now) ->
                rules.collect(s, FIRST, true, now));
    }

    private boolean wordsAreKept() {
        return !shelf.shelf().entry(FIRST).orElseThrow().erased();
    }

    private String bytes() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(data)) {
            for (Path file : files.toList()) {
                all.append(Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    private void sql(String text) {
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(text);
            }
        });
    }

    private void storeTakesNoErasure() {
        sql("create temp trigger full before insert on shelf_event when new.type = 'erase' "
                + "begin select raise(abort, 'disk full'); end");
    }

    private void storeTakesThemAgain() {
        sql("drop trigger full");
    }

    @Test void words_go_within_the_hour_after_their_days_are_over() throws IOException {
        collected();
        try (Erasing erasing = erasing()) {
            computer.pass(Duration.ofDays(7).minusMinutes(30));
            erasing.look();
            assertThat(wordsAreKept()).isTrue();

            computer.passMinutes(59);
            erasing.look();
            assertThat(wordsAreKept()).as("it looks every hour").isTrue();
            computer.passMinutes(1);
            erasing.look();

            assertThat(wordsAreKept()).isFalse();
            assertThat(bytes()).doesNotContain("umbrella", "Melisande");
            assertThat(erasing.failing()).isEmpty();
        }
    }

    @Test void it_looks_by_itself() {
        collected();
        try (Erasing erasing = erasing()) {
            computer.pass(Duration.ofDays(8));

            await().atMost(Duration.ofSeconds(30)).until(() -> !wordsAreKept());
            assertThat(erasing.failing()).isEmpty();
        }
    }

    @Test void what_is_due_at_a_start_goes_at_once() {
        collected();
        computer.pass(Duration.ofDays(8));
        close();
        open();
        assertThat(wordsAreKept()).as("opening the shelf alone changes nothing").isTrue();

        erasing().close();

        assertThat(wordsAreKept()).isFalse();
    }

    @Test void a_write_that_fails_once_is_told_and_made_good_within_minutes() throws IOException {
        collected();
        computer.pass(Duration.ofDays(8));
        storeTakesNoErasure();
        try (WatchedLog log = new WatchedLog(Erasing.class.getName()); Erasing erasing = erasing()) {
            assertThat(wordsAreKept()).isTrue();
            assertThat(erasing.failing()).containsExactly("words of candles that left the shelf");
            storeTakesThemAgain();
            erasing.look();
            assertThat(wordsAreKept()).as("not at once: a store that is ill is not pressed").isTrue();

            computer.pass(Erasing.FIRST_WAIT);
            erasing.look();

            assertThat(wordsAreKept()).isFalse();
            assertThat(bytes()).doesNotContain("umbrella", "Melisande");
            assertThat(erasing.failing()).isEmpty();
            assertThat(log.records()).hasSize(1);
        }
    }

    @Test void what_goes_on_failing_is_tried_after_longer_and_longer_and_told_once() {
        AtomicInteger tried = new AtomicInteger();
        AtomicInteger sound = new AtomicInteger();
        try (WatchedLog log = new WatchedLog(Erasing.class.getName());
                Erasing erasing = new Erasing(clock, List.of(new Erasing.Part("words of one kind", () -> {
                    tried.incrementAndGet();
                    throw new StoreException("The disk is full.");
                }), new Erasing.Part("words of another kind", sound::incrementAndGet)))) {
            for (int minute = 1; minute <= 240; minute++) {
                computer.passMinutes(1);
                erasing.look();
            }

            assertThat(tried).as("at 0, 1, 3, 7, 15, 31, 63, and then every hour").hasValue(9);
            assertThat(sound).as("at 0, 60, 120, 180, 240").hasValue(5);
            assertThat(log.records()).hasSize(1);
            assertThat(erasing.failing()).containsExactly("words of one kind");
        }
    }

    @Test void nothing_is_erased_by_a_clock_in_doubt() {
        collected();
        try (Erasing erasing = erasing()) {
            computer.jump(Duration.ofDays(30));
            clock.instant();
            computer.passMinutes(61);
            erasing.look();
            assertThat(wordsAreKept()).isTrue();

            clock.follow();
            computer.passMinutes(61);
            erasing.look();
            assertThat(wordsAreKept()).as("somebody said that it is right").isFalse();
        }
    }
}

package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.time.SettableClocks;
import benchpace.board.time.SteadyClock;
import benchpace.files.roster.Demo;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.backup.BackupFile;
import benchpace.store.backup.Progress;
import benchpace.store.sqlite.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The backup that a page asks for: one at a time, there to be fetched for a while, and then gone. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BackupsTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T20:00:00Z");
    private static final String NAME = "benchpace-2027-03-04-2100.backup";
    private static final String WORD = "Quillonesque";

    @TempDir Path data;
    private final SettableClocks computer = new SettableClocks(EVENING, true);
    private Database database;
    private Settings settings;
    private Backups backups;

    @BeforeEach void open() {
        database = Database.open(data);
        settings = new Settings(database);
        SqliteEventLog log = new SqliteEventLog(database);
        Demo.recordedEvening().forEach(event -> log.append("evening", event));
        backups = opened();
    }

    private Backups opened() {
        SteadyClock clock = computer.start();
        return new Backups(data, settings, clock, ZoneId.of("Europe/Berlin"), "0.1.0");
    }

    @AfterEach void close() {
        backups.close();
        database.close();
    }

    private Path outgoing() {
        return data.resolve("outgoing.backup");
    }

    private Backups.State.Ready made() {
        backups.start();
        await().atMost(Duration.ofSeconds(60)).until(() -> !(backups.state() instanceof Backups.State.Making));
        return (Backups.State.Ready) backups.state();
    }

    @Test void one_is_made_when_asked_for_and_remembered() {
        assertThat(backups.state()).isInstanceOf(Backups.State.Idle.class);
        assertThat(backups.last()).isEmpty();

        Backups.State.Ready ready = made();

        assertThat(ready.name()).isEqualTo(NAME);
        assertThat(BackupFile.check(outgoing(), Progress.UNHEARD)).isEqualTo(ready.made().manifest());
        assertThat(backups.last()).contains(EVENING);
    }

    @Test void it_is_given_under_its_own_name_alone() {
        made();

        assertThat(backups.ready(NAME)).contains(outgoing());
        assertThat(backups.ready("benchpace.db")).isEmpty();
        assertThat(backups.ready("../" + NAME)).isEmpty();
    }

    @Test void asked_for_while_one_is_made_no_second_one_is_begun() {
        backups.start();
        assertThat(backups.state()).isInstanceOf(Backups.State.Making.class);
        for (int again = 0; again < 20; again++) {
            backups.start();
        }
        assertThat(Thread.getAllStackTraces().keySet().stream().filter(Thread::isAlive)
                .filter(thread -> thread.getName().equals("board-backup"))).hasSize(1);
        assertThat(made().name()).isEqualTo(NAME);
    }

    @Test void it_is_there_for_ten_minutes_of_the_boards_life_whatever_its_clock_is_set_to() {
        made();

        computer.jump(Duration.ofDays(3));
        assertThat(backups.state()).isInstanceOf(Backups.State.Ready.class);
        computer.pass(Backups.FETCHABLE.plusMillis(1));

        assertThat(backups.state()).isInstanceOf(Backups.State.Idle.class);
        assertThat(backups.ready(NAME)).isEmpty();
        assertThat(outgoing()).doesNotExist();
    }

    @Test void one_that_still_has_words_that_were_erased_goes_at_once() throws IOException {
        settings.put("word", WORD);
        made();
        assertThat(bytes()).contains(WORD);

        settings.remove("word");
        backups.discard();

        assertThat(backups.state()).isInstanceOf(Backups.State.Idle.class);
        assertThat(outgoing()).doesNotExist();
    }

    @Test void one_under_way_while_words_are_erased_is_begun_anew_without_them() throws IOException {
        settings.put("word", WORD);
        backups.start();
        settings.remove("word");
        backups.discard();

        await().atMost(Duration.ofSeconds(60)).until(() -> backups.state() instanceof Backups.State.Ready);

        assertThat(bytes()).doesNotContain(WORD).contains("Tomasz");
    }

    private String bytes() throws IOException {
        return Files.readString(outgoing(), StandardCharsets.ISO_8859_1);
    }

    @Test void that_it_could_not_be_made_is_told_in_a_sentence_and_it_can_be_tried_again() throws IOException {
        Files.createDirectory(outgoing());
        backups.start();
        await().atMost(Duration.ofSeconds(60)).until(() -> backups.state() instanceof Backups.State.Failed);

        assertThat(((Backups.State.Failed) backups.state()).why()).contains("There is a folder at").endsWith(".");
        assertThat(backups.last()).isEmpty();

        Files.delete(outgoing());
        assertThat(made().name()).isEqualTo(NAME);
    }

    @Test void what_a_board_that_was_killed_left_is_gone_at_the_next_start_and_what_is_hers_stays() throws IOException {
        Files.writeString(outgoing(), "whole");
        Path draft = Files.createDirectory(data.resolve("benchpace-00000000-0000-0000-0000-000000000001.part"));
        Files.createFile(draft.resolve("lock"));
        Files.writeString(draft.resolve("draft"), "half");
        Files.writeString(data.resolve("hers.backup"), "hers");
        Files.createDirectory(data.resolve("replaced-1"));
        Files.createDirectory(data.resolve("kept-2"));

        opened().close();

        assertThat(outgoing()).doesNotExist();
        assertThat(draft).doesNotExist();
        assertThat(data.resolve("hers.backup")).hasContent("hers");
        assertThat(backups.kept()).containsExactly("kept-2", "replaced-1");
    }

    @Test void closed_while_one_is_made_it_leaves_nothing_and_makes_no_more() {
        long before = backups.size();
        assertThat(before).isGreaterThan(50_000);
        backups.start();
        backups.close();

        assertThat(data.toFile().list()).noneMatch(name -> name.contains("outgoing") || name.endsWith(".part"));
        backups.start();
        assertThat(backups.state()).isNotInstanceOf(Backups.State.Making.class);
        assertThat(outgoing()).doesNotExist();
    }
}

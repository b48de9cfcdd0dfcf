package benchpace.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.store.Deeds;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class BackupTest extends BackedUp {
    // ---- whole

    @Test void what_is_restored_is_the_original_row_by_row_and_lets_nobody_in() {
        Path data = data();
        List<String> original = StoredFolder.rows(data);
        assertThat(StoredFolder.waysIn(data)).as("ways in before").isPositive();

        Backup.Made made = made(data);
        restored(made.file(), temp.resolve("new"), false);

        assertThat(StoredFolder.rows(temp.resolve("new"))).isEqualTo(original);
        assertThat(original).anyMatch(row -> row.startsWith("deleted_class|"))
                .anyMatch(row -> row.startsWith("saved_plan|")).anyMatch(row -> row.startsWith("prep_tick|"))
                .anyMatch(row -> row.startsWith("room_lesson|")).anyMatch(row -> row.startsWith("step_belief|"))
                .anyMatch(row -> row.startsWith("shelf_event|")).anyMatch(row -> row.startsWith("setting|"));
        assertThat(StoredFolder.waysIn(temp.resolve("new"))).isZero();
    }

    @Test void every_event_is_read_back_by_the_boards_own_reader_equal_to_the_original() {
        Path data = data();
        made(data);
        restored(temp.resolve("b.backup"), temp.resolve("new"), false);

        try (Database before = Database.open(data); Database after = Database.open(temp.resolve("new"))) {
            SqliteEventLog original = new SqliteEventLog(before);
            SqliteEventLog restored = new SqliteEventLog(after);
            assertThat(restored.classIds()).isEqualTo(original.classIds()).isNotEmpty();
            assertThat(restored.deleted()).isEqualTo(original.deleted());
            original.classIds().forEach(id -> assertThat(restored.read(id)).isEqualTo(original.read(id)));
        }
    }

    @Test void it_counts_what_it_holds_and_remembers_when_and_by_which_program_it_was_made() {
        Manifest manifest = made(data()).manifest();

        assertThat(manifest.program()).isEqualTo("0.1.0");
        assertThat(manifest.made()).isEqualTo(NOW);
        assertThat(manifest.holdings().classes()).isEqualTo(4);
        assertThat(manifest.holdings().deleted()).isEqualTo(1);
        assertThat(manifest.holdings().events()).isGreaterThan(20);
        assertThat(manifest.holdings().plans()).isEqualTo(1);
        assertThat(manifest.holdings().shelf()).isEqualTo(68);
        assertThat(manifest.holdings().unreadable()).isZero();
        assertThat(BackupFile.check(temp.resolve("b.backup"), Progress.UNHEARD)).isEqualTo(manifest);
    }

    @Test void a_store_knows_after_restoring_when_its_backup_was_made() {
        made(data());
        restored(temp.resolve("b.backup"), temp.resolve("new"), false);

        try (Database database = Database.open(temp.resolve("new"))) {
            assertThat(new LastBackup(new Settings(database)).at()).contains(NOW);
        }
    }

    @Test void nothing_that_was_erased_or_lets_somebody_in_stands_in_the_bytes_of_the_file() throws IOException {
        Path data = data();
        try (Database database = Database.open(data)) {
            new Settings(database).put("helper-key", "key-of-an-older-board");
            new Sessions(database).create("token", "helper", "Zaphira", NOW);
            new Settings(database).put("word", "Quillon");
            new Settings(database).remove("word");
        }

        String bytes = Files.readString(made(data).file(), StandardCharsets.ISO_8859_1);

        assertThat(bytes).doesNotContain("key-of-an-older-board", "Zaphira", "Quillon").contains("note 189");
    }

    @Test void it_is_one_file_that_its_owner_alone_may_read() throws IOException {
        Path data = data();
        Path made = made(data).file();

        assertThat(Files.getPosixFilePermissions(made))
                .isEqualTo(EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE));
        assertThat(StoredFolder.names(temp)).containsExactly("b.backup", "data");
    }

    @Test void its_name_tells_when_it_was_made_by_the_clock_on_the_wall() {
        assertThat(Backup.suggestedName(NOW, ZoneId.of("Europe/Berlin"))).isEqualTo("benchpace-2027-03-05-1000.backup");
    }

    @Test void a_class_that_cannot_be_read_is_in_it_as_it_is_and_is_counted() throws Exception {
        Path data = data();
        sql(data.resolve("benchpace.db"), "drop trigger event_is_only_changed_to_forget; "
                + "update event set payload = '{' where class_id = 'class-1' and seq = 2");
        List<String> original = StoredFolder.rows(data);

        Backup.Made made = made(data);
        restored(made.file(), temp.resolve("new"), false);

        assertThat(made.manifest().holdings().unreadable()).isEqualTo(1);
        assertThat(StoredFolder.rows(temp.resolve("new"))).isEqualTo(original);
    }

    @Test void what_other_programs_made_in_the_store_stays_behind_and_what_was_lost_of_its_rules_is_back()
            throws Exception {
        Path data = data();
        sql(data.resolve("benchpace.db"), "create table bread (loaf text); create view v as select 1; "
                + "create trigger t after insert on setting begin delete from event; end; "
                + "drop trigger event_is_only_changed_to_forget");

        restored(made(data).file(), temp.resolve("new"), false);

        assertThatThrownBy(() -> sql(temp.resolve("new/benchpace.db"), "update event set type = 'note'"))
                .hasMessageContaining("events are never changed");
        try (Database database = Database.open(temp.resolve("new"))) {
            assertThat(Deeds.rows(database)).noneMatch(row -> row.startsWith("bread"));
        }
    }

    // ---- refusals of making one

    private void assertNotMade(Path data, Path target, String... words) {
        List<String> before = StoredFolder.names(temp);
        assertThatThrownBy(() -> new Backup(data, "0.1.0").make(target, false, NOW, Progress.UNHEARD))
                .isInstanceOf(StoreException.class).message().contains(words).endsWith(".").doesNotContain("SQLITE");
        assertThat(StoredFolder.names(temp)).isEqualTo(before);
    }

    @Test void no_file_is_written_over_unasked() throws IOException {
        Path data = data();
        Path target = Files.writeString(temp.resolve("mine.txt"), "mine");

        assertNotMade(data, target, "There is a file", "--replace");
        assertThat(target).hasContent("mine");

        new Backup(data, "0.1.0").make(target, true, NOW, Progress.UNHEARD);
        assertThat(BackupFile.check(target, Progress.UNHEARD).made()).isEqualTo(NOW);
    }

    @Test void a_missing_folder_a_folder_in_its_place_and_a_folder_without_data_are_told() throws IOException {
        Path data = data();
        assertNotMade(data, temp.resolve("unplugged/b.backup"), "There is no folder", "unplugged");
        assertNotMade(data, data, "There is a folder at");
        Files.createDirectory(temp.resolve("empty"));
        assertNotMade(temp.resolve("empty"), temp.resolve("b.backup"), "no data of a board");
        assertThat(temp.resolve("empty")).isEmptyDirectory();
    }

    @Test void none_takes_the_place_of_the_data_that_it_is_made_of_or_of_what_a_start_would_take_for_them()
            throws IOException {
        Path data = data();
        Files.createDirectory(data.resolve("plans"));
        Path link = Files.createSymbolicLink(temp.resolve("link"), data);
        List<String> rows = StoredFolder.rows(data);
        for (Path target : List.of(data.resolve("benchpace.db"), data.resolve("restored.db"), data.resolve("new"),
                data.resolve("plans/ours.json"), link.resolve("benchpace.db"), temp.resolve("data/../data/x"))) {
            assertThatThrownBy(() -> new Backup(data, "0.1.0").make(target, true, NOW, Progress.UNHEARD))
                    .as(target.toString()).isInstanceOf(NotAsked.class).hasMessageContaining("among the data");
        }
        assertThat(StoredFolder.rows(data)).isEqualTo(rows);
        assertThat(data.resolve("restored.db")).doesNotExist();

        new Backup(data, "0.1.0").make(data.resolve("hers.backup"), true, NOW, Progress.UNHEARD);
        restored(data.resolve("hers.backup"), temp.resolve("new"), false);
        assertThat(StoredFolder.rows(temp.resolve("new"))).isEqualTo(rows);
    }

    @Test void what_is_no_file_is_not_replaced() throws Exception {
        Path pipe = temp.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();

        assertThatThrownBy(() -> new Backup(data(), "0.1.0").make(pipe, true, NOW, Progress.UNHEARD))
                .isInstanceOf(NotAsked.class).hasMessageContaining("is no file that could be replaced");

        assertThat(Files.readAttributes(pipe, BasicFileAttributes.class).isOther()).isTrue();
    }

    @Test void a_store_of_a_newer_board_or_of_another_program_or_of_damaged_bytes_is_not_copied() throws Exception {
        Path data = data();
        sql(data.resolve("benchpace.db"), "pragma user_version = 99");
        assertNotMade(data, temp.resolve("b.backup"), "newer Benchpace");
        sql(data.resolve("benchpace.db"), "pragma user_version = 0");
        assertNotMade(data, temp.resolve("b.backup"), "another program");
        byte[] bytes = Files.readAllBytes(data.resolve("benchpace.db"));
        Arrays.fill(bytes, 4096, bytes.length, (byte) 0);
        Files.write(data.resolve("benchpace.db"), bytes);
        assertNotMade(data, temp.resolve("b.backup"), "is damaged");
    }

    @Test void one_that_is_given_up_leaves_nothing() {
        Path data = data();
        AtomicBoolean reading = new AtomicBoolean();
        Progress givesUp = new Progress() {
            @Override public void at(Stage stage, long done, long of) {
                reading.set(stage == Stage.READING);
            }

            @Override public boolean stopped() {
                return reading.get();
            }
        };

        assertThatThrownBy(() -> new Backup(data, "0.1.0").make(temp.resolve("b.backup"), false, NOW, givesUp))
                .isInstanceOf(StoreException.class).hasMessageContaining("given up");

        assertThat(StoredFolder.names(temp)).containsExactly("data");
    }

    // ---- older data

    @Test void data_of_an_older_board_are_copied_as_they_are_and_brought_up_to_date_when_they_are_restored()
            throws Exception {
        Path data = Files.createDirectory(temp.resolve("data"));
        OlderStore.write(data.resolve("benchpace.db"), 6);

        Backup.Made made = made(data);

        assertThat(made.manifest().schema()).isEqualTo(6);
        assertThat(made.manifest().holdings().events()).isEqualTo(2);
        assertThat(OlderStore.version(data.resolve("benchpace.db"))).as("the folder is not changed").isEqualTo(6);
        restored(made.file(), temp.resolve("new"), false);
        assertThat(StoredFolder.rows(temp.resolve("new"))).isEqualTo(StoredFolder.rows(data));
        assertThat(StoredFolder.names(temp)).containsExactly("b.backup", "data", "new");
    }

    @Test void damaged_records_beside_the_store_are_told_and_left_as_they_are() throws Exception {
        Path data = StoredFolder.filled(temp.resolve("data"), 30);
        Files.writeString(data.resolve("benchpace.db-wal"), "noise that no board wrote".repeat(9));

        assertThat(made(data).told()).hasValueSatisfying(told -> assertThat(told).contains("newest taps"));
        assertThat(data.resolve("benchpace.db-wal")).hasContent("noise that no board wrote".repeat(9));
    }

    // ---- while a class runs

    @Test void taps_go_on_while_one_is_made_and_it_holds_the_log_as_it_stood_in_one_moment() throws Exception {
        Path data = StoredFolder.filled(temp.resolve("data"), 2000);
        Path template = copy(data, temp.resolve("template"));
        try (Database database = Database.open(data)) {
            Deeds deeds = new Deeds(database);
            AtomicBoolean on = new AtomicBoolean(true);
            AtomicReference<Throwable> failed = new AtomicReference<>();
            Thread tapping = new Thread(() -> {
                try {
                    for (int number = 2000; on.get(); number++) {
                        deeds.doThe(number);
                    }
                } catch (Throwable e) {
                    failed.set(e);
                }
            }, "tapping");
            tapping.start();
            try {
                for (int round = 0; round < 5; round++) {
                    made(data, "b" + round);
                }
            } finally {
                on.set(false);
                tapping.join();
            }
            assertThat(failed.get()).isNull();
            for (int round = 0; round < 5; round++) {
                Path folder = temp.resolve("new" + round);
                restored(temp.resolve("b" + round), folder, false);
                assertMoment(StoredFolder.rows(folder), copy(template, temp.resolve("model" + round)));
            }
        }
    }

    private static Path copy(Path folder, Path to) throws IOException {
        Files.createDirectory(to);
        Files.copy(folder.resolve("benchpace.db"), to.resolve("benchpace.db"));
        return to;
    }

    /** The deeds are done in order, each in one transaction: a moment is the state after some number of them. */
    private static void assertMoment(List<String> rows, Path model) {
        try (Database database = Database.open(model)) {
            Deeds deeds = new Deeds(database);
            int number = 2000;
            while (!withoutWaysIn(Deeds.rows(database)).equals(rows) && number < 20_000) {
                deeds.doThe(number++);
            }
            assertThat(withoutWaysIn(Deeds.rows(database))).isEqualTo(rows);
        }
    }

    private static List<String> withoutWaysIn(List<String> rows) {
        return rows.stream().filter(row -> BackupFile.WAYS_IN.stream().noneMatch(t -> row.startsWith(t + "|")))
                .toList();
    }
}

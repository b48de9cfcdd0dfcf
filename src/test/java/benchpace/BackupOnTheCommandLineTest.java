package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.Settings;
import benchpace.store.backup.LastBackup;
import benchpace.store.sqlite.Database;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BackupOnTheCommandLineTest {
    private static final String PIN = "2468";
    /** Blocks of 512 bytes: enough to unpack SQLite, less than the store takes. */
    private static final int BLOCKS = 2_400;

    @TempDir Path temp;

    private String path(String name) {
        return temp.resolve(name).toString();
    }

    private static void assertFails(Program program, int code, String... words) throws Exception {
        assertThat(program.exitCode()).as(program.err()).isEqualTo(code);
        assertThat(program.err().lines()).as("one sentence").hasSize(1);
        assertThat(program.err()).contains(words).doesNotContain("Exception", "\tat ", "SQLITE");
        assertThat(program.out()).isEmpty();
    }

    @Test void a_running_boards_data_are_copied_and_restored_elsewhere_but_not_into_its_own_folder()
            throws Exception {
        try (Program board = Program.serve(temp.resolve("data"), 0, PIN)) {
            PairedDevice device = new PairedDevice();
            device.pair(board, PIN);
            String id = device.create(board);
            try (Program backup = Program.run("backup", temp.toString(), "--data", path("data"))) {
                assertThat(backup.exitCode()).as(backup.err()).isZero();
                assertThat(backup.out()).contains("Backup made: ", "1 class with 1 event", "read back whole");
            }
            Path made;
            try (Stream<Path> files = Files.list(temp)) {
                made = files.filter(file -> file.toString().endsWith(".backup")).findFirst().orElseThrow();
            }
            try (Program own = Program.run("restore", made.toString(), "--data", path("data"), "--replace")) {
                assertFails(own, 1, "in use by another running Benchpace");
            }
            try (Program other = Program.run("restore", made.toString(), "--data", path("new"))) {
                assertThat(other.exitCode()).as(other.err()).isZero();
                assertThat(other.out()).contains("Restored into", "Devices have to be paired again");
            }
            try (Program restored = Program.serve(temp.resolve("new"), 0, PIN)) {
                assertThat(device.ask(restored, "/api/classes/" + id, "").statusCode()).as("an old token")
                        .isEqualTo(401);
                device.pair(restored, PIN);
                assertThat(device.ask(restored, "/api/classes/" + id, "").statusCode()).isEqualTo(200);
            }
        }
    }

    @Test void a_disk_that_is_full_is_told_and_no_half_file_is_left() throws Exception {
        try (Database database = Database.open(temp.resolve("data"))) {
            new Settings(database).put("long", "x".repeat(3_000_000));
        }
        try (Program backup = Program.within("ulimit -S -f " + BLOCKS, List.of(), "backup", path("b.backup"), "--data",
                path("data"))) {
            assertFails(backup, 1, "The disk of", "nothing was written");
        }
        assertThat(temp.toFile().list()).containsExactly("data");
        assertThat(Program.run("backup", path("b.backup"), "--data", path("data")).exitCode()).isZero();
        try (Program restore = Program.within("ulimit -S -f " + BLOCKS, List.of(), "restore", path("b.backup"),
                "--data", path("new"))) {
            assertFails(restore, 1, "The disk of", "nothing was written");
        }
        assertThat(temp.toFile().list()).containsExactlyInAnyOrder("data", "b.backup");
    }

    @Test void a_backup_that_standard_output_did_not_take_is_told_and_not_taken_for_made() throws Exception {
        try (Database database = Database.open(temp.resolve("data"))) {
            new Settings(database).put("long", "x".repeat(100_000));
        }
        try (Program backup = Program.within("exec >/dev/full", List.of(), "backup", "-", "--data", path("data"))) {
            assertFails(backup, 1, "standard output takes no more");
        }
        try (Database database = Database.open(temp.resolve("data"))) {
            assertThat(new LastBackup(new Settings(database)).at()).isEmpty();
        }
    }

    @Test void what_cannot_be_meant_is_bad_input_in_one_sentence() throws Exception {
        try (Program none = Program.run("backup", path("b.backup"), "--data", path("none"))) {
            assertFails(none, 2, "There are no data of a board in");
        }
        try (Program letter = Program.run("restore", Files.writeString(temp.resolve("letter"), "Dear Ida").toString(),
                "--data", path("new"))) {
            assertFails(letter, 2, "is no backup of Benchpace");
        }
        assertThat(temp.resolve("new")).doesNotExist();
    }
}

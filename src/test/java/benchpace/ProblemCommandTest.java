package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.Settings;
import benchpace.store.backup.OlderStore;
import benchpace.store.sqlite.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One file without names, from the command line: written whole or not at all, and over nothing. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProblemCommandTest {
    @TempDir Path folder;

    private Path data() throws IOException {
        return DataFolder.filled(folder.resolve("data"), false).folder();
    }

    private Path file() {
        return folder.resolve("report.zip");
    }

    /** All that is in the file, by name and text. */
    private static List<String> texts(Path file) throws IOException {
        List<String> texts = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                texts.add(entry.getName() + "\n"
                        + new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private void assertFails(int code, String sentence, String... arguments) throws Exception {
        try (Program program = Program.run(arguments)) {
            assertThat(program.exitCode()).as(program.err()).isEqualTo(code);
            assertThat(program.err().lines()).as("one sentence").hasSize(1);
            assertThat(program.err()).contains(sentence).doesNotContain("Exception");
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString())).as("no half file")
                    .noneMatch(name -> name.endsWith(".part"));
        }
    }

    @Test void a_stopped_board_is_reported_without_names() throws Exception {
        Path data = data();
        try (Program program = Program.run("report-problem", file().toString(), "--data", data.toString())) {
            assertThat(program.exitCode()).as(program.err()).isZero();
            assertThat(program.out()).contains("Written to " + file(), "Nothing was sent");
        }

        List<String> texts = texts(file());
        assertThat(texts).hasSize(7);
        assertThat(String.join("", texts)).contains("Check of the store: ok", "Board: not running", "guest 1")
                .doesNotContain("Thursday", "Friday", "Tallow", "note 2", "evening-pour", data.toString());
    }

    @Test void one_class_can_be_chosen_and_one_that_is_not_there_is_told() throws Exception {
        Path data = data();
        try (Program program = Program.run("report-problem", file().toString(), "--data", data.toString(), "--class",
                "evening-pour-two")) {
            assertThat(program.exitCode()).as(program.err()).isZero();
        }
        assertThat(texts(file())).hasSize(5);
        assertFails(2, "no class \"nobody\"", "report-problem", folder.resolve("other.zip").toString(), "--data",
                data.toString(), "--class", "nobody");
        assertThat(folder.resolve("other.zip")).doesNotExist();
    }

    @Test void nothing_is_written_over_and_what_is_not_there_is_told() throws Exception {
        Path data = data();
        Files.writeString(file(), "hers");

        assertFails(2, "is there already", "report-problem", file().toString(), "--data", data.toString());
        assertThat(file()).hasContent("hers");
        assertFails(2, "There are no data of a board in", "report-problem", folder.resolve("a.zip").toString(),
                "--data", folder.resolve("nowhere").toString());
        assertThat(folder.resolve("nowhere")).doesNotExist();
        assertFails(2, "FILE must not be empty", "report-problem", " ", "--data", data.toString());
        assertFails(1, "cannot be written", "report-problem", folder.resolve("no/such/a.zip").toString(), "--data",
                data.toString());
        assertFails(2, "--data", "report-problem", file().toString());
    }

    @Test void a_disk_that_is_full_is_told() throws Exception {
        try (Program program = Program.within("exec >/dev/full", List.of(), "report-problem", "-", "--data",
                data().toString())) {
            assertThat(program.exitCode()).isEqualTo(1);
            assertThat(program.err()).contains("cannot be written", "nothing was left of it").hasLineCount(1);
        }
    }

    @Test void data_that_cannot_be_opened_are_reported_as_such() throws Exception {
        Path data = data();
        Files.writeString(data.resolve("benchpace.db"), "no database at all, only words ".repeat(200));
        try (Program program = Program.run("report-problem", file().toString(), "--data", data.toString())) {
            assertThat(program.exitCode()).as(program.err()).isZero();
        }
        assertThat(String.join("", texts(file()))).contains("The store cannot be opened: The file …")
                .doesNotContain(folder.toString());
    }

    @Test void beside_a_board_that_runs_it_is_made_of_all_up_to_the_last_tap_and_the_board_goes_on() throws Exception {
        Path data = data();
        try (Program board = Program.serve(data, 0, "2468")) {
            PairedDevice device = new PairedDevice();
            device.pair(board, "2468");
            String id = device.create(board);
            try (Program program = Program.run("report-problem", file().toString(), "--data", data.toString(),
                    "--class", id)) {
                assertThat(program.exitCode()).as(program.err()).isZero();
            }
            assertThat(device.ask(board, "/api/classes/" + device.create(board), "").statusCode()).isEqualTo(200);
        }
        assertThat(String.join("", texts(file()))).contains("Board: running; its data were read beside it",
                "Check of the store: ok", "classes/class-1.jsonl", "known to the board alone",
                "What the board noted is known to it alone").doesNotContain("Tallow", "not known of a board");
    }

    @Test void data_of_an_older_board_are_read_in_a_copy_and_not_a_byte_of_them_is_changed() throws Exception {
        Path data = Files.createDirectory(folder.resolve("data"));
        OlderStore.write(data.resolve(Database.FILE), 6);
        byte[] before = Files.readAllBytes(data.resolve(Database.FILE));
        try (Program program = Program.run("report-problem", file().toString(), "--data", data.toString())) {
            assertThat(program.exitCode()).as(program.err()).isZero();
        }
        assertThat(String.join("", texts(file()))).contains("Store: 6\n", "2 events of the class of",
                "Board: not running");
        assertThat(Files.readAllBytes(data.resolve(Database.FILE))).isEqualTo(before);
        assertThat(data).isDirectoryNotContaining(file -> file.endsWith("benchpace.lock"));
    }

    @Test void no_room_for_the_copy_is_told_and_not_taken_for_a_fault_of_the_data() throws Exception {
        Path data = data();
        try (Database database = Database.open(data)) {
            new Settings(database).put("long", "x".repeat(3_000_000));
        }
        try (Program program = Program.within("ulimit -S -f 2400", List.of(), "report-problem", file().toString(),
                "--data", data.toString())) {
            assertThat(program.exitCode()).isEqualTo(1);
            assertThat(program.err()).contains("The disk of", "draft").hasLineCount(1);
        }
        assertThat(file()).doesNotExist();
    }
}

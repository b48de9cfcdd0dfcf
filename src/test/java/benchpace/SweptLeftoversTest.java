package benchpace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.roster.Demo;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a command that was killed leaves has guests' names in it: whoever comes next takes it away. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SweptLeftoversTest {
    private static final String ID = "evening-tallow";

    @TempDir Path folder;
    private Path data;
    private Path temporary;
    private Path disk;

    @BeforeEach void keep() throws IOException {
        data = folder.resolve("data");
        temporary = Files.createDirectory(folder.resolve("temporary"));
        disk = Files.createDirectory(folder.resolve("disk"));
        try (Database database = Database.open(data)) {
            SqliteEventLog log = new SqliteEventLog(database);
            Demo.recordedEvening().forEach(event -> log.append(ID, event));
        }
    }

    private Program program(String... arguments) throws IOException {
        return Program.with(List.of("-Djava.io.tmpdir=" + temporary), arguments);
    }

    private void done(String... arguments) throws Exception {
        try (Program program = program(arguments)) {
            assertThat(program.exitCode()).as(program.err()).isZero();
        }
    }

    private static List<Path> drafts(Path where) {
        try (Stream<Path> files = Files.list(where)) {
            return files.filter(file -> file.getFileName().toString().matches("benchpace-.*\\.part")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where it was just at work on a copy that is whole. */
    private void killedExport() throws Exception {
        try (Program export = program("export", ID, "--data", data.toString())) {
            await().pollInterval(Duration.ofMillis(2)).atMost(Duration.ofSeconds(60)).until(() -> drafts(temporary)
                    .stream().map(draft -> draft.resolve("draft").toFile().length()).anyMatch(bytes -> bytes > 50_000));
            export.kill();
        }
    }

    /** The same in another folder. */
    private void left(Path left, Path where) throws IOException {
        Path copy = Files.createDirectory(where.resolve("benchpace-" + UUID.randomUUID() + ".part"));
        for (String name : List.of("lock", "draft")) {
            Files.copy(left.resolve(name), copy.resolve(name));
        }
    }

    @Test void a_killed_export_leaves_what_its_owner_alone_may_look_into_and_every_command_that_copies_sweeps_it()
            throws Exception {
        killedExport();
        assertThat(drafts(temporary)).hasSize(1);
        Path left = drafts(temporary).get(0);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(left))).isEqualTo("rwx------");
        Path kept = Files.move(left, folder.resolve("kept"));

        for (List<String> command : List.of(List.of("export", ID), List.of("backup", disk.resolve("b").toString()),
                List.of("backup", "-"), List.of("report-problem", disk.resolve("p.zip").toString()))) {
            left(kept, temporary);
            done(Stream.concat(command.stream(), Stream.of("--data", data.toString())).toArray(String[]::new));
            assertThat(drafts(temporary)).as(command.get(0)).isEmpty();
        }
    }

    @Test void where_a_backup_or_the_file_of_a_problem_goes_what_an_earlier_one_left_is_swept() throws Exception {
        killedExport();
        Path kept = Files.move(drafts(temporary).get(0), folder.resolve("kept"));
        left(kept, disk);
        done("backup", disk.resolve("b").toString(), "--data", data.toString());
        assertThat(drafts(disk)).isEmpty();

        left(kept, disk);
        done("report-problem", disk.resolve("p.zip").toString(), "--data", data.toString());
        assertThat(drafts(disk)).isEmpty();
        assertThat(disk).isDirectoryContaining(file -> file.endsWith("b")).isDirectoryContaining(file ->
                file.endsWith("p.zip"));
    }

    @Test void a_start_of_the_board_sweeps_its_own_folder_and_that_for_temporary_files() throws Exception {
        killedExport();
        left(drafts(temporary).get(0), data);
        try (Program board = program("serve", "--host", "127.0.0.1", "--port", "0", "--data", data.toString(),
                "--no-demo")) {
            assertThat(board.port()).isPositive();
            assertThat(drafts(temporary)).isEmpty();
            assertThat(drafts(data)).isEmpty();
        }
    }
}

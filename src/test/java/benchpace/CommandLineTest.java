package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starting and stopping from a terminal: what is printed, one plain sentence when it fails, and the exit code. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CommandLineTest {
    @TempDir Path folder;

    private static void assertFails(int code, String sentence, String... arguments) throws Exception {
        try (Program program = Program.run(arguments)) {
            assertThat(program.exitCode()).as(program.err()).isEqualTo(code);
            assertThat(program.err().lines()).as("one sentence").hasSize(1);
            assertThat(program.err()).contains(sentence)
                    .doesNotContain("Exception", "\tat ", "benchpace.web", "benchpace.Main");
            assertThat(program.out()).isEmpty();
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    // ---- starting

    @Test void a_free_port_is_taken_and_printed_with_the_links() throws Exception {
        try (Program program = Program.run("serve", "--port", "0", "--data", data(), "--pin", "2468")) {
            int port = program.port();

            HttpURLConnection health = (HttpURLConnection) program.uri("/health").toURL().openConnection();
            assertThat(port).isPositive();
            assertThat(health.getResponseCode()).isEqualTo(200);
            org.awaitility.Awaitility.await().until(() -> program.out().contains("Ctrl-C"));
            assertThat(program.out()).contains("#key=", "#helper=", "PIN 2468", "/wall", "█");
            assertThat(program.err()).isEmpty();
        }
    }

    @Test void a_port_that_is_taken_is_told() throws Exception {
        try (ServerSocket taken = new ServerSocket(0)) {
            assertFails(1, "Port " + taken.getLocalPort() + " is taken", "serve", "--port", "" + taken.getLocalPort(),
                    "--data", data());
        }
    }

    @Test void an_address_that_is_not_this_machines_is_told() throws Exception {
        assertFails(1, "203.0.113.7", "serve", "--port", "0", "--data", data(), "--host", "203.0.113.7");
    }

    @Test void a_host_that_is_no_address_is_told() throws Exception {
        assertFails(1, "no-such-host.invalid", "serve", "--port", "0", "--data", data(), "--host",
                "no-such-host.invalid");
    }

    @Test void a_data_folder_that_cannot_be_made_is_told() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");

        assertFails(2, file.toString(), "serve", "--port", "0", "--data", file.toString());
        assertFails(1, file.toString(), "serve", "--port", "0", "--data", file.resolve("below").toString());
    }

    @Test void a_data_folder_in_use_is_told() throws Exception {
        try (Program first = Program.serve(Path.of(data()), 0, "2468")) {
            assertThat(first.port()).isPositive();
            assertFails(1, "in use", "serve", "--port", "0", "--data", data());
        }
    }

    @Test void a_file_that_is_no_database_is_told() throws Exception {
        Path data = Files.createDirectories(Path.of(data()));
        Files.writeString(data.resolve("benchpace.db"), "this is no database at all, but long enough to be read as one."
                .repeat(50));

        assertFails(1, "benchpace.db", "serve", "--port", "0", "--data", data());
    }

    @Test void a_plan_of_the_organiser_that_is_not_sound_is_told_with_its_place() throws Exception {
        Path plans = Files.createDirectories(Path.of(data(), "plans"));
        Files.writeString(plans.resolve("broken.json"), "{\"id\":\"broken\",\"name\":\"Broken\",\"seats\":0}");

        assertFails(2, "broken.json", "serve", "--port", "0", "--data", data());

        Files.writeString(plans.resolve("broken.json"), "{\"id\":");
        assertFails(2, "broken.json", "serve", "--port", "0", "--data", data());
    }

    @Test void wrong_options_are_told() throws Exception {
        assertFails(2, "--port", "serve", "--port", "70000", "--data", data());
        assertFails(2, "--port", "serve", "--port", "http", "--data", data());
        assertFails(2, "--pin", "serve", "--pin", "1", "--data", data());
        for (String nothing : List.of("", "two\nlines")) {
            assertFails(2, "--host", "serve", "--host", nothing);
            assertFails(2, "--data", "serve", "--data", nothing);
        }
        assertFails(2, "--host-name", "serve", "--host-name", " ");
        assertFails(2, "--nonsense", "serve", "--nonsense");
        assertFails(2, "juggle", "juggle");
    }

    // ---- stopping

    private void assertStopsCleanly(Program program, boolean interrupt) throws Exception {
        try (Socket screen = new Socket("127.0.0.1", program.port())) {
            screen.getOutputStream().write("GET / HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(
                    StandardCharsets.US_ASCII));
            screen.getInputStream().read();
            if (interrupt) {
                program.interrupt();
            } else {
                program.terminate();
            }
            // 128 + the signal's number, as shells tell it (POSIX.1-2017, XCU 2.8.2)
            assertThat(program.exitCode()).isIn(0, 130, 143);
        }
        assertThat(program.err()).isEmpty();
    }

    @Test void it_stops_when_asked_to_although_a_browser_is_connected() throws Exception {
        try (Program program = Program.serve(Path.of(data()), 0, "2468")) {
            assertStopsCleanly(program, false);
        }
        try (Program again = Program.serve(Path.of(data()), 0, "2468")) {
            assertThat(again.err()).isEmpty();
        }
    }

    @Test void it_stops_on_ctrl_c() throws Exception {
        try (Program program = Program.serve(Path.of(data()), 0, "2468")) {
            assertStopsCleanly(program, true);
        }
    }

    // ---- a temporary folder that cannot be used

    @Test void without_room_for_temporary_files_it_unpacks_what_it_needs_beside_the_data() throws Exception {
        try (Program program = Program.with(List.of("-Djava.io.tmpdir=" + folder.resolve("none")), "serve", "--port",
                "0", "--data", data(), "--no-demo")) {
            assertThat(program.port()).isPositive();
            assertThat(program.err()).isEmpty();
        }
    }

    @Test void without_any_folder_to_unpack_into_it_says_which_and_what_to_do() throws Exception {
        Path data = Files.createDirectories(Path.of(data()));
        Path full = Files.createDirectories(folder.resolve("full"));
        // two blocks: no file longer than 1 KiB may be written
        try (Program program = Program.within("ulimit -f 2", List.of("-Djava.io.tmpdir=" + full), "serve", "--port",
                "0", "--data", data.toString())) {
            assertThat(program.exitCode()).as(program.err()).isEqualTo(1);
            assertThat(program.err().lines()).hasSize(1);
            assertThat(program.err()).contains(full.toString(), data.toString(), "-Dorg.sqlite.tmpdir=FOLDER");
        }
    }

    // ---- check

    @Test void a_file_of_any_size_takes_no_more_memory_than_its_limit() throws Exception {
        Path huge = folder.resolve("huge.json");
        try (OutputStream out = Files.newOutputStream(huge)) {
            byte[] zeros = "0,".repeat(500_000).getBytes(StandardCharsets.US_ASCII);
            out.write('[');
            for (int i = 0; i < 56; i++) {
                out.write(zeros);
            }
            out.write("0]".getBytes(StandardCharsets.US_ASCII));
        }
        String csv = folder.resolve("x.csv").toString();
        for (List<String> command : List.of(List.of("check", huge.toString()), List.of("check", "-"),
                List.of("cure", "-"), List.of("replay", huge.toString(), "--flags", csv, "--forecasts", csv))) {
            try (Program program = Program.reading(huge, List.of("-Xmx48m"), command.toArray(String[]::new))) {
                assertThat(program.exitCode()).as(command + program.err()).isEqualTo(2);
                assertThat(program.err().lines()).hasSize(1);
                assertThat(program.err()).contains("is larger than ", " MiB, the most that is read of ");
            }
        }
    }

    @Test void without_enough_memory_it_says_so_in_a_sentence() throws Exception {
        Path dense = plan("[" + "[],".repeat(340_000) + "[]]");

        try (Program program = Program.with(List.of("-Xmx20m"), "check", dense.toString())) {
            assertThat(program.exitCode()).as(program.err()).isEqualTo(1);
            assertThat(program.err()).contains("There is not enough memory for this").hasLineCount(1);
        }
    }

    private Path plan(String text) throws IOException {
        return Files.writeString(folder.resolve("plan.json"), text);
    }

    @Test void check_says_nothing_about_a_sound_plan() throws Exception {
        try (var in = getClass().getResourceAsStream("/demo-data/plans/evening-pour.json")) {
            Path plan = plan(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            try (Program program = Program.run("check", plan.toString())) {
                assertThat(program.exitCode()).as(program.err()).isZero();
                assertThat(program.err() + program.out()).isEmpty();
            }
        }
    }

    @Test void check_says_every_problem_of_a_plan_a_line_each_with_its_place() throws Exception {
        Path plan = plan("{\"id\":\"x y\",\"name\":\"X\",\"seats\":0,\"table\":\"round\",\"steps\":[]}");
        try (Program program = Program.run("check", plan.toString())) {
            assertThat(program.exitCode()).isEqualTo(2);
            List<String> lines = (program.out() + "\n" + program.err()).lines().filter(l -> !l.isBlank()).toList();
            assertThat(lines).hasSizeGreaterThanOrEqualTo(4);
            assertThat(String.join("\n", lines)).contains("/id", "/seats", "/table", "/steps")
                    .doesNotContain("Exception");
        }
    }

    @Test void check_of_a_file_that_is_not_there_is_told() throws Exception {
        assertFails(2, "none.json", "check", folder.resolve("none.json").toString());
    }
}

package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import java.net.HttpURLConnection;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one file that is carried to a class; runs after packaging, so it looks at what was packed just now. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PackedJarTest {
    private static final Path JAR = Path.of("target/benchpace.jar");
    private static final String NATIVE = "org/sqlite/native/";

    @TempDir Path folder;

    private static List<String> entries() throws Exception {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            return jar.stream().filter(entry -> !entry.isDirectory()).map(JarEntry::getName).toList();
        }
    }

    @Test void it_stays_under_twenty_megabytes() throws Exception {
        assertThat(Files.size(JAR)).isLessThan(20_000_000);
    }

    @Test void it_runs_on_windows_macos_and_linux_with_either_processor_and_carries_nothing_for_other_machines()
            throws Exception {
        assertThat(entries().stream().filter(name -> name.startsWith(NATIVE))
                .map(name -> name.substring(NATIVE.length(), name.lastIndexOf('/'))))
                .containsExactlyInAnyOrder("Windows/x86_64", "Windows/aarch64", "Mac/x86_64", "Mac/aarch64",
                        "Linux/x86_64", "Linux/aarch64",
                        "Linux/armv7"); // single-board computers with a system of 32 bits
    }

    @Test void the_licences_of_what_it_is_made_of_go_with_it() throws Exception {
        assertThat(entries()).contains("META-INF/LICENSE", "META-INF/NOTICE", "META-INF/FastDoubleParser-LICENSE",
                "META-INF/resources/webjars/htmx.org/2.0.10/LICENSE",
                "META-INF/resources/webjars/htmx-ext-sse/2.2.2/LICENSE");
    }

    @Test void it_opens_the_board_with_its_pages_and_scripts_and_writes_a_class_out() throws Exception {
        String data = folder.resolve("data").toString();
        String id;
        try (Program program = Program.packed(JAR, List.of(), "serve", "--host", "127.0.0.1", "--port", "0",
                "--data", data, "--pin", "2468")) {
            for (String open : List.of("/", "/health", "/wall", "/webjars/htmx.js", "/webjars/htmx-sse.js",
                    "/static/css/tokens.css")) {
                assertThat(asked(program, open, "").getResponseCode()).as(open).isEqualTo(200);
            }
            String token = token(program);
            id = Json.read(asked(program, "/api/classes", token).getInputStream()).get(0).get("id").asText();
            for (String page : List.of("instructor", "helper", "wait", "prep", "report")) {
                assertThat(asked(program, "/classes/" + id + "/" + page, token).getResponseCode()).as(page)
                        .isEqualTo(200);
            }
        }
        try (Program export = Program.packed(JAR, List.of(), "export", id, "--data", data, "--csv")) {
            assertThat(export.exitCode()).as(export.err()).isZero();
            assertThat(export.out()).contains(id);
        }
    }

    @Test void its_launcher_starts_again_from_what_was_read_before_and_passes_over_what_was_cut_short()
            throws Exception {
        Path board = Files.createDirectory(folder.resolve("board"));
        for (String file : List.of("benchpace.jar", "benchpace.sh", "benchpace.options")) {
            Files.copy(Path.of("target").resolve(file), board.resolve(file));
        }
        Path archive = board.resolve("benchpace.jsa");

        openAndClose(board);
        long whole = Files.size(archive);
        FileTime made = Files.getLastModifiedTime(archive);
        openAndClose(board);
        assertThat(Files.getLastModifiedTime(archive)).as("used and left as it is").isEqualTo(made);

        assertThat(archive.toFile().setWritable(true)).isTrue();
        try (FileChannel file = FileChannel.open(archive, StandardOpenOption.WRITE)) {
            file.truncate(whole / 2);
        }
        openAndClose(board);
        assertThat(Files.size(archive)).as("made anew").isGreaterThan(whole / 2);
    }

    private void openAndClose(Path board) throws Exception {
        try (Program program = Program.of(List.of("sh", board.resolve("benchpace.sh").toString(), "serve", "--host",
                "127.0.0.1", "--port", "0", "--data", folder.resolve("data").toString()))) {
            assertThat(program.health().get("status").asText()).isEqualTo("ok");
            program.terminate();
            program.exitCode();
            assertThat(program.err()).isEmpty();
        }
    }

    private static String token(Program program) throws Exception {
        HttpURLConnection pairing = (HttpURLConnection) program.uri("/api/pair").toURL().openConnection();
        pairing.setRequestMethod("POST");
        pairing.setDoOutput(true);
        pairing.setRequestProperty("Content-Type", "application/json");
        pairing.getOutputStream().write("{\"pin\":\"2468\"}".getBytes(StandardCharsets.UTF_8));
        return Json.read(pairing.getInputStream()).get("token").asText();
    }

    private static HttpURLConnection asked(Program program, String address, String token) throws Exception {
        HttpURLConnection asked = (HttpURLConnection) program.uri(address).toURL().openConnection();
        if (!token.isEmpty()) {
            asked.setRequestProperty("Authorization", "Bearer " + token);
        }
        return asked;
    }
}

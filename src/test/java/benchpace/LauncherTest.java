package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the README tells to type, and Java's options, which stand in one file and nowhere else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LauncherTest {
    private static final Path LAUNCHER = Path.of("src/main/launcher");

    @Test void java_takes_the_options() throws Exception {
        try (Program program = Program.with(List.of("@" + LAUNCHER.resolve("benchpace.options")), "--version")) {
            assertThat(program.exitCode()).as(program.err()).isZero();
            assertThat(program.err()).isEmpty();
        }
    }

    @Test void the_readme_names_the_files_and_none_of_the_options() throws Exception {
        String readme = Files.readString(Path.of("README.md"));

        assertThat(readme).contains("java -jar target/benchpace.jar serve", "sh target/benchpace.sh serve",
                "java @target/benchpace.options -jar target/benchpace.jar serve");
        assertThat(readme).doesNotContain("-XX:", "-Xss", "-Xms", "-Xmx");
    }

    @Test void the_launcher_takes_the_options_from_their_file() throws Exception {
        String launcher = Files.readString(LAUNCHER.resolve("benchpace.sh"));

        for (String option : Files.readAllLines(LAUNCHER.resolve("benchpace.options"))) {
            assertThat(option).matches("#.*|-X\\S+");
            assertThat(launcher).contains("benchpace.options").doesNotContain(option);
        }
    }

    // ---- wherever it lies

    /** Stands for the board: says what it is given. */
    static final class Said {
        private Said() { }

        public static void main(String[] given) {
            System.out.println("is given " + String.join("|", given));
        }
    }

    @TempDir private Path room;

    private Path installed(String folder) throws IOException {
        Path installed = Files.createDirectories(room.resolve(folder));
        for (String file : List.of("benchpace.sh", "benchpace.options")) {
            Files.copy(LAUNCHER.resolve(file), installed.resolve(file));
        }
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Said.class.getName());
        String said = Said.class.getName().replace('.', '/') + ".class";
        try (OutputStream file = Files.newOutputStream(installed.resolve("benchpace.jar"));
                JarOutputStream jar = new JarOutputStream(file, manifest);
                InputStream code = Said.class.getResourceAsStream("/" + said)) {
            jar.putNextEntry(new JarEntry(said));
            code.transferTo(jar);
            jar.closeEntry();
        }
        return installed.resolve("benchpace.sh");
    }

    private String told(String launcher, Path from) throws Exception {
        Process process = new ProcessBuilder("sh", launcher, "serve", "--data", "my classes", "it's \"$HOME\"")
                .directory(from.toFile()).redirectErrorStream(true).start();
        String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
        return told;
    }

    private void assertStarts(String launcher, Path from) throws Exception {
        assertThat(told(launcher, from)).isEqualTo("is given serve|--data|my classes|it's \"$HOME\"\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain", "two words", "it's \"odd\" $HOME `id` & (so); *", "-dash", "Gießen"})
    void it_starts_the_first_and_the_next_time_in_a_folder_of_any_name(String folder) throws Exception {
        Path launcher = installed(folder);

        for (int start = 0; start < 3; start++) {
            assertStarts(launcher.toString(), room);
        }
        assertStarts("benchpace.sh", launcher.getParent());
        assertStarts(room.relativize(launcher).toString().startsWith("-") ? "./" + room.relativize(launcher)
                : room.relativize(launcher).toString(), room);
    }

    @Test void it_starts_through_a_link_to_its_folder() throws Exception {
        installed("there");
        Path link = Files.createSymbolicLink(room.resolve("here"), room.resolve("there"));

        for (int start = 0; start < 2; start++) {
            assertStarts(link.resolve("benchpace.sh").toString(), room);
        }
    }

    @Test void what_a_run_left_for_the_next_is_used_and_one_that_was_cut_short_is_made_anew() throws Exception {
        Path launcher = installed("plain");
        Path archive = launcher.resolveSibling("benchpace.jsa");
        assertStarts(launcher.toString(), room);
        assertThat(archive).isNotEmptyFile();
        FileTime made = Files.getLastModifiedTime(archive);
        assertStarts(launcher.toString(), room);
        assertThat(Files.getLastModifiedTime(archive)).isEqualTo(made);
        byte[] whole = Files.readAllBytes(archive);

        Files.delete(archive);
        Files.write(archive, Arrays.copyOf(whole, whole.length / 2));
        assertStarts(launcher.toString(), room);

        assertThat(Files.size(archive)).isGreaterThan(whole.length / 2);
        assertStarts(launcher.toString(), room);
    }

    @Test void it_starts_where_nothing_may_be_written() throws Exception {
        Path launcher = installed("shut");
        Files.setPosixFilePermissions(launcher.getParent(), PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            for (int start = 0; start < 2; start++) {
                assertStarts(launcher.toString(), room);
            }
        } finally {
            Files.setPosixFilePermissions(launcher.getParent(), PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }
}

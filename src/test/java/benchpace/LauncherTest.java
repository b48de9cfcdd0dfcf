package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

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
}

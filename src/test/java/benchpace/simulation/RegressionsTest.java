package benchpace.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Small classes that once broke an invariant, each a script named for what went wrong. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RegressionsTest {
    private static final Path SCRIPTS = Path.of("src/test/resources/simulation");

    @TestFactory Stream<DynamicTest> classes_that_once_went_wrong() throws IOException {
        try (Stream<Path> files = Files.list(SCRIPTS)) {
            List<Path> scripts = files.sorted().toList();
            return scripts.stream().map(file -> DynamicTest.dynamicTest(
                    file.getFileName().toString().replace(".jsonl", "").replace('-', ' '),
                    () -> assertThat(Shrinking.broken(Script.read(file))).isEmpty()));
        }
    }

    @Test void a_script_reads_back_as_it_was_written() throws IOException {
        try (Stream<Path> files = Files.list(SCRIPTS)) {
            for (Path file : files.toList()) {
                assertThat(Script.read(file).text()).isEqualTo(Files.readString(file));
            }
        }
    }
}

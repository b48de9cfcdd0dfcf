package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Page scripts ask, keep and open by the scripts that are there for it, and by no way of their own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScriptsShareTest {
    private static final Path SCRIPTS = Path.of("static/js");

    private static String text(Path script) {
        try {
            return Files.readString(script);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({"fetch(, api.js taps.js worker.js", "urn:benchpace:, api.js", "localStorage, stored.js",
        "sessionStorage, ''", "'benchpace.', stored.js", "showModal(, dialogue.js", "EventSource(, live.js",
        "XMLHttpRequest, ''", "sendBeacon, ''"})
    void only_these_scripts_have(String what, String those) throws IOException {
        try (Stream<Path> all = Files.walk(SCRIPTS)) {
            assertThat(all.filter(file -> file.toString().endsWith(".js")).filter(file -> text(file).contains(what))
                    .map(file -> SCRIPTS.relativize(file).toString()).sorted().collect(Collectors.joining(" ")))
                    .isEqualTo(those);
        }
    }
}

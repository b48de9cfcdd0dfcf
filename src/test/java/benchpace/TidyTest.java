package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What the house asks of its sources beyond their form, which Checkstyle holds ({@code .checkstyle.xml}). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TidyTest {
    private static final Path MAIN = Path.of("src/main/java");
    private static final Path TESTS = Path.of("src/test/java");
    private static final Path TEMPLATES = Path.of("src/main/jte");
    /** Written in two halves, so that this file does not find itself. */
    private static final Pattern PUT_OFF = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");
    private static final Pattern TYPED_PARAM = Pattern.compile("@param\\s+[\\w.<>?,\\[\\] ]+\\s+\\w+(\\s*=.*)?");

    @Test void nothing_is_put_off() {
        List<String> found = new ArrayList<>();
        for (Path root : List.of(MAIN, TESTS, TEMPLATES, Path.of("src/main/resources"), Path.of("static"))) {
            for (String ending : List.of(".java", ".jte", ".css", ".js", ".sql", ".html")) {
                found.addAll(lines(root, ending, line -> PUT_OFF.matcher(line).find()));
            }
        }

        assertThat(found).isEmpty();
    }

    @Test void no_test_is_switched_off_or_sleeps() {
        Pattern asleep = Pattern.compile("@Dis" + "abled|Thread\\.sl" + "eep|assume" + "True");

        assertThat(lines(TESTS, ".java", line -> asleep.matcher(line).find())).isEmpty();
    }

    /** A template says what it is given before anything else, in types; comments and imports may come first. */
    @Test void every_template_begins_with_its_typed_params_or_has_none() {
        List<String> wrong = new ArrayList<>();
        for (Path template : files(TEMPLATES, ".jte")) {
            boolean begun = false;
            for (String line : read(template)) {
                boolean param = line.startsWith("@param");
                if (param && (begun || !TYPED_PARAM.matcher(line.strip()).matches())) {
                    wrong.add(template + ": " + line);
                }
                begun |= !line.isBlank() && !param && !line.startsWith("@import") && !line.startsWith("<%--");
            }
        }

        assertThat(wrong).isEmpty();
    }

    /** The first of two would be nobody's: a method was put between another and its words. */
    @Test void no_words_on_a_method_are_followed_by_others() {
        List<String> found = new ArrayList<>();
        for (Path root : List.of(MAIN, TESTS)) {
            for (Path file : files(root, ".java")) {
                List<String> lines = read(file).stream().map(String::strip).toList();
                for (int i = 1; i < lines.size(); i++) {
                    if (lines.get(i).startsWith("/**") && lines.get(i - 1).endsWith("*/")) {
                        found.add(file + ":" + (i + 1));
                    }
                }
            }
        }

        assertThat(found).isEmpty();
    }

    private interface LineRule {
        boolean breaks(String line);
    }

    private static List<String> lines(Path root, String ending, LineRule rule) {
        List<String> found = new ArrayList<>();
        for (Path file : files(root, ending)) {
            List<String> lines = read(file);
            for (int i = 0; i < lines.size(); i++) {
                if (rule.breaks(lines.get(i))) {
                    found.add(file + ":" + (i + 1));
                }
            }
        }
        return found;
    }

    private static List<Path> files(Path root, String ending) {
        if (!Files.exists(root)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> read(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

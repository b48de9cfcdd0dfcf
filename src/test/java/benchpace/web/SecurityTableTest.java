package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** {@code src/docs/security.md} against the code, and against the list of OWASP ASVS 5.0.0, level 1. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SecurityTableTest {
    /** Every requirement of level 1, as the standard's own table has them: 70. */
    private static final List<String> LEVEL_1 = List.of("1.2.1", "1.2.2", "1.2.3", "1.2.4", "1.2.5", "1.3.1", "1.3.2",
            "1.5.1", "2.1.1", "2.2.1", "2.2.2", "2.3.1", "3.2.1", "3.2.2", "3.3.1", "3.4.1", "3.4.2", "3.5.1", "3.5.2",
            "3.5.3", "4.1.1", "4.4.1", "5.2.1", "5.2.2", "5.3.1", "5.3.2", "6.1.1", "6.2.1", "6.2.2", "6.2.3", "6.2.4",
            "6.2.5", "6.2.6", "6.2.7", "6.2.8", "6.3.1", "6.3.2", "6.4.1", "6.4.2", "7.2.1", "7.2.2", "7.2.3", "7.2.4",
            "7.4.1", "7.4.2", "8.1.1", "8.2.1", "8.2.2", "8.3.1", "9.1.1", "9.1.2", "9.1.3", "9.2.1", "10.4.1",
            "10.4.2", "10.4.3", "10.4.4", "10.4.5", "11.3.1", "11.3.2", "11.4.1", "12.1.1", "12.2.1", "12.2.2",
            "13.4.1", "14.2.1", "14.3.1", "15.1.1", "15.2.1", "15.3.1");
    private static final Pattern NAMED = Pattern.compile("`([^`]+)`");
    private static final Pattern CLASS = Pattern.compile("[A-Z][A-Za-z]+");

    /** One line of the table. */
    private record Row(String id, String level, String words, String answer, String evidence) { }

    private static List<Row> rows() {
        try (Stream<String> lines = Files.lines(Path.of("src/docs/security.md"))) {
            return lines.filter(line -> line.matches("\\| \\d+\\.\\d+\\.\\d+ \\|.*")).map(line -> line.split("\\|"))
                    .map(cells -> new Row(cells[1].strip(), cells[2].strip(), cells[3].strip(), cells[4].strip(),
                            cells[5].strip())).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> classes() {
        try (Stream<Path> main = Files.walk(Path.of("src/main/java"));
                Stream<Path> tests = Files.walk(Path.of("src/test/java"))) {
            return Stream.concat(main, tests).map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java")).map(name -> name.replace(".java", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test void every_requirement_of_level_1_has_one_row_and_is_marked_as_such() {
        assertThat(LEVEL_1).hasSize(70);
        assertThat(rows().stream().filter(row -> row.level.equals("1")).map(Row::id))
                .containsExactlyElementsOf(LEVEL_1);
        assertThat(rows().stream().map(Row::id)).doesNotHaveDuplicates();
    }

    @Test void every_row_has_an_answer_with_evidence() {
        for (Row row : rows()) {
            assertThat(row.words).as(row.id).isNotBlank();
            assertThat(row.answer).as(row.id).matches("(holds|n/a|not met)\\b.*");
            assertThat(row.answer.startsWith("n/a") || row.answer.startsWith("not met")).as(row.id + " says why")
                    .isEqualTo(!row.answer.startsWith("holds"));
            assertThat(row.answer.length()).as(row.id).isGreaterThan(row.answer.startsWith("holds") ? 4 : 10);
            assertThat(row.evidence).as(row.id).isNotBlank();
        }
    }

    @Test void every_class_that_is_named_exists() {
        Set<String> classes = classes();
        for (Row row : rows()) {
            Matcher named = NAMED.matcher(row.evidence);
            while (named.find()) {
                String name = named.group(1).replaceFirst("\\..*", "");
                if (CLASS.matcher(name).matches()) {
                    assertThat(classes).as(row.id).contains(name);
                }
            }
        }
    }

    /** A row that says that something holds and could be tried out names a test. */
    @Test void most_of_what_holds_is_held_by_a_test() {
        List<Row> holds = rows().stream().filter(row -> row.answer.startsWith("holds")).toList();
        long tested = holds.stream().filter(row -> row.evidence.matches(".*`[A-Za-z]+(Test|Properties)`.*")).count();

        assertThat(tested).isGreaterThan(holds.size() * 3L / 4);
    }
}

package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Below the room of words there are facts: no class there makes a sentence for people. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FactsBelowWordsTest {
    private static final List<String> FLOORS = List.of("live", "pace", "cure", "report", "breaks", "shelf", "prep",
            "board");
    private static final Pattern COMMENT_OR_LITERAL =
            Pattern.compile("/\\*.*?\\*/|//[^\\n]*|\"(?:[^\"\\\\\\n]|\\\\.)*\"|'(?:[^'\\\\]|\\\\.)'", Pattern.DOTALL);
    private static final Pattern SENTENCE = Pattern.compile("[ ][a-z]{2,}");
    /** Bugs and refused values, which name the value and the bound, and what is written to the log. */
    private static final Pattern NOT_FOR_SCREENS = Pattern.compile("\\bthrow\\b|Exception\\(|\\bsuper\\("
            + "|(?<!Math\\.)\\blog\\(|\\bcarefully\\(|\\bCaseFault\\(|\\breturn refused\\(");

    @Test void no_class_below_the_room_of_words_says_anything_to_people() {
        List<String> said = new ArrayList<>();
        for (String floor : FLOORS) {
            for (Path file : sources(Path.of("src/main/java/benchpace", floor))) {
                sentences(read(file)).forEach(words -> said.add(file + ": " + words));
            }
        }

        assertThat(said).isEmpty();
    }

    @Test void every_floor_that_is_named_is_there() {
        assertThat(FLOORS).allSatisfy(floor ->
                assertThat(sources(Path.of("src/main/java/benchpace", floor))).isNotEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"return seat + \" is done\";", "enum E { A(\"not here yet\"); }",
        "String a = one ? \"it \\\"is so\" : \"\";", "static final String A = \"after the hand test\";"})
    void a_sentence_is_found(String source) {
        assertThat(sentences(source)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"return \"a-token\".length() > 3 ? \"\" : \", \"; // \"it is so\"",
        "/** \"Seat 4 is done.\" */ int a;", "throw new IllegalArgumentException(\"seat \" + n + \" is not there\");"})
    void what_is_no_sentence_for_people_is_passed_over(String source) {
        assertThat(sentences(source)).isEmpty();
    }

    /** The literals with two words and more, by statement; comments aside. */
    private static List<String> sentences(String source) {
        List<String> literals = new ArrayList<>();
        String code = COMMENT_OR_LITERAL.matcher(source).replaceAll(found -> {
            if (found.group().startsWith("/")) {
                return " ";
            }
            literals.add(found.group());
            return "@" + (literals.size() - 1) + "@";
        });
        List<String> sentences = new ArrayList<>();
        for (String statement : code.split("[;{}]")) {
            if (!NOT_FOR_SCREENS.matcher(statement).find()) {
                Pattern.compile("@(\\d+)@").matcher(statement).results().map(MatchResult::group)
                        .map(mark -> literals.get(Integer.parseInt(mark.substring(1, mark.length() - 1))))
                        .filter(literal -> SENTENCE.matcher(literal).find()).forEach(sentences::add);
            }
        }
        return sentences;
    }

    private static List<Path> sources(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

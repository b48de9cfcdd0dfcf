package benchpace.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Whoever sent text that is no JSON (RFC 8259) reads what is wrong with it, and nothing of what read it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class JsonWordsTest {

    private static String told(String text) {
        return Json.problem(catchThrowableOfType(JsonProcessingException.class, () -> Json.read(text))).sentence();
    }

    @Test void each_fault_has_words_of_its_own() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("{\"a\":", "ends too early");
        words.put("{\"a\":\"b", "ends too early");
        words.put("{\"a\":1,\"a\":2}", "\"a\" stands there twice");
        words.put("{} {}", "goes on after its end");
        words.put("[".repeat(41) + "]".repeat(41), "nested more than 40 deep");
        words.put("9".repeat(65), "a number is longer");
        words.put("\"" + "x".repeat(100_001) + "\"", "a text is longer");
        words.put("{\"" + "x".repeat(201) + "\":1}", "a name is longer");
        words.put("nonsense", "none of true, false and null");
        words.put("NaN", "a number that is none");
        words.put("01", "a number that is none");
        words.put("\"\t\"", "must be written as an escape");
        words.put("\"\\x\"", "an escape that is none");
        words.put("[}", "a bracket is closed that is not open");
        words.put("{'a':1}", "a character that does not belong there");

        words.forEach((text, sentence) -> assertThat(told(text)).startsWith("is not sound JSON: ").contains(sentence));
    }

    @Test void no_word_is_about_what_reads_it() {
        for (String text : new String[] {"{} {}", "[".repeat(50), "9".repeat(70), "{\"a\":", "x", "{\"a\":1e}",
                "\u0001", "{\"a\":1,\"a\":2}", "\"\\ud83d", "[1,,2]", "{\"a\" 1}", "\"" + "x".repeat(100_001)}) {
            assertThat(OddInput.LEAKS.matcher(told(text)).find()).as(told(text)).isFalse();
        }
    }

    @Test void a_name_that_stands_twice_is_told_on_one_line_and_cut_short() {
        String name = "a\\u0007" + "b".repeat(60);

        assertThat(told("{\"" + name + "\":1,\"" + name + "\":2}")).contains("\"a?" + "b".repeat(38) + "...\"");
    }
}

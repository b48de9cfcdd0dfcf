package benchpace.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Why text is no JSON, in plain words. What the reading library says of it names its own classes and settings. */
final class JsonWords {
    private static final int LONGEST_NAME = 40;
    private static final Pattern TWICE = Pattern.compile("Duplicate field '(.*)'", Pattern.DOTALL);
    private static final Map<String, String> SAYINGS = sayings();

    private JsonWords() { }

    /** From what the library's message begins with, or has in it. */
    private static Map<String, String> sayings() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("nesting depth", "it is nested more than " + Json.DEEPEST + " deep");
        words.put("Number value length", "a number is longer than any number here");
        words.put("BigDecimal scale", "a number is larger than any number here");
        words.put("String value length", "a text is longer than any text here");
        words.put("String length", "a text is longer than any text here");
        words.put("Name value length", "a name is longer than any name here");
        words.put("Name length", "a name is longer than any name here");
        words.put("Document length", "it is longer than 64 MB");
        words.put("Trailing token", "it goes on after its end");
        words.put("Unrecognized token", "there is a word that is none of true, false and null");
        words.put("Non-standard token", "there is a number that is none");
        words.put("Invalid numeric value", "there is a number that is none");
        words.put("Numeric value", "a number is larger than any number here");
        words.put("Illegal unquoted character", "a text holds a character that must be written as an escape");
        words.put("Unrecognized character escape", "a text holds an escape that is none");
        words.put("Invalid UTF-8", "it is not text in UTF-8");
        words.put("Unexpected close marker", "a bracket is closed that is not open");
        words.put("Unexpected character", "there is a character that does not belong there");
        return words;
    }

    static String of(JsonProcessingException e) {
        String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
        Matcher twice = TWICE.matcher(said);
        if (twice.find()) {
            return "the name \"" + shown(twice.group(1)) + "\" stands there twice";
        }
        if (e instanceof JsonEOFException) {
            return "it ends too early";
        }
        return SAYINGS.entrySet().stream().filter(saying -> said.contains(saying.getKey())).findFirst()
                .map(Map.Entry::getValue)
                .orElse(e instanceof StreamConstraintsException ? "it is larger than anything here"
                        : "it cannot be understood");
    }

    private static String shown(String name) {
        String clean = name.codePoints().limit(LONGEST_NAME)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        return clean.length() < name.length() ? clean + "..." : clean;
    }
}

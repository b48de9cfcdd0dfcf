package benchpace.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Somebody's text in its sentences; {@code static/js/offline/sentences.js} tells the first one by the same rule. */
public final class Sentences {
    private static final Pattern STOP = Pattern.compile("[.!?][ \\t\\r\\n]+");
    /** After these a stop ends nothing, after "no." only where no number follows. */
    private static final Pattern SHORT = Pattern.compile("(?i)(^|[^\\p{L}])(e\\.g|i\\.e|approx)\\.$");
    private static final Pattern NUMBER = Pattern.compile("(?i)(^|[^\\p{L}])no\\.$");

    private Sentences() { }

    /** @return none of a blank text */
    public static List<String> of(String text) {
        String whole = text.strip();
        List<String> sentences = new ArrayList<>();
        int from = 0;
        Matcher stop = STOP.matcher(whole);
        while (stop.find()) {
            String sentence = whole.substring(from, stop.start() + 1);
            boolean figure = Character.digit(whole.charAt(stop.end()), 10) >= 0;
            if (!SHORT.matcher(sentence).find() && !(figure && NUMBER.matcher(sentence).find())) {
                sentences.add(sentence);
                from = stop.end();
            }
        }
        if (from < whole.length()) {
            sentences.add(whole.substring(from));
        }
        return sentences;
    }
}

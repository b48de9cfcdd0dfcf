package benchpace.web.screen.instructor;

import benchpace.words.Sentences;
import java.util.List;

/**
 * A caution as it is set under the step's script: its first sentence strong.
 *
 * @param first empty if there is none
 * @param rest  the sentences after it; may be empty
 */
public record CautionLines(String first, String rest) {
    public static CautionLines of(String caution) {
        List<String> sentences = Sentences.of(caution);
        String first = sentences.isEmpty() ? "" : sentences.get(0);
        return new CautionLines(first, caution.strip().substring(first.length()).strip());
    }
}

package benchpace.web.screen.instructor;

/**
 * A caution as it is set under the step's script: its first sentence strong.
 *
 * @param first empty if there is none
 * @param rest  the sentences after it; may be empty
 */
public record CautionLines(String first, String rest) {
    public static CautionLines of(String caution) {
        String[] sentences = caution.strip().split("(?<=[.!?])\\s+", 2);
        return new CautionLines(sentences[0], sentences.length > 1 ? sentences[1] : "");
    }
}

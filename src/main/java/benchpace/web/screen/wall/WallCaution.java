package benchpace.web.screen.wall;

import java.util.List;
import java.util.Optional;

/**
 * A caution on the wall: its first sentence strong, and as many of the others as have room. The tablet has it whole.
 *
 * @param first the first sentence
 * @param rest  the sentences after it that are shown; may be empty
 */
public record WallCaution(String first, String rest) {

    static List<String> sentences(String caution) {
        return caution.isBlank() ? List.of() : List.of(caution.strip().split("(?<=[.!?])\\s+"));
    }

    /** @param shown how many sentences */
    static Optional<WallCaution> of(List<String> sentences, int shown) {
        return sentences.isEmpty() ? Optional.empty() : Optional.of(new WallCaution(sentences.get(0),
                String.join(" ", sentences.subList(1, Math.max(1, shown)))));
    }
}

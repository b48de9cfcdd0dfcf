package benchpace.web.screen.wall;

import java.util.List;
import java.util.Optional;

/**
 * A caution on the wall: its first sentence strong, and as many of the others as have room. The tablet has it
 * whole.
 *
 * @param first the first sentence, or its first words where not even that has room
 * @param rest  the sentences after it that are shown; may be empty
 */
public record WallCaution(String first, String rest) {

    /** @param shown the sentences that have room */
    static Optional<WallCaution> of(List<String> shown) {
        return shown.isEmpty() ? Optional.empty() : Optional.of(new WallCaution(shown.get(0),
                String.join(" ", shown.subList(1, shown.size()))));
    }
}

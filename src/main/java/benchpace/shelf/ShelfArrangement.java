package benchpace.shelf;

import java.util.List;

/** How a shop has arranged its pickup shelf: the shelves, and the rules. */
public record ShelfArrangement(ShelfLayout layout, ShelfSettings settings) {
    /** Two shelves of twelve places, until the shop says otherwise. Common practice, no source. */
    public static final ShelfArrangement STANDARD = new ShelfArrangement(new ShelfLayout(List.of(
            new ShelfLayout.Board("Upper", 12), new ShelfLayout.Board("Lower", 12))), ShelfSettings.STANDARD);

    public ShelfArrangement {
        if (layout == null || settings == null) {
            throw new IllegalArgumentException("a shelf needs its layout and its settings");
        }
    }

    public ShelfRules rules() {
        return new ShelfRules(layout, settings);
    }
}

package benchpace.words;

import benchpace.shelf.ShelfEntry;
import java.util.ArrayList;
import java.util.List;

/**
 * What goes on a candle's tag, printed or written by hand. The cautions are the usual ones of candle makers: the first
 * three are the rules of ASTM F2058 (Candle Fire Safety Labeling; the wording from memory, "and pets" is the trade's);
 * this tag does not replace the safety label the maker owes under that standard, EN 15494 or local law.
 *
 * @param claim    the claim word, to be set large; "erased" when it is gone
 * @param lines    what else identifies the candle, one fact a line
 * @param cautions one short sentence each
 */
public record ShelfTag(String claim, List<String> lines, List<String> cautions) {
    /** The cautions on every tag. */
    public static final List<String> CAUTIONS = List.of(
            "Burn within sight.",
            "Keep away from things that catch fire.",
            "Keep away from children and pets.",
            "Let it set and cure fully before the first burn.",
            "The instructor's or maker's word comes first.");

    public ShelfTag {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }

    /** The tag of a candle on the shelf, with times as the shop's clock shows them. */
    public static ShelfTag of(ShelfEntry entry, String className, Times times) {
        List<String> lines = new ArrayList<>();
        if (!entry.name().isEmpty()) {
            lines.add(entry.name());
        }
        lines.add(className + ", seat " + entry.seat());
        lines.add("Shelf: " + entry.place());
        lines.add("Ready from about " + times.shortDay(entry.readyFrom()));
        lines.add("Collect by " + times.shortDate(entry.collectBy()));
        return new ShelfTag(entry.claim().toString(), lines, CAUTIONS);
    }
}

package benchpace.words;

import benchpace.shelf.ShelfEntry;
import java.util.List;

/**
 * What goes on a candle's tag, printed or written by hand. The cautions are the usual ones of candle makers: the first
 * three are the rules of ASTM F2058 (Candle Fire Safety Labeling; the wording from memory, "and pets" is the trade's);
 * this tag does not replace the safety label the maker owes under that standard, EN 15494 or local law.
 *
 * @param claim    the claim word, to be set large; "erased" when it is gone
 * @param name     as the guest gave it; empty if none is kept
 * @param from     the class and the seat
 * @param facts    from when on and by when it is collected, and where it stands
 * @param cautions one short sentence each
 */
public record ShelfTag(String claim, String name, String from, List<Fact> facts, List<String> cautions) {
    /** @param what it is @param said what is said of it */
    public record Fact(String what, String said) { }

    /** The cautions on every tag. */
    public static final List<String> CAUTIONS = List.of(
            "Burn within sight.",
            "Keep away from things that catch fire.",
            "Keep away from children and pets.",
            "Let it set and cure fully before the first burn.",
            "The instructor's or maker's word comes first.");

    public ShelfTag {
        facts = List.copyOf(facts);
        cautions = List.copyOf(cautions);
    }

    /** The tag of a candle on the shelf, with times as the shop's clock shows them. */
    public static ShelfTag of(ShelfEntry entry, String className, Times times) {
        return new ShelfTag(entry.claim().toString(), entry.name(), className + ", seat " + entry.seat(), List.of(
                new Fact("Ready from about", times.shortDay(entry.readyFrom())),
                new Fact("Collect by", times.shortDate(entry.collectBy())),
                new Fact("Shelf", entry.place().toString())), CAUTIONS);
    }
}

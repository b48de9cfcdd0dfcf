package benchpace.web.screen.prep;

import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.Packed;
import benchpace.prep.supply.PackingList;
import benchpace.web.screen.prep.PrepItem.OnList;
import benchpace.words.PrepFigures;
import java.util.List;

/** What travels to a hired venue. @param boxes the first that are named, then what has none */
public record PackingPanel(List<Box> boxes, boolean ticks) {

    /** One box. @param home what comes home again */
    public record Box(String name, List<ListLine> usedUp, List<ListLine> home) { }

    static PackingPanel of(PrepGiven given, PrepSheet sheet) {
        return new PackingPanel(sheet.packing().boxes().stream().map(PackingPanel::box).toList(), given.live());
    }

    private static Box box(PackingList.Box box) {
        return new Box(box.name().isEmpty() ? "In no box" : box.name(),
                box.usedUp().stream().map(PackingPanel::line).toList(),
                box.reusable().stream().map(PackingPanel::line).toList());
    }

    private static ListLine line(Packed packed) {
        if (packed instanceof Packed.OfSupply p) {
            return line(packed, p.line().supply().name(), ListsPanel.amount(p.line(), p.line().needed()));
        } else if (packed instanceof Packed.OfWax p) {
            return line(packed, p.name(), PrepFigures.grams(p.grams()));
        } else if (packed instanceof Packed.OfFragrance p) {
            return line(packed, "Fragrance", PrepFigures.grams(p.grams()));
        }
        return line(packed, ((Packed.OfAppliance) packed).name(), "");
    }

    private static ListLine line(Packed packed, String name, String amount) {
        return ListLine.of(OnList.PACK, packed.key(), name, amount);
    }

    /** Whether anything is in a box: else nothing travels, and the lists of the table are enough. */
    public boolean travels() {
        return boxes.stream().anyMatch(box -> !box.name().equals("In no box"));
    }
}

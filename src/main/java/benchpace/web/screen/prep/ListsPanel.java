package benchpace.web.screen.prep;

import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.PlaceSetting;
import benchpace.prep.supply.SupplyLine;
import benchpace.web.screen.prep.PrepItem.OnList;
import benchpace.words.Phrases;
import benchpace.words.PrepFigures;
import benchpace.words.prep.SupplyWords;
import java.util.List;

/**
 * What is laid out.
 *
 * @param places  "8 places: 6 Amber in a tumbler, 2 Tin"
 * @param place   what lies at each of them
 * @param shared  what all share, and what is to spare
 * @param serving what serves a step one after the other
 * @param ticks   whether it is ticked off
 * @param editor  where it is typed in; empty for who may not
 */
public record ListsPanel(String places, List<ListLine> place, List<ListLine> shared, List<String> serving,
                         boolean ticks, String editor) {

    static ListsPanel of(PrepGiven given, PrepSheet sheet) {
        List<ListLine> place = sheet.places().stream().findFirst().map(PlaceSetting::supplies).orElse(List.of())
                .stream().map(l -> ListLine.of(OnList.PLACE, l.supply().id(), l.supply().name(),
                        SupplyWords.perPlace(l) + ", " + amount(l, l.atPlaces()) + " in all"))
                .toList();
        List<ListLine> shared = sheet.shared().supplies().stream().map(l -> ListLine.of(OnList.SHARED,
                l.supply().id(), l.supply().name(), amount(l, l.shared()) + (l.classAmount() > 0 ? "" : " to spare")))
                .toList();
        return new ListsPanel(places(sheet), place, shared, sheet.shared().stations().stream()
                .map(s -> s.step() + ": " + s.stations().what() + ", " + s.stations().atOnce() + " at once").toList(),
                given.live(), given.editor());
    }

    private static String places(PrepSheet sheet) {
        String all = Phrases.places(sheet.seats());
        return sheet.candles().size() < 2 ? all : all + ": " + Phrases.and(sheet.candles().stream()
                .map(c -> c.seats() + " " + c.candle().name()).toList());
    }

    static String amount(SupplyLine line, double count) {
        return line.grams() ? PrepFigures.grams(count) : PrepFigures.number(count);
    }

    public boolean isEmpty() {
        return place.isEmpty() && shared.isEmpty();
    }
}

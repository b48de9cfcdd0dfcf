package benchpace.web.screen.prep;

import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.SupplyLine;
import benchpace.words.Phrases;
import benchpace.words.PrepFigures;
import java.util.List;

/**
 * What is there and what is to be bought, and what the class uses up.
 *
 * @param toBuy   each a line to tick off: "1 pack of 50, 6.50"
 * @param price   of all that is to be bought; empty if nothing of it has a price
 * @param stock   of everything: needed and in stock
 * @param perSeat what a place costs; empty if nothing has a price
 */
public record StockPanel(List<ListLine> toBuy, String price, List<Stock> stock, String perSeat, String perClass,
                         String unpriced, boolean ticks, String editor) {

    /** One supply. @param cost of what is used up; empty without a price, and for what comes home again */
    public record Stock(String name, String needed, String inStock, String cost) { }

    static StockPanel of(PrepGiven given, PrepSheet sheet) {
        boolean money = given.viewer().instructor();
        List<ListLine> toBuy = sheet.shopping().lines().stream().map(l -> new ListLine(PrepItem.toBuy(l).key(),
                l.supply().name(), packs(l) + (l.priceToBuy().isPresent() && money
                        ? ", " + PrepFigures.money(l.priceToBuy().getAsDouble()) : ""))).toList();
        return new StockPanel(toBuy,
                money ? sheet.shopping().price().stream().mapToObj(PrepFigures::money).findFirst().orElse("") : "",
                sheet.supplies().stream().filter(l -> l.needed() > 0).map(l -> stock(l, money)).toList(),
                money ? sheet.cost().perSeat().stream().mapToObj(PrepFigures::money).findFirst().orElse("") : "",
                money ? sheet.cost().perClass().stream().mapToObj(PrepFigures::money).findFirst().orElse("") : "",
                money ? Phrases.and(sheet.cost().unpriced()) : "", given.live(), given.editor());
    }

    private static String packs(SupplyLine line) {
        String size = ListsPanel.amount(line, line.supply().packSize());
        return line.supply().packSize() == 1 ? ListsPanel.amount(line, line.toBuy())
                : line.packs() == 1 ? "1 pack of " + size : line.packs() + " packs of " + size;
    }

    private static Stock stock(SupplyLine line, boolean money) {
        return new Stock(line.supply().name(), ListsPanel.amount(line, line.needed()),
                ListsPanel.amount(line, line.supply().inStock()), line.cost().isPresent() && money
                        && !line.supply().reusable() ? PrepFigures.money(line.cost().getAsDouble()) : "");
    }

    public boolean isEmpty() {
        return stock.isEmpty();
    }
}

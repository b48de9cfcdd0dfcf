package benchpace.words.prep;

import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.Cost;
import benchpace.prep.supply.Packed;
import benchpace.prep.supply.PlaceSetting;
import benchpace.prep.supply.SharedTable.Station;
import benchpace.prep.supply.Shopping;
import benchpace.prep.supply.SupplyLine;
import benchpace.words.Phrases;
import benchpace.words.PrepFigures;
import java.util.ArrayList;
import java.util.List;

/** Says what lies where, what is packed and bought, and what it costs. */
public final class SupplyWords {
    private SupplyWords() { }

    /** "1 x Wick, cotton", or of wax and fragrance "654 g (1.44 lb) Soy". */
    public static String count(SupplyLine line, double count) {
        return line.grams() ? Amounts.weight(count) + " " + line.supply().name()
                : PrepFigures.number(count) + " x " + line.supply().name();
    }

    /** What lies at one place, a line a thing. */
    public static List<String> place(PlaceSetting place) {
        List<String> said = new ArrayList<>();
        place.candle().ifPresent(line -> {
            said.add(line.candle().vessel().name() + " for \"" + line.candle().name() + "\"");
            said.add("to be filled with " + LoadWords.each(line));
        });
        place.supplies().forEach(line -> said.add(each(line)));
        return said;
    }

    /** "2 x Label"; of what several places share "1 x Jug to 2 places". */
    private static String each(SupplyLine line) {
        double perSeat = line.supply().perSeat();
        return perSeat < 1 ? count(line, 1) + " to " + PrepFigures.number(1 / perSeat) + " places"
                : count(line, perSeat);
    }

    /** "2 each"; of what several places share "1 to 2 places". */
    public static String perPlace(SupplyLine line) {
        double perSeat = line.supply().perSeat();
        return perSeat < 1 ? "1 to " + PrepFigures.number(1 / perSeat) + " places"
                : PrepFigures.number(perSeat) + " each";
    }

    /** "At each of 4 places", "At one place". */
    public static String places(PlaceSetting place) {
        return place.places() == 1 ? "At one place" : "At each of " + place.places() + " places";
    }

    /** "3 x Jug", "2 x Wick, cotton (1 to spare)". */
    public static String shared(SupplyLine line) {
        return count(line, line.shared())
                + (line.spare() > 0 && !line.grams() ? " (" + PrepFigures.number(line.spare()) + " to spare)" : "");
    }

    /** "scales, for 2 at once at \"Weigh\"". */
    public static String station(Station station) {
        return station.stations().what() + ", for " + station.stations().atOnce() + " at once at \"" + station.step()
                + "\"";
    }

    public static String packed(Packed packed) {
        if (packed instanceof Packed.OfSupply p) {
            return count(p.line(), p.line().needed());
        } else if (packed instanceof Packed.OfWax p) {
            return Amounts.weight(p.grams()) + " " + p.name();
        } else if (packed instanceof Packed.OfFragrance p) {
            return Amounts.weight(p.grams()) + " fragrance";
        } else if (packed instanceof Packed.OfAppliance p) {
            return p.name();
        }
        throw new IllegalArgumentException("no words for " + packed);
    }

    /** "Wick, cotton: 1 pack of 50 (7 needed, 2 in stock)". */
    public static String buy(SupplyLine line) {
        String unit = line.grams() ? " g" : "";
        return line.supply().name() + ": " + line.packs() + (line.packs() == 1 ? " pack of " : " packs of ")
                + PrepFigures.number(line.supply().packSize()) + unit + " (" + line.needed() + unit + " needed, "
                + PrepFigures.number(line.supply().inStock()) + unit + " in stock)";
    }

    /** What the packs to buy cost; empty if none has a price. */
    public static String price(Shopping shopping) {
        if (shopping.price().isEmpty()) {
            return "";
        }
        return "These packs cost " + PrepFigures.money(shopping.price().getAsDouble())
                + (shopping.unpriced() > 0 ? ", " + shopping.unpriced() + " without a price not counted" : "")
                + "; a pack outlasts the class, so this is not its cost.";
    }

    /** "13.20 for the class, 2.20 a seat: what is used up, at the pack's price." */
    public static String cost(PrepSheet sheet) {
        Cost cost = sheet.cost();
        if (cost.perClass().isEmpty()) {
            return "Nothing that is used up has a price, so that no cost is worked out.";
        }
        return PrepFigures.money(cost.perClass().getAsDouble()) + " for the class, "
                + PrepFigures.money(cost.perSeat().orElseThrow())
                + " a seat: what is used up, at the pack's price per piece."
                + (cost.unpriced().isEmpty() ? ""
                        : " Not in it, without a price: " + Phrases.and(cost.unpriced()) + ".");
    }
}

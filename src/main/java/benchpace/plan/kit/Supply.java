package benchpace.plan.kit;

import benchpace.plan.Names;
import java.util.OptionalDouble;

/**
 * Something that has to be there: at each place, on the shared table, or both. Counted in pieces, or in whatever the
 * pack is counted in.
 *
 * @param perSeat      0 to 10,000
 * @param perClass     beside that, once for all; 0 to 10,000
 * @param sparePercent more, for what breaks or is spoilt, 0 to 500; reusable things take none
 * @param packSize     what one pack holds, above 0
 * @param inStock      0 or more
 * @param reusable     it comes home again
 * @param pricePerPack in whatever money the organiser counts in, 0 or more
 * @param box          the box it travels in; empty if it has none
 */
public record Supply(String id, String name, double perSeat, double perClass, double sparePercent, double packSize,
                     double inStock, boolean reusable, OptionalDouble pricePerPack, String box) {
    public Supply {
        Names.id("the id of a supply", id);
        Names.required("the name of a supply", name, 60);
        Figures.within("how many of \"" + name + "\" lie at a place", perSeat, 0, 10_000, "");
        Figures.within("how many of \"" + name + "\" the class shares", perClass, 0, 10_000, "");
        Figures.within("the spare share of \"" + name + "\"", sparePercent, 0, 500, "%");
        Figures.within("the pack of \"" + name + "\"", packSize, 0.001, 1_000_000, "");
        Figures.within("the stock of \"" + name + "\"", inStock, 0, 10_000_000, "");
        pricePerPack.ifPresent(p -> Figures.within("the price of \"" + name + "\"", p, 0, 10_000_000, ""));
        Names.line("the box of \"" + name + "\"", box, 40);
    }
}

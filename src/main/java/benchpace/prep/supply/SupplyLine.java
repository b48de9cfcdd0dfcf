package benchpace.prep.supply;

import benchpace.plan.kit.Supply;
import benchpace.prep.Whole;
import java.util.OptionalDouble;

/**
 * How many of a supply a class takes.
 *
 * <pre>
 *   needed = ceil((perSeat x seats + perClass) x (1 + sparePercent / 100))    reusable things take no spare
 *   toBuy  = max(0, needed - inStock)          packs = ceil(toBuy / packSize)
 * </pre>
 *
 * @param classAmount beside what lies at the places: {@code perClass}, or of wax and fragrance the grams of all candles
 * @param grams       whether it is wax or fragrance, which is counted in grams
 */
public record SupplyLine(Supply supply, int seats, double classAmount, boolean grams) {

    /** Whole pieces: what several places share stands there once. */
    public long atPlaces() {
        return Whole.up(supply.perSeat() * seats);
    }

    /** What the class uses if nothing breaks or is spoilt. */
    public double used() {
        return supply.perSeat() * seats + classAmount;
    }

    public long needed() {
        return Whole.up(used() * (supply.reusable() ? 1 : 1 + supply.sparePercent() / 100));
    }

    /** What is needed beyond the places: for all, and to spare. */
    public double shared() {
        return Math.max(0, needed() - atPlaces());
    }

    /** What of {@link #needed} is to spare, rounding up counted. */
    public double spare() {
        return Math.max(0, needed() - used());
    }

    public double toBuy() {
        return Math.max(0, needed() - supply.inStock());
    }

    public long packs() {
        return Whole.up(toBuy() / supply.packSize());
    }

    public OptionalDouble pricePerPiece() {
        return supply.pricePerPack().isPresent()
                ? OptionalDouble.of(supply.pricePerPack().getAsDouble() / supply.packSize()) : OptionalDouble.empty();
    }

    /** What is used up, at the pack's price per piece; absent without a price. A reusable thing costs nothing. */
    public OptionalDouble cost() {
        if (supply.reusable()) {
            return OptionalDouble.of(0);
        }
        return pricePerPiece().isPresent() ? OptionalDouble.of(used() * pricePerPiece().getAsDouble())
                : OptionalDouble.empty();
    }

    /** What the packs to buy cost; absent without a price. */
    public OptionalDouble priceToBuy() {
        return supply.pricePerPack().isPresent() ? OptionalDouble.of(packs() * supply.pricePerPack().getAsDouble())
                : OptionalDouble.empty();
    }
}

package benchpace.prep.supply;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What is to be bought before the class, and what that costs; never the cost of the class, as a pack outlasts it.
 *
 * @param lines    of which there is not enough
 * @param price    of all packs that have one; absent if none has
 * @param unpriced how many lines have no price and are not in it
 */
public record Shopping(List<SupplyLine> lines, OptionalDouble price, int unpriced) {
    public Shopping {
        lines = List.copyOf(lines);
    }

    public static Shopping of(List<SupplyLine> supplies) {
        List<SupplyLine> lines = supplies.stream().filter(s -> s.toBuy() > 0).toList();
        List<Double> prices = lines.stream().map(SupplyLine::priceToBuy).filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble).toList();
        return new Shopping(lines, prices.isEmpty() ? OptionalDouble.empty()
                : OptionalDouble.of(prices.stream().mapToDouble(p -> p).sum()), lines.size() - prices.size());
    }
}

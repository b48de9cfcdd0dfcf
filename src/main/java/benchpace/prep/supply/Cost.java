package benchpace.prep.supply;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a class uses up, at the pack's price per piece, in whatever money the plan counts in.
 *
 * @param lines    what is used up and has a price
 * @param perClass absent if nothing that is used up has a price
 * @param unpriced names of what is used up without a price, and is not in it
 */
public record Cost(List<SupplyLine> lines, OptionalDouble perClass, OptionalDouble perSeat, List<String> unpriced) {
    public Cost {
        lines = List.copyOf(lines);
        unpriced = List.copyOf(unpriced);
    }

    public static Cost of(int seats, List<SupplyLine> supplies) {
        List<SupplyLine> usedUp = supplies.stream().filter(s -> !s.supply().reusable() && s.used() > 0).toList();
        List<SupplyLine> priced = usedUp.stream().filter(s -> s.cost().isPresent()).toList();
        List<String> unpriced = usedUp.stream().filter(s -> s.cost().isEmpty()).map(s -> s.supply().name()).toList();
        if (priced.isEmpty()) {
            return new Cost(priced, OptionalDouble.empty(), OptionalDouble.empty(), unpriced);
        }
        double perClass = priced.stream().mapToDouble(s -> s.cost().getAsDouble()).sum();
        return new Cost(priced, OptionalDouble.of(perClass), OptionalDouble.of(perClass / seats), unpriced);
    }
}

package benchpace.prep.supply;

import benchpace.plan.Plan;
import benchpace.plan.kit.Supply;
import benchpace.prep.wax.WaxTotals;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The supplies of a plan for so many seats. Wax and fragrance are supplies like others when the plan lists them: one
 * that bears the id of a wax, or {@value #FRAGRANCE}, and says nothing of seats and class, is counted in grams, and its
 * amount is that of the candles with the allowance for spills.
 */
public final class Supplies {
    /** The id of the supply that is the fragrance of all candles. */
    public static final String FRAGRANCE = "fragrance";

    private Supplies() { }

    public static List<SupplyLine> of(Plan plan, int seats, WaxTotals totals) {
        return plan.kit().supplies().stream().map(supply -> {
            OptionalDouble grams = grams(supply, plan, totals);
            return new SupplyLine(supply, seats, grams.orElse(supply.perClass()), grams.isPresent());
        }).toList();
    }

    private static OptionalDouble grams(Supply supply, Plan plan, WaxTotals totals) {
        if (supply.perSeat() > 0 || supply.perClass() > 0) {
            return OptionalDouble.empty();
        }
        if (supply.id().equals(FRAGRANCE)) {
            return OptionalDouble.of(totals.fragranceGrams());
        }
        return plan.candles().stream().anyMatch(c -> c.wax().id().equals(supply.id()))
                ? OptionalDouble.of(totals.waxes().stream().filter(w -> w.wax().equals(supply.id()))
                        .mapToDouble(WaxTotals.OfWax::waxGrams).sum())
                : OptionalDouble.empty();
    }
}

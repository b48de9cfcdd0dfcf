package benchpace.web.screen.prep;

import benchpace.plan.Plan;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Melter;
import benchpace.prep.card.DocumentItem;
import benchpace.prep.card.LabelItem;
import benchpace.prep.supply.Supplies;
import benchpace.prep.supply.SupplyLine;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A thing on one of the lists that are ticked off. It keeps its key while the plan is edited around it.
 *
 * @param id of the supply, or of what is to be checked
 */
public record PrepItem(OnList list, String id) {
    /** The lists. */
    public enum OnList {
        /** What lies at each place. */
        PLACE,
        /** What all share. */
        SHARED,
        /** What is packed. */
        PACK,
        /** What is bought. */
        BUY,
        /** Documents and labels to look at. */
        CHECK;

        String token() {
            return PrepItem.token(this);
        }
    }

    static PrepItem toBuy(SupplyLine line) {
        return new PrepItem(OnList.BUY, line.supply().id());
    }

    /** What it is called in addresses and in the store: {@code place:wick}. */
    public String key() {
        return list.token() + ":" + id;
    }

    /** The thing of that key. */
    public static Optional<PrepItem> of(String key) {
        int colon = key.indexOf(':');
        return Arrays.stream(OnList.values()).filter(list -> colon > 0 && list.token().equals(key.substring(0, colon)))
                .findFirst().map(list -> new PrepItem(list, key.substring(colon + 1)));
    }

    /** Whether the plan puts it on a list, for some number of seats. */
    public boolean isOf(Plan plan) {
        return switch (list) {
            case PLACE, SHARED, BUY -> supplied(plan, id);
            case PACK -> id.startsWith("supply:") ? supplied(plan, id.substring(7))
                    : id.equals(Supplies.FRAGRANCE) || Stream.concat(
                            plan.candles().stream().map(c -> "wax:" + c.wax().id()),
                            Stream.concat(plan.kit().appliances().stream().map(Appliance::id),
                                    plan.kit().melters().stream().map(Melter::id)).map(a -> "appliance:" + a))
                            .anyMatch(id::equals);
            case CHECK -> Stream.concat(Arrays.stream(DocumentItem.values()), Arrays.stream(LabelItem.values()))
                    .anyMatch(item -> token(item).equals(id));
        };
    }

    private static boolean supplied(Plan plan, String supply) {
        return plan.kit().supplies().stream().anyMatch(s -> s.id().equals(supply));
    }

    /** "wax-data-sheet". */
    static String token(Enum<?> of) {
        return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

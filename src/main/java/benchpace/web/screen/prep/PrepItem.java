package benchpace.web.screen.prep;

import benchpace.prep.supply.SupplyLine;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

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
            return name().toLowerCase(Locale.ROOT);
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
}

package benchpace.web.screen.prep;

import benchpace.web.screen.prep.PrepItem.OnList;

/**
 * A line that is ticked off.
 *
 * @param key    what is told to the board
 * @param amount how much of it, and further words; may be empty
 */
public record ListLine(String key, String name, String amount) {
    static ListLine of(OnList list, String id, String name, String amount) {
        return new ListLine(new PrepItem(list, id).key(), name, amount);
    }
}

package benchpace.web.screen.plans;

import benchpace.web.screen.drawing.Drawing;

/**
 * A plan on the list, in words.
 *
 * @param tag   of the version that is shown, for a change that is meant for it
 * @param about one sentence of whoever wrote it; may be empty
 * @param what  seats, length and candles
 * @param used  when it last ran and is next used; empty if neither
 * @param saved which version, when, and on which device; empty for a starter plan
 * @param drawing the candle that is usually made by it
 */
public record PlanRow(String id, String name, String tag, String about, String what, String used, String saved,
                      Drawing drawing) {
    /** What its buttons are called for whoever does not see beside which plan they stand. */
    public String label(String act) {
        return act + " " + name;
    }
}

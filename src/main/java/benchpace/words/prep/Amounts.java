package benchpace.words.prep;

import benchpace.units.UnitChoice;
import benchpace.words.PrepFigures;
import java.util.Locale;

/** Weights and watts in the sheet's sentences. */
final class Amounts {
    private Amounts() { }

    /** "104 g (3.66 oz)": ounces by weight, never by volume. */
    static String weight(double grams) {
        return PrepFigures.grams(grams) + " (" + UnitChoice.NORTH_AMERICAN.mass(grams) + ")";
    }

    static String watts(double watts) {
        return Math.round(watts) + " W";
    }

    /** To two places: of a limit that is nearly kept, or of percentages in two conventions. */
    static String percent(double percent) {
        return number(percent) + " %";
    }

    /** At most two places, no trailing noughts. */
    static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }
}

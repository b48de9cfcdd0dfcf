package benchpace.words;

import benchpace.plan.kit.LoadConvention;
import java.math.BigDecimal;
import java.math.MathContext;

/** A percentage of fragrance, never without what it is counted on. */
public final class FragranceWords {
    private static final MathContext THREE_DIGITS = new MathContext(3);

    private FragranceWords() { }

    /** "6 % of the wax, 5.66 % of all that is poured". @param fractionOfTotal 0 to below 1 */
    public static String both(double fractionOfTotal) {
        return percent(fractionOfTotal, LoadConvention.OF_WAX) + " of the wax, "
                + percent(fractionOfTotal, LoadConvention.OF_TOTAL) + " of all that is poured";
    }

    private static String percent(double fractionOfTotal, LoadConvention convention) {
        BigDecimal percent = BigDecimal.valueOf(convention.percent(fractionOfTotal)).round(THREE_DIGITS);
        return (percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString()) + " %";
    }
}

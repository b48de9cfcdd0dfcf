package benchpace.words.prep;

import benchpace.plan.kit.LoadConvention;
import benchpace.prep.PrepProblem;
import benchpace.prep.wax.CandleLine;
import benchpace.words.PrepFigures;

/** Says what wax and fragrance a candle takes, always in both conventions, and whether that much is allowed. */
public final class LoadWords {
    private LoadWords() { }

    /** "104 g wax and 6.2 g fragrance". */
    public static String each(CandleLine line) {
        return PrepFigures.grams(line.waxGramsPerSeat()) + " wax"
                + (line.scented() ? " and " + PrepFigures.grams(line.fragranceGramsPerSeat()) + " fragrance"
                        : ", no fragrance");
    }

    /**
     * "6 % of the wax = 5.66 % of all that is poured", what the plan counts on first; empty of a candle without
     * fragrance.
     */
    public static String both(CandleLine line) {
        if (!line.scented()) {
            return "";
        }
        return line.candle().convention() == LoadConvention.OF_WAX ? both(line.candle().fragranceFraction())
                : ofTotal(line.candle().fragranceFraction()) + " = " + ofWax(line.candle().fragranceFraction());
    }

    private static String both(double fraction) {
        return ofWax(fraction) + " = " + ofTotal(fraction);
    }

    private static String ofWax(double fraction) {
        return Amounts.percent(LoadConvention.OF_WAX.percent(fraction)) + " of the wax";
    }

    private static String ofTotal(double fraction) {
        return Amounts.percent(LoadConvention.OF_TOTAL.percent(fraction)) + " of all that is poured";
    }

    /** "within both makers' limits, the smaller of which is 9.29 % of the wax = 8.5 % of all that is poured". */
    public static String judged(CandleLine line) {
        if (!line.scented()) {
            return "no fragrance, so that no limit concerns it";
        }
        return switch (line.load()) {
            case ALLOWED -> "within both makers' limits, the smaller of which is " + limit(line);
            case OVER -> "too much: the limit is " + limit(line);
            case UNKNOWN -> "no load can be called allowed before both makers' limits are typed in";
        };
    }

    private static String limit(CandleLine line) {
        return both(line.allowedFraction().orElseThrow());
    }

    static String over(PrepProblem.LoadOver p) {
        return p.name() + ": its fragrance is " + both(p.fraction()) + ", and the makers allow at most "
                + both(p.allowedFraction()) + ". Take less before this is mixed.";
    }
}

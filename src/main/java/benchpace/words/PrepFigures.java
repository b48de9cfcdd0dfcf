package benchpace.words;

import java.time.Duration;
import java.util.Locale;

/** Figures of the prep sheet, as people weigh, count and read them off. */
public final class PrepFigures {
    private static final double WHOLE_GRAMS = 100;
    private static final double KILOGRAMS = 10_000;

    private PrepFigures() { }

    /** "6.2 g", "53 g" of what is counted in whole grams, "104 g", "12.35 kg": to what a scale for it shows. */
    public static String grams(double grams) {
        boolean tenths = grams < WHOLE_GRAMS && grams != Math.rint(grams);
        return tenths ? decimals(grams, 1) + " g"
                : grams < KILOGRAMS ? decimals(grams, 0) + " g" : decimals(grams / 1000, 2) + " kg";
    }

    /** "6 %", "5.7 %". */
    public static String percent(double percent) {
        return number(percent) + " %";
    }

    /** "25.42 A", "20 A": fine enough that what is beyond a limit reads so. */
    public static String amps(double amps) {
        return decimals(amps, 2).replaceAll("\\.?0+$", "") + " A";
    }

    /** "1 h 5 min": rounded up, as whoever waits for wax waits rather longer. */
    public static String minutes(double minutes) {
        return Phrases.length(Duration.ofMinutes((long) Math.ceil(minutes - 1e-9)));
    }

    /** "7", "2.5". */
    public static String number(double number) {
        String text = decimals(number, 1);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** "6.50", in whatever money the plan counts in. */
    public static String money(double amount) {
        return decimals(amount, 2);
    }

    /** "35 in 100": a chance to the evening. @param share 0 to 1 */
    public static String chance(double share) {
        return Math.round(100 * share) + " in 100";
    }

    private static String decimals(double value, int digits) {
        return String.format(Locale.ROOT, "%." + digits + "f", value);
    }
}

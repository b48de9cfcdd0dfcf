package benchpace.words;

import benchpace.units.TemperatureUnit;
import java.util.Locale;

/** Temperatures in words; {@code static/js/degrees.js} says the same. */
public final class Degrees {
    private Degrees() { }

    /** "54 °C", "54.5 °C". */
    public static String celsius(double celsius) {
        return plain(celsius) + " °C";
    }

    /** "54 °C (129 °F)". */
    static String both(double celsius) {
        return celsius(celsius) + " (" + Math.round(fahrenheit(celsius)) + " °F)";
    }

    static double fahrenheit(double celsius) {
        return TemperatureUnit.FAHRENHEIT.fromBase(celsius);
    }

    /** To a tenth, without a trailing nought. */
    public static String plain(double value) {
        String tenths = String.format(Locale.ROOT, "%.1f", value);
        return tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths;
    }
}

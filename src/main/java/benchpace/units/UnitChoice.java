package benchpace.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The units somebody reads and types in. Figures are kept in grams, millilitres and degrees Celsius whatever is chosen;
 * this says how they are written, and what a bare number means.
 *
 * @param mass        gram or ounce; from a kilogram or a pound on the larger one is written
 * @param temperature the scale
 * @param volume      millilitre, or one of the two fluid ounces
 */
public record UnitChoice(MassUnit mass, TemperatureUnit temperature, VolumeUnit volume) {
    public static final UnitChoice METRIC =
            new UnitChoice(MassUnit.GRAM, TemperatureUnit.CELSIUS, VolumeUnit.MILLILITRE);
    public static final UnitChoice NORTH_AMERICAN =
            new UnitChoice(MassUnit.OUNCE, TemperatureUnit.FAHRENHEIT, VolumeUnit.US_FLUID_OUNCE);

    public UnitChoice {
        if (mass != MassUnit.GRAM && mass != MassUnit.OUNCE) {
            throw new IllegalArgumentException("weights are chosen in grams or ounces, not in " + mass.symbol());
        }
        if (volume == VolumeUnit.LITRE || volume == VolumeUnit.CENTILITRE) {
            throw new IllegalArgumentException("volumes are chosen in ml or one of the fluid ounces, not in "
                    + volume.symbol());
        }
    }

    /** "62.3 g", "227 g", "1.36 kg"; "8 oz", "0.22 oz", "3 lb". @param grams 0 or more */
    public String mass(double grams) {
        if (mass == MassUnit.OUNCE) {
            boolean pounds = rounded(MassUnit.OUNCE.fromBase(grams), 2).compareTo(BigDecimal.valueOf(16)) >= 0;
            return written(grams, pounds ? MassUnit.POUND : MassUnit.OUNCE, 2);
        }
        boolean kilograms = rounded(grams, 0).compareTo(BigDecimal.valueOf(1000)) >= 0;
        boolean fine = rounded(grams, 1).compareTo(BigDecimal.valueOf(100)) < 0;
        return kilograms ? written(grams, MassUnit.KILOGRAM, 2) : written(grams, MassUnit.GRAM, fine ? 1 : 0);
    }

    /** "237 ml", "8 US fl oz". @param millilitres 0 or more */
    public String volume(double millilitres) {
        if (volume != VolumeUnit.MILLILITRE) {
            return written(millilitres, volume, 2);
        }
        boolean fine = rounded(millilitres, 1).compareTo(BigDecimal.valueOf(100)) < 0;
        return written(millilitres, volume, fine ? 1 : 0);
    }

    /** "62 °C", "143.6 °F". */
    public String temperature(double celsius) {
        return written(celsius, temperature, 1);
    }

    /** A difference of two temperatures: "5 °C", "9 °F". There is no 32 in it. */
    public String difference(double kelvin) {
        return plain(rounded(temperature.differenceFromKelvin(kelvin), 1)) + " " + temperature.symbol();
    }

    private static String written(double base, Unit unit, int places) {
        return plain(rounded(unit.fromBase(base), places)) + " " + unit.symbol();
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }

    private static String plain(BigDecimal rounded) {
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}

package benchpace.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors of NIST Special Publication 811 (2008), appendix B.8, and what follows from them. Its tables set exact ones
 * in bold face and round the others. From memory, but for the thermal units, seen in a copy: "1 Btu IT =
 * 1.055056 E+03 J". The imperial gallon is that of the UK Units of Measurement Regulations 1995; from memory.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpecialPublication811Test {
    private static final double LAST_BITS = 1e-12;

    @Test void a_pound_is_a_whole_number_of_grains_of_the_kilogram_and_sixteen_ounces() {
        assertThat(MassUnit.POUND.toBase(1)).isEqualTo(453.59237);
        assertThat(MassUnit.OUNCE.toBase(1)).isEqualTo(28.349523125);
        assertThat(MassUnit.OUNCE.toBase(16)).isEqualTo(MassUnit.POUND.toBase(1));
        assertThat(MassUnit.OUNCE.toBase(48)).isEqualTo(MassUnit.POUND.toBase(3));
    }

    @ParameterizedTest
    @CsvSource({"POUND,3,1360.77711", "POUND,10,4535.9237", "POUND,19,8618.25503", "OUNCE,8,226.796185",
        "KILOGRAM,1.5,1500", "GRAM,7,7"})
    void worked_masses(MassUnit unit, double value, double grams) {
        assertThat(unit.toBase(value)).isCloseTo(grams, within(grams * LAST_BITS));
        assertThat(unit.fromBase(grams)).isCloseTo(value, within(value * LAST_BITS));
    }

    /** A US gallon is 231 cubic inches of 25.4 mm, an imperial one 4.54609 l. */
    @Test void the_two_fluid_ounces_come_from_their_gallons_and_differ() {
        assertThat(VolumeUnit.US_FLUID_OUNCE.toBase(128)).isCloseTo(231 * Math.pow(2.54, 3), within(1e-9));
        assertThat(VolumeUnit.IMPERIAL_FLUID_OUNCE.toBase(160)).isCloseTo(4546.09, within(1e-9));
        assertThat(VolumeUnit.US_FLUID_OUNCE.toBase(1)).isEqualTo(29.5735295625);
        assertThat(VolumeUnit.IMPERIAL_FLUID_OUNCE.toBase(1)).isEqualTo(28.4130625);
        assertThat(VolumeUnit.US_FLUID_OUNCE.toBase(1) / VolumeUnit.IMPERIAL_FLUID_OUNCE.toBase(1))
                .isCloseTo(1.041, within(0.0005));
        assertThat(VolumeUnit.US_FLUID_OUNCE.toBase(8)).isCloseTo(236.588, within(0.0005));
    }

    /** 8 oz of wax take 252.0 ml (8.52 US fl oz) solid at 0.90 g/ml, and 290.8 ml (9.83) liquid at 0.78. */
    @Test void eight_ounces_of_wax_are_more_than_eight_fluid_ounces() {
        double grams = MassUnit.OUNCE.toBase(8);

        assertThat(grams / 0.90).isCloseTo(252.0, within(0.05));
        assertThat(VolumeUnit.US_FLUID_OUNCE.fromBase(grams / 0.90)).isCloseTo(8.52, within(0.005));
        assertThat(grams / 0.78).isCloseTo(290.8, within(0.05));
        assertThat(VolumeUnit.US_FLUID_OUNCE.fromBase(grams / 0.78)).isCloseTo(9.83, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"60,140", "65,149", "75,167", "80,176", "85,185", "57.222222222222,135", "71.111111111111,160",
        "82.222222222222,180", "-40,-40", "0,32", "100,212"})
    void temperatures(double celsius, double fahrenheit) {
        assertThat(TemperatureUnit.FAHRENHEIT.toBase(fahrenheit)).isCloseTo(celsius, within(1e-11));
        assertThat(TemperatureUnit.FAHRENHEIT.fromBase(celsius)).isCloseTo(fahrenheit, within(1e-11));
    }

    /** A tolerance of 5 °F is 2.778 K, and not the -15 °C that five degrees Fahrenheit would be as a temperature. */
    @Test void a_difference_of_temperatures_has_no_thirty_two_in_it() {
        assertThat(TemperatureUnit.FAHRENHEIT.differenceToKelvin(5)).isCloseTo(2.778, within(0.0005));
        assertThat(TemperatureUnit.FAHRENHEIT.toBase(5)).isCloseTo(-15, within(1e-9));
        assertThat(TemperatureUnit.FAHRENHEIT.differenceFromKelvin(5)).isEqualTo(9);
        assertThat(TemperatureUnit.CELSIUS.differenceToKelvin(5)).isEqualTo(5);
    }

    /** 1 W is 3.412142 BTU/h; 1 BTU is 0.293071 Wh; the table prints 1.055 056 E+03 J. */
    @Test void thermal_units_are_the_international_ones() {
        assertThat(PowerUnit.JOULES_PER_BTU).isEqualTo(1055.05585262);
        assertThat(Math.rint(PowerUnit.JOULES_PER_BTU * 1000) / 1e6).isEqualTo(1.055056);
        assertThat(PowerUnit.BTU_PER_HOUR.fromBase(1)).isCloseTo(3.412142, within(5e-7));
        assertThat(PowerUnit.BTU_PER_HOUR.toBase(1)).isCloseTo(0.293071, within(5e-7));
        assertThat(PowerUnit.JOULES_PER_BTU).isCloseTo(1054.350, within(1054.350 * 0.001));
        assertThat(PowerUnit.KILOWATT.toBase(1) * 3600).isEqualTo(3.6e6);
    }
}

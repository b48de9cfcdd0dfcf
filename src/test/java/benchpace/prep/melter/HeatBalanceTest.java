package benchpace.prep.melter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The heat balance Q = m (cs (Tm - T0) + L + cl (T1 - Tm)), t = Q / (efficiency P), with a wax that melts at one point:
 * cs = 2.0, cl = 2.2 kJ/(kg K), L = 200 kJ/kg, Tm = 55 °C, from 20 to 80 °C. The expected figures were computed from
 * that formula apart from this program; the wax's numbers lie in the ranges of encyclopaedic texts (specific heat 2.14
 * to 2.9 kJ/(kg K), second hand; latent heat 200 to 220 kJ/kg, from memory).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HeatBalanceTest {
    private static final double GRAMS_PER_POUND = 453.59237;
    private static final Melting PARAFFIN = new Melting(new WaxHeat(2000, 2200, 200_000, 55, 55), 20, 80);

    private static Melting paraffin(double cs, double latent, double cl) {
        return new Melting(new WaxHeat(cs, cl, latent, 55, 55), 20, 80);
    }

    @Test void a_kilogram_takes_325_kilojoules_of_which_three_fifths_only_melt_it() {
        assertThat(PARAFFIN.kilojoules(1000)).isCloseTo(325, within(1e-9));
        assertThat(200 / PARAFFIN.kilojoules(1000)).isCloseTo(0.615, within(0.0005));
        assertThat(325.0 / 125).as("without the latent heat it would be 125 kJ, far too short").isEqualTo(2.6);
    }

    @Test void it_takes_more_than_water_does() {
        assertThat(PARAFFIN.kilojoules(1000)).isGreaterThan(4.186 * 60);
    }

    @ParameterizedTest(name = "{0} g: {1} kJ, {2} min at 1000 W, {3} min at 1500 W")
    @CsvSource({"1000, 325.0, 5.42, 3.61", "1360.77711, 442.3, 7.37, 4.91", "4535.9237, 1474.2, 24.57, 16.38",
        "8618.25503, 2800.9, 46.68, 31.12"})
    void so_much_takes_so_long(double grams, double kilojoules, double at1000, double at1500) {
        assertThat(PARAFFIN.kilojoules(grams)).isCloseTo(kilojoules, within(0.06));
        assertThat(PARAFFIN.minutes(grams, 1000, 1)).isCloseTo(at1000, within(0.006));
        assertThat(PARAFFIN.minutes(grams, 1500, 1)).isCloseTo(at1500, within(0.006));
    }

    @ParameterizedTest(name = "{0} W at 70 %: {1} min")
    @CsvSource({"1000, 66.7", "1500, 44.5"})
    void what_does_not_reach_the_wax_takes_longer(double watts, double minutes) {
        assertThat(PARAFFIN.minutes(19 * GRAMS_PER_POUND, watts, 0.7)).isCloseTo(minutes, within(0.06));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}: {3} min at 1000 W, {4} min at 1500 W")
    @CsvSource({"1700, 150000, 2000, 37.3, 24.8", "2900, 220000, 2400, 54.8, 36.5"})
    void low_and_high_numbers_of_a_wax_bound_it(double cs, double latent, double cl, double at1000, double at1500) {
        Melting melting = paraffin(cs, latent, cl);

        assertThat(melting.minutes(19 * GRAMS_PER_POUND, 1000, 1)).isCloseTo(at1000, within(0.06));
        assertThat(melting.minutes(19 * GRAMS_PER_POUND, 1500, 1)).isCloseTo(at1500, within(0.06));
    }

    @Test void cold_wax_in_hot_wax_meets_at_the_mean_enthalpy_not_at_the_mean_temperature() {
        TopUp topUp = PARAFFIN.topUp(10 * GRAMS_PER_POUND, 9 * GRAMS_PER_POUND);

        assertThat(topUp.mixCelsius()).as("the mean temperature would be 51.6").isEqualTo(55);
        assertThat(topUp.liquidFraction()).isCloseTo(0.505, within(0.0005));
        assertThat(topUp.kilojoules()).isCloseTo(1326.8, within(0.06));
        assertThat(topUp.minutes(1000, 1)).isCloseTo(22.1, within(0.06));
        assertThat(topUp.minutes(1000, 0.7)).isCloseTo(31.6, within(0.06));
    }

    @Test void the_shops_stop_watch_gives_the_efficiency_with_which_the_time_comes_out() {
        double efficiency = PARAFFIN.efficiency(8600, 1000, 70);

        assertThat(efficiency).isCloseTo(8.6 * 325_000 / (1000 * 70 * 60), within(1e-12));
        assertThat(PARAFFIN.minutes(8600, 1000, efficiency)).isCloseTo(70, within(1e-9));
        assertThat(PARAFFIN.efficiency(8600, 1000, 30)).as("no melter is that quick").isGreaterThan(1);
    }

    @Test void a_melting_range_takes_the_mean_specific_heat_beside_the_latent_heat() {
        Melting soy = new Melting(new WaxHeat(2100, 2200, 135_000, 38, 50), 21, 62);

        assertThat(soy.joulesPerKilogram()).isCloseTo(2100 * 17 + 135_000 + 2150 * 12 + 2200 * 12, within(1e-6));
    }

    @Test void temperature_and_enthalpy_are_each_others_inverse() {
        WaxHeat soy = new WaxHeat(2100, 2200, 135_000, 38, 50);

        for (double celsius = -10; celsius <= 120; celsius += 0.5) {
            assertThat(soy.celsius(soy.enthalpy(celsius))).isCloseTo(celsius, within(1e-9));
        }
        assertThat(soy.liquidFraction(soy.enthalpy(44))).isCloseTo(0.5, within(1e-12));
    }

    @Test void what_is_not_solid_first_or_not_molten_last_is_no_melting() {
        WaxHeat soy = new WaxHeat(2100, 2200, 135_000, 38, 50);

        assertThatThrownBy(() -> new Melting(soy, 39, 62)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Melting(soy, 21, 49.9)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Melting(soy, Double.NaN, 60)).isInstanceOf(IllegalArgumentException.class);
    }
}

package benchpace.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as the chosen units write them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnitChoiceTest {
    private static final UnitChoice IMPERIAL =
            new UnitChoice(MassUnit.OUNCE, TemperatureUnit.CELSIUS, VolumeUnit.IMPERIAL_FLUID_OUNCE);

    @ParameterizedTest
    @CsvSource({"6.2264,6.2 g,0.22 oz", "62.25,62.3 g,2.2 oz", "226.796185,227 g,8 oz", "99.96,100 g,3.53 oz",
        "999.6,1 kg,2.2 lb", "1360.77711,1.36 kg,3 lb", "453.59237,454 g,1 lb", "453.5,454 g,1 lb", "0,0 g,0 oz"})
    void masses(double grams, String metric, String ounces) {
        assertThat(UnitChoice.METRIC.mass(grams)).isEqualTo(metric);
        assertThat(UnitChoice.NORTH_AMERICAN.mass(grams)).isEqualTo(ounces);
    }

    @Test void volumes_name_their_ounce() {
        assertThat(UnitChoice.METRIC.volume(236.588)).isEqualTo("237 ml");
        assertThat(UnitChoice.METRIC.volume(9.04)).isEqualTo("9 ml");
        assertThat(UnitChoice.NORTH_AMERICAN.volume(236.5882365)).isEqualTo("8 US fl oz");
        assertThat(IMPERIAL.volume(284.130625)).isEqualTo("10 imp fl oz");
    }

    @Test void temperatures_and_their_differences() {
        assertThat(UnitChoice.METRIC.temperature(62.04)).isEqualTo("62 °C");
        assertThat(UnitChoice.NORTH_AMERICAN.temperature(62)).isEqualTo("143.6 °F");
        assertThat(UnitChoice.METRIC.temperature(-0.01)).isEqualTo("0 °C");
        assertThat(UnitChoice.METRIC.difference(5)).isEqualTo("5 °C");
        assertThat(UnitChoice.NORTH_AMERICAN.difference(5)).isEqualTo("9 °F");
    }

    @Test void a_scale_is_chosen_in_its_small_unit() {
        assertThatThrownBy(() -> new UnitChoice(MassUnit.POUND, TemperatureUnit.CELSIUS, VolumeUnit.MILLILITRE))
                .hasMessage("weights are chosen in grams or ounces, not in lb");
        assertThatThrownBy(() -> new UnitChoice(MassUnit.GRAM, TemperatureUnit.CELSIUS, VolumeUnit.LITRE))
                .hasMessage("volumes are chosen in ml or one of the fluid ounces, not in l");
    }

    /** There and back, every unit; and what is written is read again as itself, within what was rounded away. */
    @Test void every_figure_comes_back() {
        Random random = new Random(11);
        for (int i = 0; i < 2_000; i++) {
            double value = Math.exp(random.nextDouble() * 16 - 4);
            for (Unit unit : units()) {
                assertThat(unit.fromBase(unit.toBase(value))).isCloseTo(value, within(1e-12 * value + 1e-12));
            }
            for (UnitChoice choice : List.of(UnitChoice.METRIC, UnitChoice.NORTH_AMERICAN, IMPERIAL)) {
                assertThat(Typed.mass(choice.mass(value), choice).value())
                        .isCloseTo(value, within(0.5 + value * 0.006));
                assertThat(Typed.volume(choice.volume(value), choice).value())
                        .isCloseTo(value, within(0.51));
                double celsius = random.nextDouble() * 200 - 40;
                assertThat(Typed.temperature(choice.temperature(celsius), choice).value())
                        .isCloseTo(celsius, within(0.051));
            }
        }
    }

    private static List<Unit> units() {
        return java.util.stream.Stream.<Unit[]>of(MassUnit.values(), VolumeUnit.values(), TemperatureUnit.values(),
                PowerUnit.values()).flatMap(java.util.Arrays::stream).toList();
    }
}

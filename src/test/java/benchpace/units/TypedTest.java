package benchpace.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people type for a figure. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TypedTest {
    private static final UnitChoice METRIC = UnitChoice.METRIC;
    private static final UnitChoice OUNCES = UnitChoice.NORTH_AMERICAN;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"8 oz | 226.796185", "8oz. | 226.796185", "8 Ounces | 226.796185",
        "226,8 g | 226.8", "226.8 | 226.8", "1.5 kg | 1500", "3 lb | 1360.77711", "3 lbs 4 oz | 1474.1752025",
        "8 1/2 oz | 240.970946563", "1/2 lb | 226.796185", "½ lb | 226.796185", "0 | 0"})
    void a_weight_is_read(String text, double grams) {
        assertThat(Typed.mass(text, METRIC).value()).isCloseTo(grams, within(1e-9));
    }

    @Test void a_bare_number_is_in_the_chosen_unit_and_says_so_from_then_on() {
        assertThat(Typed.mass("8", OUNCES)).isEqualTo(new Typed(MassUnit.OUNCE.toBase(8), "8 oz"));
        assertThat(Typed.mass("8", METRIC)).isEqualTo(new Typed(8, "8 g"));
        assertThat(Typed.temperature("145", OUNCES).text()).isEqualTo("145 °F");
        assertThat(Typed.temperature("62", METRIC)).isEqualTo(new Typed(62, "62 °C"));
        assertThat(Typed.mass("8 ounces", METRIC).text()).isEqualTo("8 ounces");
    }

    @ParameterizedTest
    @ValueSource(strings = {"8 fl oz", "8 fl. oz.", "8 US fl oz", "8 imp fl oz", "8 floz", "8 fluid ounces"})
    void a_fluid_ounce_is_no_weight(String text) {
        assertThatThrownBy(() -> Typed.mass(text, OUNCES)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"" + text + "\" is a volume, not a weight: give a number and grams, kg, oz or lb");
    }

    @Test void an_ounce_of_weight_is_no_volume_and_gives_no_226_of_anything() {
        assertThatThrownBy(() -> Typed.volume("8 oz", OUNCES)).hasMessage(
                "\"8 oz\" is a weight, not a volume: give a number and ml, US fl oz or imp fl oz");
    }

    @Test void a_plain_fluid_ounce_asks_which_unless_one_is_chosen() {
        assertThatThrownBy(() -> Typed.volume("8 fl oz", METRIC)).hasMessage(
                "\"8 fl oz\" can be two volumes, which differ by 4 %: write US fl oz or imp fl oz");
        assertThat(Typed.volume("8 fl oz", OUNCES))
                .isEqualTo(new Typed(VolumeUnit.US_FLUID_OUNCE.toBase(8), "8 US fl oz"));
        UnitChoice imperial = new UnitChoice(MassUnit.GRAM, TemperatureUnit.CELSIUS, VolumeUnit.IMPERIAL_FLUID_OUNCE);
        assertThat(Typed.volume("8 fl oz", imperial).value()).isEqualTo(VolumeUnit.IMPERIAL_FLUID_OUNCE.toBase(8));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"8 US fl oz | 236.5882365", "8 fl oz (US) | 236.5882365",
        "8 U.S. fl. oz. | 236.5882365", "10 imp fl oz | 284.130625", "10 UK fl oz | 284.130625", "25 cl | 250",
        "0.25 l | 250", "250 ml | 250", "250 mL | 250"})
    void a_volume_is_read(String text, double millilitres) {
        assertThat(Typed.volume(text, METRIC).value()).isCloseTo(millilitres, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"145 °F | 62.777777778", "145F | 62.777777778", "62.5 °C | 62.5",
        "-40 F | -40", "\u221240 c | -40", "145 deg F | 62.777777778", "62 º C | 62"})
    void a_temperature_is_read(String text, double celsius) {
        assertThat(Typed.temperature(text, METRIC).value()).isCloseTo(celsius, within(1e-8));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1000 | 1000", "1.5 kW | 1500", "800 watts | 800",
        "5000 BTU/h | 1465.355351"})
    void what_a_plate_says_is_read(String text, double watts) {
        assertThat(Typed.watts(text, METRIC).value()).isCloseTo(watts, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "`` | nothing is typed: give a number and grams, kg, oz or lb",
        "a lot | \"a lot\" is not a weight: give a number and grams, kg, oz or lb",
        "8 stone | \"8 stone\" is not a weight: give a number and grams, kg, oz or lb",
        "8 °F | \"8 °F\" is a temperature, not a weight: give a number and grams, kg, oz or lb",
        "8 oz 3 lb | \"8 oz 3 lb\" is more than one figure: give a number and grams, kg, oz or lb",
        "8 9 | \"8 9\" is more than one figure: give a number and grams, kg, oz or lb",
        "-8 oz | \"-8 oz\" is below zero: give a number and grams, kg, oz or lb",
        "1/0 oz | \"1/0 oz\" is not a weight: give a number and grams, kg, oz or lb",
        "1,361 g | \"1,361 g\" can be a thousand and more or one and a part: write it without a comma",
        "NaN | \"NaN\" is not a weight: give a number and grams, kg, oz or lb",
        "1e5 | \"1e5\" is not a weight: give a number and grams, kg, oz or lb"})
    void what_is_no_weight_is_refused_in_one_sentence(String text, String sentence) {
        assertThatThrownBy(() -> Typed.mass(text, METRIC)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage(sentence);
    }

    @Test void a_text_without_end_is_refused() {
        assertThatThrownBy(() -> Typed.mass("9".repeat(100_000), METRIC))
                .hasMessage("that is longer than 40 characters: give a number and grams, kg, oz or lb");
    }
}

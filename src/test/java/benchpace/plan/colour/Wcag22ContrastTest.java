package benchpace.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Relative luminance and contrast ratio as WCAG 2.2 defines them (w3.org/TR/WCAG22, "contrast ratio" and "relative
 * luminance"); #767676 and #949494 on white are its own examples, the other values are computed from the definition.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class Wcag22ContrastTest {
    @ParameterizedTest
    @CsvSource({"#000000, 21", "#767676, 4.5422", "#777777, 4.4781", "#949494, 3.0335", "#959595, 2.9953",
        "#595959, 7.0047", "#5a5a5a, 6.8969", "#ff0000, 3.9985", "#00ff00, 1.3722", "#0000ff, 8.5925",
        "#808080, 3.9494", "#ffff00, 1.0738", "#ffffff, 1"})
    void on_white(String colour, double ratio) {
        assertThat(Srgb.of(colour).contrast(Srgb.WHITE)).isCloseTo(ratio, within(5e-5));
        assertThat(Srgb.WHITE.contrast(Srgb.of(colour))).isCloseTo(ratio, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"#ff0000, 5.2520", "#808080, 5.3172", "#ffff00, 19.5560"})
    void on_black(String colour, double ratio) {
        assertThat(Srgb.of(colour).contrast(Srgb.BLACK)).isCloseTo(ratio, within(5e-5));
    }

    @Test void a_colour_is_written_with_a_hash_and_six_figures() {
        assertThat(Srgb.of("#1F4d43")).isEqualTo(new Srgb(31, 77, 67)).hasToString("#1f4d43");
        for (String odd : new String[] {"", "#1f4d4", "1f4d43", "#1f4d4g", "#1f4d43 ", "#1f4d43\n"}) {
            assertThatIllegalArgumentException().isThrownBy(() -> Srgb.of(odd)).withMessageContaining("#1f4d43");
        }
        assertThatIllegalArgumentException().isThrownBy(() -> new Srgb(0, 256, 0)).withMessageContaining("0 to 255");
    }
}

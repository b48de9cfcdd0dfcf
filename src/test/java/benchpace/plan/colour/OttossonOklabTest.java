package benchpace.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Björn Ottosson, "A perceptual color space for image processing", 2020, against published values: the reference tests
 * of the web platform for CSS Color 4 (web-platform-tests, css/css-color, oklab-001 to 007 and oklch-001 to 007), each
 * a colour and its sRGB in percent; and the primaries as CSS Color 4's sample code converts them.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OttossonOklabTest {
    /** One part of 255 and what rounding takes. */
    private static final double PERCENT = 0.2;

    @ParameterizedTest
    @CsvSource({"0.51975, -0.1403, 0.10768, 0, 50.196, 0", "0, 0, 0, 0, 0, 0", "1, 0, 0, 100, 100, 100",
        "0.5, 0.05, 0, 48.477, 34.29, 38.412", "0.7, -0.1, 0, 29.264, 70.096, 63.017",
        "0.7, 0, 0.125, 73.942, 60.484, 19.65", "0.55, 0, -0.2, 27.888, 38.072, 89.414"})
    void the_reference_tests_of_oklab_come_out(double lightness, double a, double b, double red, double green,
                                               double blue) {
        shown(new Oklab(lightness, a, b).onScreen(), red, green, blue);
    }

    @ParameterizedTest
    @CsvSource({"0.51975, 0.17686, 142.495, 0, 50.196, 0", "0.5, 0.2, 0, 70.492, 2.351, 37.073",
        "0.5, 0.2, 270, 23.056, 31.73, 82.628", "0.8, 0.15, 160, 32.022, 85.805, 61.147",
        "0.55, 0.15, 345, 67.293, 27.791, 52.28"})
    void the_reference_tests_of_oklch_come_out(double lightness, double chroma, double hue, double red, double green,
                                               double blue) {
        shown(Oklab.ofHue(lightness, chroma, hue).onScreen(), red, green, blue);
    }

    private static void shown(Srgb colour, double red, double green, double blue) {
        assertThat(colour.red() / 2.55).isCloseTo(red, within(PERCENT));
        assertThat(colour.green() / 2.55).isCloseTo(green, within(PERCENT));
        assertThat(colour.blue() / 2.55).isCloseTo(blue, within(PERCENT));
    }

    @ParameterizedTest
    @CsvSource({"#ff0000, 0.62796, 0.25768, 29.234", "#ffff00, 0.96798, 0.21101, 109.769",
        "#00ff00, 0.86644, 0.29483, 142.495", "#00ffff, 0.9054, 0.15455, 194.769",
        "#0000ff, 0.45201, 0.31321, 264.052", "#ffa500, 0.79269, 0.17103, 70.67"})
    void the_primaries_have_the_lightness_chroma_and_hue_that_are_published(String hex, double lightness, double chroma,
                                                                           double hue) {
        Oklab seen = Oklab.of(Srgb.of(hex));

        assertThat(seen.lightness()).isCloseTo(lightness, within(5e-5));
        assertThat(seen.chroma()).isCloseTo(chroma, within(5e-5));
        assertThat(seen.hue()).isCloseTo(hue, within(0.02));
    }

    @Test void there_and_back_every_colour_of_a_grid_is_the_same() {
        for (int red = 0; red < 256; red += 15) {
            for (int green = 0; green < 256; green += 15) {
                for (int blue = 0; blue < 256; blue += 15) {
                    Srgb colour = new Srgb(red, green, blue);
                    assertThat(Oklab.of(colour).onScreen()).isEqualTo(colour);
                }
            }
        }
    }
}

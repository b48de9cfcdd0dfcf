package benchpace.prep.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.prep.TestKits;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The figures of a label. 16 CFR 500.21(a)(2): the panel of a cylinder is "40 percent of the product of the height ...
 * times the circumference" (read); the sizes of 500.21(b) and of Directive 76/211/EEC, annex I 3.1, are from memory.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FairPackagingTest {
    @ParameterizedTest(name = "{0} in wide, {1} in high: {2} square inches")
    @CsvSource({"3, 3.5, 13.19", "2.5, 2.5, 7.85"})
    void the_panel_of_a_cylinder_is_two_fifths_of_its_side(double diameter, double height, double squareInches) {
        assertThat(LabelFigures.panel(diameter, height)).isCloseTo(squareInches, within(0.006));
    }

    @ParameterizedTest(name = "{0} square inches: {1}/16 in")
    @CsvSource({"5, 1", "5.01, 2", "7.85, 2", "13.19, 2", "25, 2", "25.01, 3", "100, 3", "100.01, 4", "400, 4",
        "400.01, 8"})
    void letters_grow_with_the_panel(double squareInches, int sixteenths) {
        assertThat(LabelFigures.typeSixteenths(squareInches)).isEqualTo(sixteenths);
    }

    @ParameterizedTest(name = "{0} g: {1} mm")
    @CsvSource({"50, 2", "50.1, 3", "200, 3", "226, 4", "1000, 4", "1000.1, 6"})
    void figures_grow_with_the_quantity(double grams, int millimetres) {
        assertThat(LabelFigures.mark(grams)).isEqualTo(millimetres);
    }

    @Test void eight_ounces_are_eight_ounces_and_226_grams_never_227() {
        LabelFigures figures = LabelFigures.of(TestKits.candle("c", TestKits.soy(), 226.796185, 0, 62));

        assertThat(figures.netTenthsOfAnOunce()).isEqualTo(80);
        assertThat(figures.netGrams()).isEqualTo(226);
    }

    @Test void regions_are_those_of_the_venues_circuits_or_all() {
        Circuit wall = new Circuit("w", "W", OptionalDouble.empty(), OptionalDouble.empty(),
                Optional.of(Circuit.Rule.SCHUKO_16));
        Kit kit = new Kit(OptionalDouble.empty(), 0, 0, OptionalInt.empty(), Loads.NONE, List.of(), List.of(),
                List.of(wall), List.of());

        assertThat(LabelRegion.of(kit)).containsExactly(LabelRegion.EUROPEAN_UNION);
        assertThat(LabelRegion.of(Kit.NONE)).containsExactly(LabelRegion.values());
    }
}

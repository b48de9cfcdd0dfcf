package benchpace.prep.melter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.Candle;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.prep.TestKits;
import benchpace.prep.sheet.PrepSheet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What candle makers say of a melter of nineteen pounds and half a pound of wax a seat (common practice, no source),
 * against arithmetic: a fill serves exactly 38 seats, or 34 if two pounds stay in it.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TradePracticeTest {
    private static final double POUND = 453.59237;
    /** Half a pound of wax without fragrance. */
    private static final Candle EIGHT_OUNCES = TestKits.candle("eight-ounces", TestKits.soy(), POUND / 2, 0, 62);

    private static MelterLine line(int seats, double heelPounds, Melter.ScentedIn where, Candle candle) {
        Melter melter = new Melter("pot", "Pot", "soy", OptionalDouble.of(19 * POUND), heelPounds * POUND,
                OptionalDouble.of(1000), OptionalDouble.of(0.7), where);
        Kit kit = new Kit(OptionalDouble.of(20), 0, 60, OptionalInt.of(120), Loads.NONE, List.of(melter), List.of(),
                List.of(), List.of());
        return PrepSheet.of(TestKits.plan(kit, candle), seats, Map.of()).melters().get(0);
    }

    @ParameterizedTest(name = "{0} seats, {1} lb stay: {2} fills")
    @CsvSource({"4, 0, 1", "12, 0, 1", "20, 0, 1", "38, 0, 1", "39, 0, 2", "40, 0, 2", "34, 2, 1", "35, 2, 2",
        "19, 9.5, 1", "20, 9.5, 2", "38, 9.5, 2", "39, 9.5, 3"})
    void a_fill_serves_so_many_seats(int seats, double heelPounds, int fills) {
        assertThat(line(seats, heelPounds, Melter.ScentedIn.JUG, EIGHT_OUNCES).fills()).hasValue(fills);
    }

    @Test void one_fill_serves_six_classes_of_six_or_five_if_two_pounds_stay() {
        assertThat(line(36, 0, Melter.ScentedIn.JUG, EIGHT_OUNCES).fills()).hasValue(1);
        assertThat(line(30, 2, Melter.ScentedIn.JUG, EIGHT_OUNCES).fills()).hasValue(1);
        assertThat(line(36, 2, Melter.ScentedIn.JUG, EIGHT_OUNCES).fills()).hasValue(2);
    }

    @Test void the_second_fill_comes_after_38_seats_and_pouring_stops_meanwhile() {
        MelterLine forty = line(40, 0, Melter.ScentedIn.JUG, EIGHT_OUNCES);
        Refill second = forty.refills().get(0);

        assertThat(forty.refills()).hasSize(1);
        assertThat(second.afterSeats()).isEqualTo(38);
        assertThat(second.topUp().coldGrams()).isCloseTo(POUND, within(1e-6));
        assertThat(second.minutes().getAsDouble()).isCloseTo(
                forty.melting().orElseThrow().minutes(POUND, 1000, 0.7), within(1e-9));
    }

    @Test void what_stays_in_it_is_molten_already_and_only_the_cold_wax_takes_heat() {
        MelterLine forty = line(40, 2, Melter.ScentedIn.JUG, EIGHT_OUNCES);
        TopUp second = forty.refills().get(0).topUp();

        assertThat(forty.refills().get(0).afterSeats()).isEqualTo(34);
        assertThat(second.hotGrams()).isCloseTo(2 * POUND, within(1e-6));
        assertThat(second.coldGrams()).isCloseTo(3 * POUND, within(1e-6));
        assertThat(second.mixCelsius()).isStrictlyBetween(20.0, 62.0);
    }

    @Test void fragrance_that_joins_in_the_jug_is_no_load_of_the_melter() {
        Candle scented = TestKits.candle("scented", TestKits.soy(), POUND / 2 * 1.08, 0.08 / 1.08, 62);

        assertThat(line(6, 0, Melter.ScentedIn.JUG, scented).neededGrams().getAsDouble())
                .isCloseTo(3 * POUND, within(1e-9));
        assertThat(line(6, 0, Melter.ScentedIn.MELTER, scented).neededGrams().getAsDouble())
                .isCloseTo(3.24 * POUND, within(1e-9));
    }

    @Test void a_melter_of_next_to_nothing_is_counted_and_its_fills_are_not_all_listed() {
        Melter thimble = new Melter("pot", "Pot", "soy", OptionalDouble.of(1), 0.999999, OptionalDouble.of(1000),
                OptionalDouble.of(0.7), Melter.ScentedIn.JUG);
        Kit kit = new Kit(OptionalDouble.of(20), 0, 60, OptionalInt.empty(), Loads.NONE, List.of(thimble), List.of(),
                List.of(), List.of());

        MelterLine line = PrepSheet.of(TestKits.plan(kit, EIGHT_OUNCES), 60, Map.of()).melters().get(0);

        assertThat(line.fills().getAsLong()).isGreaterThan(1_000_000_000L);
        assertThat(line.refills()).hasSize(MelterLine.MOST_REFILLS);
    }
}

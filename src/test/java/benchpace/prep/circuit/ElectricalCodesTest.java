package benchpace.prep.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.Circuit.Rule;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules of thumb of the regions. North America: NEC article 100, "3 hours or more"; 210.20(A), "not less than the
 * noncontinuous load plus 125 percent of the continuous load" (both second hand); 210.23(A)(1), one appliance with cord
 * and plug at most 80 % (from memory). Britain: BS 1363, "maximum load for a plug socket is 3000 watts (13 Amps)".
 * Schuko: "Stecker und Steckdosen sind tatsächlich für 16 A geeignet, allerdings nicht für Dauerbelastung", at most
 * 10 A a socket for long (elektrofachkraft.de, 2021); tested "für eine Stunde" (second hand).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ElectricalCodesTest {
    private static Plugged of(double amps, double minutes) {
        return new Plugged("a", "A", amps * 120, amps, minutes, false);
    }

    private static Plugged watts(double watts, double volts, double minutes) {
        return new Plugged("w", "W", watts, watts / volts, minutes, true);
    }

    private static Verdict verdict(Rule rule, double amps, Plugged... plugged) {
        return CircuitRule.verdict(rule, amps, List.of(plugged));
    }

    @ParameterizedTest(name = "{0} min: continuous {1}")
    @CsvSource({"179, false", "179.99, false", "180, true", "240, true"})
    void three_hours_are_continuous_and_a_minute_less_is_not(double minutes, boolean continuous) {
        assertThat(of(1, minutes).continuous()).isEqualTo(continuous);
        assertThat(CircuitRule.designAmps(Rule.NORTH_AMERICA, List.of(of(8, minutes))))
                .isCloseTo(continuous ? 10 : 8, within(1e-12));
    }

    @Test void two_hours_of_lead_and_two_of_class_count_together() {
        assertThat(of(1, 120 + 120).continuous()).isTrue();
    }

    @ParameterizedTest(name = "1000 W for hours and {0} A beside it: {1} A, {2}")
    @CsvSource({"4, 14.417, CLOSE", "5, 15.417, OVER"})
    void a_melter_and_something_else_on_fifteen_amperes(double other, double design, Verdict verdict) {
        List<Plugged> plugged = List.of(watts(1000, 120, 240), of(other, 30));

        assertThat(CircuitRule.designAmps(Rule.NORTH_AMERICA, plugged)).isCloseTo(design, within(0.0005));
        assertThat(CircuitRule.verdict(Rule.NORTH_AMERICA, 15, plugged)).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "{0} W for an hour on {1} A: {2}")
    @CsvSource({"1000, 15, FITS", "1200, 15, FITS", "1440, 15, FITS", "1500, 15, OVER", "1800, 15, OVER",
        "1920, 20, FITS", "1921, 20, OVER", "1500, 20, FITS"})
    void one_appliance_takes_at_most_four_fifths(double watts, double amps, Verdict verdict) {
        assertThat(verdict(Rule.NORTH_AMERICA, amps, watts(watts, 120, 60))).isEqualTo(verdict);
    }

    @Test void a_melter_of_1500_watts_needs_twenty_amperes_of_its_own() {
        assertThat(verdict(Rule.NORTH_AMERICA, 15, watts(1500, 120, 240))).isEqualTo(Verdict.OVER);
        assertThat(verdict(Rule.NORTH_AMERICA, 20, watts(1500, 120, 240))).isEqualTo(Verdict.FITS);
        assertThat(verdict(Rule.NORTH_AMERICA, 15, watts(1000, 120, 240))).isEqualTo(Verdict.FITS);
        assertThat(CircuitRule.over(Rule.NORTH_AMERICA, 15, List.of(watts(1500, 120, 240))))
                .hasSize(2).hasOnlyElementsOfTypes(CircuitReason.Together.class, CircuitReason.Alone.class);
    }

    @ParameterizedTest(name = "{0} A of 20 by the plain sum: {1}")
    @CsvSource({"17.9, FITS", "18, FITS", "18.01, CLOSE", "20, CLOSE", "20.01, OVER"})
    void beyond_nine_tenths_it_is_close_and_at_the_whole_still_not_over(double amps, Verdict verdict) {
        assertThat(verdict(Rule.PLAIN, 20, of(amps, 600))).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "{0} W: {1}")
    @CsvSource({"2990, FITS", "2991, OVER", "3000, OVER"})
    void a_british_plug_has_a_fuse_of_thirteen_amperes(double watts, Verdict verdict) {
        assertThat(verdict(Rule.UK_13, 32, watts(watts, 230, 600))).isEqualTo(verdict);
    }

    @Test void two_melters_of_1500_watts_are_too_much_for_one_lead_of_thirteen_amperes() {
        assertThat(verdict(Rule.UK_13, 13, watts(1500, 230, 60), watts(1500, 230, 60))).isEqualTo(Verdict.OVER);
        assertThat(verdict(Rule.UK_13, 32, watts(1500, 230, 60), watts(1500, 230, 60))).isEqualTo(Verdict.FITS);
    }

    @ParameterizedTest(name = "{0} W for {1} min: {2}")
    @CsvSource({"2300, 240, FITS", "2301, 60, FITS", "2301, 60.01, OVER", "2301, 61, OVER", "3680, 60, FITS",
        "3681, 10, OVER", "3680, 61, OVER"})
    void a_schuko_plug_carries_ten_amperes_for_longer_than_an_hour(double watts, double minutes, Verdict verdict) {
        assertThat(verdict(Rule.SCHUKO_16, 20, watts(watts, 230, minutes))).isEqualTo(verdict);
    }

    @Test void what_is_over_says_every_reason_with_its_numbers() {
        CircuitReason reason = CircuitRule.over(Rule.SCHUKO_16, 16, List.of(watts(2530, 230, 120))).get(0);

        assertThat(reason).isEqualTo(new CircuitReason.Alone("W", 11, 10, CircuitReason.AloneLimit.PLUG_FOR_LONG));
    }

    @Test void more_watts_or_a_longer_time_never_fit_better() {
        for (Rule rule : Rule.values()) {
            Verdict before = Verdict.FITS;
            for (double watts = 50; watts <= 6000; watts += 50) {
                Verdict after = verdict(rule, 20, watts(watts, 120, 200), of(2, 30));
                assertThat(after).isGreaterThanOrEqualTo(before)
                        .isGreaterThanOrEqualTo(verdict(rule, 20, watts(watts, 120, 20), of(2, 30)));
                before = after;
            }
            assertThat(before).isEqualTo(Verdict.OVER);
        }
    }

    @Test void nothing_plugged_in_fits() {
        assertThat(Arrays.stream(Rule.values()).map(rule -> verdict(rule, 10))).containsOnly(Verdict.FITS);
    }
}

package benchpace.prep.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Melter;
import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.Part;
import benchpace.prep.PrepProblem;
import benchpace.prep.TestKits;
import benchpace.prep.sheet.PrepSheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatHelpsTest {
    private static final Appliance KETTLE = TestKits.appliance("kettle", 1800, "wall-a", 10);
    private static final Appliance POT = TestKits.melterOn("pot-1", "pot", "wall-a", 240);

    private static Circuit circuit(String id, double amps) {
        return new Circuit(id, "Circuit " + id, OptionalDouble.of(120), OptionalDouble.of(amps),
                Optional.of(Circuit.Rule.NORTH_AMERICA));
    }

    private static PrepSheet sheet(List<Appliance> appliances, Circuit... circuits) {
        return sheet(TestKits.POT, appliances, circuits);
    }

    private static PrepSheet sheet(Melter melter, List<Appliance> appliances, Circuit... circuits) {
        Kit kit = new Kit(OptionalDouble.of(21), 5, 60, OptionalInt.of(120), TestKits.LOADS, List.of(melter),
                appliances, List.of(circuits), List.of());
        return PrepSheet.of(TestKits.plan(kit, TestKits.AMBER), 6, Map.of());
    }

    @Test void the_kettle_may_go_elsewhere_stay_off_meanwhile_or_the_pot_be_smaller() {
        CircuitLine over = sheet(List.of(KETTLE, POT), circuit("wall-a", 20), circuit("wall-b", 20)).circuits().get(0);

        assertThat(over.advice()).hasSize(4);
        assertThat(over.advice().get(0)).isInstanceOfSatisfying(CircuitAdvice.Move.class, move -> {
            assertThat(move.appliance()).isEqualTo("kettle");
            assertThat(move.designAmps()).isCloseTo(1.25 * 1000 / 120, within(1e-9));
            assertThat(move.otherAmps()).isCloseTo(15, within(1e-9));
            assertThat(move.verdict()).isEqualTo(Verdict.FITS);
        });
        assertThat(over.advice().get(2)).isEqualTo(
                new CircuitAdvice.KeepOff("kettle", "The kettle", 15, Verdict.FITS));
        assertThat(over.advice().get(3)).isInstanceOfSatisfying(CircuitAdvice.SmallerMelter.class, smaller -> {
            assertThat(smaller.watts()).isEqualTo(450);
            assertThat(smaller.designAmps()).isCloseTo(15 + 1.25 * 450 / 120, within(1e-9));
            assertThat(smaller.meltMinutes().getAsDouble()).isCloseTo(8.246098 / 0.45, within(1e-4));
        });
    }

    @Test void a_circuit_that_would_be_over_itself_is_not_advised() {
        CircuitLine over = sheet(List.of(KETTLE, POT, TestKits.appliance("lamp", 1200, "wall-b", 240)),
                circuit("wall-a", 20), circuit("wall-b", 20)).circuits().get(0);

        assertThat(over.advice()).noneMatch(CircuitAdvice.Move.class::isInstance);
    }

    @Test void what_fits_needs_no_advice() {
        assertThat(sheet(List.of(POT), circuit("wall-a", 20)).circuits().get(0).advice()).isEmpty();
    }

    @Test void what_no_single_change_mends_has_none() {
        CircuitLine over = sheet(List.of(TestKits.appliance("kiln", 2400, "wall-a", 60)), circuit("wall-a", 15))
                .circuits().get(0);

        assertThat(over.verdict()).contains(Verdict.OVER);
        assertThat(over.advice()).isEmpty();
    }

    @Test void a_voltage_a_rule_or_a_breaker_is_asked_for_and_never_guessed() {
        Circuit noVolts = new Circuit("wall-a", "Wall", OptionalDouble.empty(), OptionalDouble.of(20),
                Optional.of(Circuit.Rule.PLAIN));
        Circuit noAmps = new Circuit("wall-a", "Wall", OptionalDouble.of(230), OptionalDouble.empty(),
                Optional.of(Circuit.Rule.PLAIN));
        Circuit noRule = new Circuit("wall-a", "Wall", OptionalDouble.of(230), OptionalDouble.of(16),
                Optional.empty());

        assertThat(sheet(List.of(KETTLE, POT), noVolts).circuits().get(0).designAmps()).isEmpty();
        assertThat(sheet(List.of(KETTLE, POT), noVolts).problems(Part.CIRCUIT))
                .containsExactly(new PrepProblem.Wanting(Figure.CIRCUIT_VOLTS, "wall-a", "Wall"));
        assertThat(sheet(List.of(KETTLE, POT), noAmps).circuits().get(0)).satisfies(line -> {
            assertThat(line.designAmps().getAsDouble()).isCloseTo(2800.0 / 230, within(1e-9));
            assertThat(line.verdict()).isEmpty();
        });
        assertThat(sheet(List.of(KETTLE, POT), noRule).problems(Part.CIRCUIT))
                .containsExactly(new PrepProblem.Wanting(Figure.CIRCUIT_RULE, "wall-a", "Wall"));
    }

    @Test void an_appliance_without_watts_keeps_its_circuit_open_and_one_without_a_circuit_is_asked_about() {
        Appliance unknown = new Appliance("fan", "Fan", OptionalDouble.empty(), Optional.empty(),
                Optional.of("wall-a"), 60);
        Appliance loose = new Appliance("lamp", "Lamp", OptionalDouble.of(60), Optional.empty(), Optional.empty(), 60);

        PrepSheet sheet = sheet(List.of(unknown, loose), circuit("wall-a", 20));

        assertThat(sheet.circuits().get(0).verdict()).isEmpty();
        assertThat(sheet.problems(Part.CIRCUIT)).containsExactly(
                new PrepProblem.Wanting(Figure.APPLIANCE_WATTS, "fan", "Fan"),
                new PrepProblem.Wanting(Figure.APPLIANCE_CIRCUIT, "lamp", "Lamp"));
    }

    @Test void a_melter_that_is_on_longer_than_the_plan_says_or_plugged_in_nowhere_is_told() {
        assertThat(sheet(List.of(TestKits.melterOn("pot-1", "pot", "wall-a", 120)), circuit("wall-a", 20)).cautions())
                .singleElement().isInstanceOfSatisfying(Caution.OnLonger.class,
                        c -> assertThat(c.workedOutMinutes()).isCloseTo(68.2461 + 120, within(0.001)));
        assertThat(sheet(List.of(KETTLE), circuit("wall-a", 20)).cautions())
                .containsExactly(new Caution.PluggedInNowhere("pot", "Nine-litre melter"));
    }
}

package benchpace.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.room.OpenCases;
import benchpace.cure.solver.CureMilestones;
import benchpace.cure.solver.CureRun;
import benchpace.cure.solver.CureSolver;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CoolingCaseTest {
    private static double[] sound() {
        return OpenCases.first().numbers();
    }

    private static double[] with(String field, double value) {
        double[] n = sound();
        n[java.util.List.of(CoolingCase.fieldNames()).indexOf(field)] = value;
        return n;
    }

    @ParameterizedTest
    @CsvSource({"waxMassG, -1", "waxMassG, 0", "innerDiameterMm, 0", "densityKgM3, NaN", "latentHeatJKg, -5",
        "sideLossWM2K, -0.1", "pourC, 63.9", "solidusC, 64.5", "roomC, 58.1", "roomC, -300", "topLossWM2K, Infinity",
        "conductivityLiquidWMK, 0", "waxMassG, 1e12", "pourC, 5000"})
    void a_fault_names_its_field(String field, double value) {
        assertThat(CoolingCase.fault(with(field, value)).orElseThrow().field()).isEqualTo(field);
        assertThatThrownBy(() -> CoolingCase.of(with(field, value))).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(field);
    }

    @ParameterizedTest
    @CsvSource({"sideLossWM2K, 0", "sideCapacityJM2K, 0", "baseCapacityJM2K, 0", "latentHeatJKg, 0", "pourC, 64",
        "roomC, 58", "liquidusC, 58", "roomC, 57.9"})
    void a_case_at_the_edge_of_the_sensible_is_solved(String field, double value) {
        CureRun run = CureSolver.solve(CoolingCase.of(with(field, value)));
        assertThat(run.milestones().energyErrorFraction()).isLessThan(1e-6);
        assertThat(run.curves().solidFractionAt(1e6)).isBetween(0.0, 1.0);
    }

    @Test
    void without_any_loss_only_the_cold_vessel_takes_heat_and_nothing_sets() {
        double[] n = sound();
        n[12] = 0;
        n[13] = 0;
        n[14] = 0;
        CureMilestones found = CureSolver.solve(CoolingCase.of(n)).milestones();
        assertThat(found.skinMinutes()).isEmpty();
        assertThat(found.halfMinutes()).isEmpty();
        assertThat(found.setMinutes()).isEmpty();
        assertThat(found.energyErrorFraction()).isLessThan(1e-6);
    }

    @Test
    void a_bucket_of_wax_is_not_set_within_a_day() {
        double[] n = sound();
        n[0] = 300;
        n[1] = 20_000;
        CureMilestones found = CureSolver.solve(CoolingCase.of(n)).milestones();
        assertThat(found.skinMinutes()).isPresent();
        assertThat(found.setMinutes()).isEmpty();
    }

    @Test
    void a_wall_that_never_passes_forty_degrees_is_hand_cool_from_the_start() {
        double[] n = with("sideCapacityJM2K", 1e6);
        n[16] = 1e6;
        assertThat(CureSolver.solve(CoolingCase.of(n)).milestones().handCoolMinutes()).hasValue(0);
    }

    @Test
    void the_wax_stands_as_high_as_its_volume_says() {
        CoolingCase c = OpenCases.first();
        double volume = Math.PI * c.radiusMetres() * c.radiusMetres() * c.heightMetres();
        assertThat(volume * c.densityKgM3()).isCloseTo(0.160, within(1e-12));
    }
}

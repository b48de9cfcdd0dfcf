package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bodies of one temperature (small Biot number). Without latent heat exactly exponential: Incropera and DeWitt, 6th
 * ed., eq. 5.6 and example 5.1. With latent heat the plateau lasts m L / (U A dT) (heat balance). The whole course is
 * checked against an independent integrator, Hipparchus's Dormand-Prince 8(5,3).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LumpedCoolingTest {
    private static final Resolution SMALL = new Resolution(6, 6, 100, 1e-5);

    @Test
    void a_thermocouple_junction_needs_the_textbooks_time() {
        // Example 5.1: sphere, h 400, k 20, c 400, rho 8500, time constant 1 s -> D = 7.06e-4 m, 199 C after 5.2 s from
        // 25 C in gas at 200 C. Same volume per area here: a cylinder of R = D/3, and cooling instead of heating.
        double diameter = 6 * 400 * 1.0 / (8500 * 400);
        assertThat(diameter).isCloseTo(7.06e-4, within(0.005e-4));
        Limits.Wax junction = new Limits.Wax(8500, 400, 400, 0, 20, 20, 25, 26);
        CoolingCase c = Limits.cylinder(junction, diameter / 3, 400, 25, 200 + 175);
        CureCurves curves = CureSolver.solve(c, SMALL).curves();
        double left = (curves.surfaceCelsiusAt(5.16 / 60) - 25) / 350;
        assertThat(left).isCloseTo(1.0 / 175, within(0.03 / 175));
    }

    @ParameterizedTest
    @CsvSource({"5", "20", "60", "120"})
    void a_small_body_cools_exponentially(double minutes) {
        Limits.Wax wax = new Limits.Wax(900, 2000, 2000, 0, 50, 50, 20, 21);
        CoolingCase c = Limits.lumped(wax, 0.03, 0.05, 8, 20, 80);
        double volume = Math.PI * 0.03 * 0.03 * 0.05;
        double area = 2 * Math.PI * 0.03 * (0.03 + 0.05);
        double exact = 20 + 60 * Math.exp(-8 * area / (900 * volume * 2000) * minutes * 60);
        assertThat(CureSolver.solve(c, SMALL).curves().surfaceCelsiusAt(minutes)).isCloseTo(exact, within(0.15));
    }

    /**
     * Computed by hand: jar 8 cm x 8 cm, 226.8 g, c 2.0 and 2.2 kJ/(kg K), L 200 kJ/kg, 70 C poured, melts at 55,
     * room 21.
     */
    @ParameterizedTest
    @CsvSource({"8, 12.6, 92.2", "10, 10.1, 73.7", "12, 8.4, 61.4"})
    void the_plateau_lasts_latent_heat_over_loss(double loss, double toMelting, double plateau) {
        double density = 0.2268 / (Math.PI * 0.04 * 0.04 * 0.08);
        Limits.Wax wax = new Limits.Wax(density, 2000, 2200, 200_000, 800, 800, 55, 55.001);
        CoolingCase c = Limits.lumped(wax, 0.04, 0.08, loss, 21, 70);
        CureMilestones found = CureSolver.solve(c, SMALL).milestones();
        double area = Math.PI * 0.08 * 0.08 + 2 * Math.PI * 0.04 * 0.04;
        assertThat(0.2268 * 200_000 / (loss * area * 34) / 60).isCloseTo(plateau, within(0.06));
        assertThat(found.setMinutes().orElseThrow()).isCloseTo(toMelting + plateau, within(0.4));
        assertThat(found.halfMinutes().orElseThrow()).isCloseTo(toMelting + plateau / 2, within(0.3));
    }

    @Test
    void the_course_through_the_melting_range_agrees_with_an_independent_integrator() {
        Limits.Wax wax = new Limits.Wax(900, 2100, 2300, 150_000, 100, 100, 42, 52);
        CoolingCase c = Limits.lumped(wax, 0.035, 0.06, 10, 22, 72);
        CureCurves curves = CureSolver.solve(c, SMALL).curves();
        double surfacePerMass = 2 * (0.035 + 0.06) / (0.035 * 0.06 * 900);
        OrdinaryDifferentialEquation lumped = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(double seconds, double[] enthalpy) {
                return new double[] {-10 * surfacePerMass * (celsius(enthalpy[0]) - 22)};
            }
        };
        for (double minutes : new double[] {10, 30, 60, 90, 110}) {
            double start = 150_000 + 2200 * 10 + 2300 * 20;
            double enthalpy = new DormandPrince853Integrator(1e-6, 60, 1e-6, 1e-9)
                    .integrate(lumped, new ODEState(0, new double[] {start}), minutes * 60).getPrimaryState()[0];
            double solid = 1 - Math.min(Math.max(enthalpy / (150_000 + 22_000), 0), 1);
            assertThat(curves.solidFractionAt(minutes)).isCloseTo(solid, within(0.004));
            assertThat(curves.surfaceCelsiusAt(minutes)).isCloseTo(celsius(enthalpy), within(0.1));
        }
    }

    private static double celsius(double enthalpy) {
        double mushy = 150_000 + 2200 * 10;
        if (enthalpy < 0) {
            return 42 + enthalpy / 2100;
        }
        return enthalpy < mushy ? 42 + 10 * enthalpy / mushy : 52 + (enthalpy - mushy) / 2300;
    }
}

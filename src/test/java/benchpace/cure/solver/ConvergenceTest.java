package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import benchpace.cure.room.OpenCases;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Grid and step convergence, by the usual grid refinement study (Roache, "Quantification of uncertainty in
 * computational fluid dynamics", Annu. Rev. Fluid Mech. 29 (1997) 123-160): from three grids with ratio two, the order
 * p is log2((coarse - middle) / (middle - fine)). The scheme is of second order in the cell and in the step.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ConvergenceTest {
    /** A long paraffin cylinder. */
    private static final CoolingCase CYLINDER = Limits.cylinder(
            new Limits.Wax(890, 2400, 2300, 178_000, 0.24, 0.3, 44, 55), 0.04, 11, 22, 68);
    /** The same with a melting range that spans everything: no kink in the law, so the scheme's own order shows. */
    private static final CoolingCase SMOOTH = Limits.cylinder(
            new Limits.Wax(890, 2400, 2300, 178_000, 0.24, 0.3, 22, 68), 0.04, 11, 22, 68);

    private static double half(CoolingCase c, int cells, double tolerance) {
        return CureSolver.solve(c, new Resolution(cells, 4, 100, tolerance)).milestones().halfMinutes().orElseThrow();
    }

    private static double set(int cells) {
        return CureSolver.solve(CYLINDER, new Resolution(cells, 4, 100, 1e-6)).milestones().setMinutes().orElseThrow();
    }

    private static double order(double coarse, double middle, double fine) {
        return Math.log((coarse - middle) / (middle - fine)) / Math.log(2);
    }

    @Test
    void halving_the_cells_quarters_the_error_where_the_law_is_smooth() {
        assertThat(order(half(SMOOTH, 10, 1e-6), half(SMOOTH, 20, 1e-6), half(SMOOTH, 40, 1e-6))).isBetween(1.8, 2.2);
        assertThat(order(half(SMOOTH, 20, 1e-6), half(SMOOTH, 40, 1e-6), half(SMOOTH, 80, 1e-6))).isBetween(1.8, 2.2);
    }

    @Test
    void a_moving_front_costs_some_of_the_order_but_not_the_convergence() {
        assertThat(order(set(10), set(20), set(40))).isGreaterThan(1.2);
        assertThat(order(set(20), set(40), set(80))).isGreaterThan(1.2);
        assertThat(set(40)).isCloseTo(set(80), within(0.1));
    }

    @Test
    void smaller_steps_change_the_half_time_less_and_less() {
        double exact = half(CYLINDER, 16, 1e-6);
        double loose = Math.abs(half(CYLINDER, 16, 1e-2) - exact);
        double working = Math.abs(half(CYLINDER, 16, 1e-3) - exact);
        double tight = Math.abs(half(CYLINDER, 16, 1e-4) - exact);
        assertThat(working).isLessThan(loose);
        assertThat(tight).isLessThan(working).isLessThan(0.02);
    }

    @Test
    void the_working_grid_agrees_with_one_three_times_finer_on_every_open_case() {
        for (OpenCases.Open open : OpenCases.all()) {
            Resolution working = Resolution.working(open.c());
            CureMilestones quick = CureSolver.solve(open.c(), working).milestones();
            CureMilestones fine = CureSolver.solve(open.c(), working.finer(3)).milestones();
            assertClose(quick.halfMinutes().orElseThrow(), fine.halfMinutes().orElseThrow(), 0.01, 0.5);
            assertClose(quick.firmMinutes().orElseThrow(), fine.firmMinutes().orElseThrow(), 0.01, 0.5);
            assertClose(quick.setMinutes().orElseThrow(), fine.setMinutes().orElseThrow(), 0.01, 0.5);
            assertClose(quick.skinMinutes().orElseThrow(), fine.skinMinutes().orElseThrow(), 0.025, 1);
        }
    }

    private static void assertClose(double quick, double fine, double fraction, double minutes) {
        assertThat(quick).isCloseTo(fine, within(Math.max(fraction * fine, minutes)));
    }
}

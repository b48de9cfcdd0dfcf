package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two-phase Stefan problem: a melt above its melting point freezes from a cold face. Neumann's solution with unlike
 * phases: Ste_s / (exp(l^2) erf l) - Ste_l / (nu exp(nu^2 l^2) erfc(nu l)) = l sqrt(pi), nu = sqrt(alpha_s / alpha_l).
 * Carslaw and Jaeger 1959, section 11.2 (I); Alexiades and Solomon 1993, section 2.2.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NeumannTwoPhaseTest {
    /** Deep enough that the far end does not feel the cold within the times looked at. */
    private static final double DEPTH = 0.06;
    private static final double RHO = 900;
    private static final Limits.Wax WAX = new Limits.Wax(RHO, 2000, 2400, 150_000, 0.22, 0.15, 50, 50.001);
    private static final double ROOM = 10;
    private static final double POUR = 80;
    private static final Resolution FINE = new Resolution(4, 240, 1, 1e-4);

    private static double alphaSolid() {
        return 0.22 / (RHO * 2000);
    }

    private static double alphaLiquid() {
        return 0.15 / (RHO * 2400);
    }

    static double lambda() {
        double solid = 2000 * (50 - ROOM) / 150_000;
        double liquid = 2400 * (POUR - 50) / 150_000;
        double nu = Math.sqrt(alphaSolid() / alphaLiquid());
        UnivariateFunction f = x -> solid / (Math.exp(x * x) * Erf.erf(x))
                - liquid / (nu * Math.exp(nu * nu * x * x) * Erf.erfc(nu * x)) - x * Math.sqrt(Math.PI);
        return new BracketingNthOrderBrentSolver(1e-13, 1e-13, 1e-15, 5).solve(200, f, 1e-4, 2);
    }

    @ParameterizedTest
    @CsvSource({"5", "15", "30", "45"})
    void the_front_is_where_neumann_puts_it(double minutes) {
        CureCurves curves = CureSolver.solve(Limits.slab(WAX, DEPTH, 1e6, ROOM, POUR), FINE).curves();
        double front = 2 * lambda() * Math.sqrt(alphaSolid() * minutes * 60);
        assertThat(curves.solidFractionAt(minutes) * DEPTH / front).isCloseTo(1, within(0.02));
    }

    @Test
    void both_phases_have_neumanns_temperatures() {
        double minutes = 30;
        double[] axis = Limits.axis(Limits.slab(WAX, DEPTH, 1e6, ROOM, POUR), FINE, minutes);
        double root = lambda();
        double nu = Math.sqrt(alphaSolid() / alphaLiquid());
        double front = 2 * root * Math.sqrt(alphaSolid() * minutes * 60);
        for (int iz = 0; iz < axis.length; iz++) {
            double z = (iz + 0.5) * DEPTH / axis.length;
            double spread = 2 * Math.sqrt(alphaSolid() * minutes * 60);
            double solid = ROOM + (50 - ROOM) * Erf.erf(z / spread) / Erf.erf(root);
            double liquid = POUR - (POUR - 50) * Erf.erfc(z / (2 * Math.sqrt(alphaLiquid() * minutes * 60)))
                    / Erf.erfc(nu * root);
            assertThat(axis[iz]).isCloseTo(z < front ? solid : liquid, within(0.5));
        }
    }
}

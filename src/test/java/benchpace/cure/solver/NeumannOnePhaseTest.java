package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One-phase Stefan problem: a liquid at its melting point freezes from a face held cold. Neumann's similarity solution:
 * front s = 2 lambda sqrt(alpha t) with lambda sqrt(pi) exp(lambda^2) erf(lambda) = Ste. Carslaw and Jaeger, Conduction
 * of Heat in Solids, 2nd ed., Oxford 1959, section 11.2; Alexiades and Solomon, Mathematical Modeling of Melting and
 * Freezing Processes, Hemisphere 1993, section 2.1.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NeumannOnePhaseTest {
    private static final double DEPTH = 0.02;
    private static final Resolution FINE = new Resolution(4, 80, 1, 1e-4);

    static double lambda(double stefan) {
        UnivariateFunction f = x -> Math.sqrt(Math.PI) * x * Math.exp(x * x) * Erf.erf(x) - stefan;
        return new BracketingNthOrderBrentSolver(1e-13, 1e-13, 1e-15, 5).solve(200, f, 1e-6, 3);
    }

    private static CoolingCase slab(double stefan) {
        double latent = 2000 * 40 / stefan;
        Limits.Wax wax = new Limits.Wax(900, 2000, 2000, latent, 0.2, 0.2, 50, 50.001);
        return Limits.slab(wax, DEPTH, 1e6, 10, 50.001);
    }

    private static double alpha() {
        return 0.2 / (900 * 2000);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.2200162727", "1, 0.6200626333"})
    void the_root_of_the_transcendental_equation_agrees_with_the_published_one(double stefan, double published) {
        assertThat(lambda(stefan)).isCloseTo(published, within(1e-9));
        double x = lambda(stefan);
        assertThat(Math.sqrt(Math.PI) * x * Math.exp(x * x) * Erf.erf(x)).isCloseTo(stefan, within(1e-10));
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.3", "0.5", "1", "2"})
    void the_front_moves_with_the_root_of_time(double stefan) {
        CureCurves curves = CureSolver.solve(slab(stefan), FINE).curves();
        for (double part : new double[] {0.25, 0.5, 0.75}) {
            double minutes = Math.pow(part * DEPTH / (2 * lambda(stefan)), 2) / alpha() / 60;
            assertThat(curves.solidFractionAt(minutes)).isCloseTo(part, within(0.008));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "1", "2"})
    void half_and_firm_come_when_the_similarity_solution_says(double stefan) {
        CureMilestones milestones = CureSolver.solve(slab(stefan), FINE).milestones();
        double half = Math.pow(0.5 * DEPTH / (2 * lambda(stefan)), 2) / alpha() / 60;
        double firm = Math.pow(0.95 * DEPTH / (2 * lambda(stefan)), 2) / alpha() / 60;
        assertThat(milestones.halfMinutes().orElseThrow() / half).isCloseTo(1, within(0.015));
        assertThat(milestones.firmMinutes().orElseThrow() / firm).isCloseTo(1, within(0.015));
    }

    @Test
    void temperatures_behind_the_front_follow_the_error_function() {
        double stefan = 1;
        double root = lambda(stefan);
        double minute = 15;
        double[] axis = Limits.axis(slab(stefan), FINE, minute);
        double spread = 2 * Math.sqrt(alpha() * minute * 60);
        for (int iz = 0; iz < axis.length; iz++) {
            double z = (iz + 0.5) * DEPTH / axis.length;
            double exact = z < root * spread ? 10 + 40 * Erf.erf(z / spread) / Erf.erf(root) : 50;
            assertThat(axis[iz]).isCloseTo(exact, within(0.4));
        }
    }
}

package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import org.hipparchus.special.BesselJ;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Cooling of a long cylinder without change of phase, one-term solution on the axis: theta* = C1 exp(-zeta1^2 Fo) for
 * Fo > 0.2. Coefficients: Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed., table 5.1 (Heisler,
 * Trans. ASME 69 (1947) 227-236); equation 5.50: zeta J1(zeta) / J0(zeta) = Bi.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class InfiniteCylinderTest {
    @ParameterizedTest
    @CsvSource({"0.01, 0.1412, 1.0025", "0.1, 0.4417, 1.0246", "1, 1.2558, 1.2071", "10, 2.1795, 1.5677"})
    void the_tables_coefficients_solve_its_own_equation(double biot, double zeta, double c1) {
        double j0 = BesselJ.value(0, zeta);
        double j1 = BesselJ.value(1, zeta);
        assertThat(zeta * j1 / j0).isCloseTo(biot, within(biot * 0.003));
        assertThat(2 / zeta * j1 / (j0 * j0 + j1 * j1)).isCloseTo(c1, within(2e-4));
    }

    @ParameterizedTest
    @CsvSource({"0.01, 0.1412, 1.0025", "0.1, 0.4417, 1.0246", "1, 1.2558, 1.2071", "10, 2.1795, 1.5677"})
    void the_axis_cools_as_the_one_term_solution(double biot, double zeta, double c1) {
        double radius = 0.03;
        double k = 0.2;
        Limits.Wax wax = new Limits.Wax(900, 2000, 2000, 0, k, k, 20, 21);
        CoolingCase c = Limits.cylinder(wax, radius, biot * k / radius, 20, 80);
        CureCurves curves = CureSolver.solve(c, new Resolution(50, 4, 100, 1e-4)).curves();
        for (double fourier : new double[] {0.4, 0.6, 0.8, 1}) {
            double minutes = fourier * radius * radius / (k / (900 * 2000)) / 60;
            double exact = c1 * Math.exp(-zeta * zeta * fourier);
            assertThat((curves.surfaceCelsiusAt(minutes) - 20) / 60).isCloseTo(exact, within(0.003));
        }
    }
}

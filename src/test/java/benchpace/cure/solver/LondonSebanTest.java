package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Quasi-steady freezing of a long cylinder cooled through its side: London and Seban, "Rate of ice formation", Trans.
 * ASME 65 (1943) 771-778. With the front at r: t = rho L / dT [ ((R^2 - r^2)/4 - (r^2/2) ln(R/r)) / k + (R^2 - r^2) /
 * (2 h R) ]. Exact as the Stefan number goes to zero; here it is 0.01.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LondonSebanTest {
    private static final double RADIUS = 0.01;
    private static final double LATENT = 400_000;

    private static double minutes(double solidFraction, double loss) {
        double r2 = RADIUS * RADIUS * (1 - solidFraction);
        double log = solidFraction == 1 ? 0 : r2 / 2 * Math.log(RADIUS / Math.sqrt(r2));
        double shell = RADIUS * RADIUS - r2;
        return 900 * LATENT / 2 * ((shell / 4 - log) / 0.4 + shell / (2 * loss * RADIUS)) / 60;
    }

    @ParameterizedTest
    @CsvSource({"20", "80", "400", "4000"})
    void half_and_firm_agree_with_the_quasi_steady_front(double loss) {
        Limits.Wax wax = new Limits.Wax(900, 2000, 2000, LATENT, 0.4, 0.4, 50, 50.001);
        CoolingCase c = Limits.cylinder(wax, RADIUS, loss, 48, 50.001);
        CureMilestones found = CureSolver.solve(c, new Resolution(60, 4, 10, 1e-4)).milestones();
        assertThat(found.halfMinutes().orElseThrow() / minutes(0.5, loss)).isCloseTo(1, within(0.012));
        assertThat(found.firmMinutes().orElseThrow() / minutes(0.95, loss)).isCloseTo(1, within(0.012));
        assertThat(found.setMinutes().orElseThrow() / minutes(1, loss)).isCloseTo(1, within(0.02));
    }
}

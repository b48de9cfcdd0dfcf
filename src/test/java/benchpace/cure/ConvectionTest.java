package benchpace.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Correlations against worked examples of Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed.: 9.2
 * (glass firescreen), 9.3 (warm air duct), 7.4 (cylinder in cross flow, Churchill and Bernstein).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ConvectionTest {
    @Test
    void the_firescreen_of_example_9_2_has_its_rayleigh_number_and_loss() {
        Air air = Air.film(232, 23);
        double rayleigh = air.rayleigh(232 - 23, 0.71);
        assertThat(rayleigh).isCloseTo(1.813e9, within(0.02e9));
        double nusselt = Convection.verticalNusselt(rayleigh, air.prandtl());
        assertThat(nusselt).isCloseTo(147, within(1.0));
        double coefficient = nusselt * air.conductivity() / 0.71;
        assertThat(coefficient).isCloseTo(7.0, within(0.05));
        assertThat(coefficient * 1.02 * 0.71 * (232 - 23)).isCloseTo(1060, within(8.0));
    }

    @Test
    void the_duct_of_example_9_3_loses_through_sides_top_and_bottom_as_printed() {
        Air air = Air.film(45, 15);
        double sides = air.rayleigh(30, 0.3);
        assertThat(sides).isCloseTo(7.07e7, within(0.12e7));
        assertThat(Convection.verticalLaminarNusselt(sides, air.prandtl()) * air.conductivity() / 0.3)
                .isCloseTo(4.23, within(0.03));
        double flat = air.rayleigh(30, 0.375);
        assertThat(flat).isCloseTo(1.38e8, within(0.03e8));
        assertThat(Convection.hotPlateUpNusselt(flat) * air.conductivity() / 0.375).isCloseTo(5.47, within(0.03));
        assertThat(Convection.hotPlateDownNusselt(flat) * air.conductivity() / 0.375).isCloseTo(2.07, within(0.02));
    }

    @Test
    void the_cylinder_of_example_7_4_has_the_nusselt_number_of_churchill_and_bernstein() {
        // air at 10 m/s over 12.7 mm at film conditions: Re = 6071, Pr = 0.70, Nu = 40.6, h = 96 W/(m2 K)
        assertThat(Convection.crossFlowNusselt(6071, 0.70)).isCloseTo(40.6, within(0.2));
    }

    @Test
    void radiation_between_like_temperatures_is_four_epsilon_sigma_t_cubed() {
        assertThat(Convection.radiation(1, 26.85, 26.85)).isCloseTo(4 * 5.670374e-8 * Math.pow(300, 3), within(1e-4));
    }

    @Test
    void the_vertical_correlations_agree_where_both_hold() {
        for (double rayleigh : new double[] {1e5, 1e6, 1e7}) {
            double wide = Convection.verticalNusselt(rayleigh, 0.7);
            assertThat(Convection.verticalLaminarNusselt(rayleigh, 0.7)).isCloseTo(wide, within(0.12 * wide));
        }
    }

    @Test
    void draught_and_free_convection_together_are_more_than_either_and_less_than_the_sum() {
        assertThat(Convection.together(5, 5)).isBetween(5.0, 10.0).isCloseTo(5 * Math.cbrt(2), within(1e-12));
        assertThat(Convection.together(5, 0)).isCloseTo(5, within(1e-12));
    }
}

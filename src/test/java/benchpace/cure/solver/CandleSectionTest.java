package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import benchpace.cure.TableCaseTest;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CandleSectionTest {
    private static final CoolingCase CASE = TableCaseTest.soy(22).coolingCase();

    private static double area(List<SectionPoint> outline) {
        double twice = 0;
        SectionPoint from = outline.get(outline.size() - 1);
        for (SectionPoint to : outline) {
            twice += from.r() * to.z() - to.r() * from.z();
            from = to;
        }
        return twice / 2;
    }

    /** Volume inside the outlines over the whole volume: the integral of r^2 dz around them. */
    private static double volumeShare(SolidFront front) {
        double sum = 0;
        for (List<SectionPoint> outline : front.outlines()) {
            SectionPoint from = outline.get(outline.size() - 1);
            for (SectionPoint to : outline) {
                sum += (to.z() - from.z()) * (from.r() * from.r() + from.r() * to.r() + to.r() * to.r()) / 3;
                from = to;
            }
        }
        return sum;
    }

    @Test
    void there_is_one_section_a_minute_and_it_has_the_solvers_own_solid_fraction() {
        List<CandleSection> film = CandleSection.everyMinute(CASE, 0, 90);
        CureCurves curves = CureSolver.solve(CASE).curves();
        assertThat(film).hasSize(91);
        for (CandleSection section : film) {
            assertThat(section.solidFraction()).isCloseTo(curves.solidFractionAt(section.minutes()), within(0.006));
        }
        assertThat(film.get(30).minutes()).isEqualTo(30);
        assertThat(CandleSection.everyMinute(CASE, 40, 60)).hasSize(21);
    }

    @Test
    void the_wax_inside_the_fronts_adds_up_to_what_is_not_solid() {
        CandleSection section = CandleSection.everyMinute(CASE, 80, 80).get(0);
        // the mean liquid fraction is the integral of the volume below each level over the levels 0..1
        double[] share = section.fronts().stream().mapToDouble(CandleSectionTest::volumeShare).toArray();
        assertThat(share).isSorted();
        assertThat(share[3]).isLessThan(1);
        double liquid = 1 - section.solidFraction();
        assertThat(liquid).isBetween(share[0] * 0.75, share[3]);
    }

    @Test
    void fronts_are_nested_lie_in_the_section_and_run_one_way_round() {
        for (CandleSection section : CandleSection.everyMinute(CASE, 20, 140)) {
            for (int n = 0; n < section.fronts().size(); n++) {
                for (List<SectionPoint> outline : section.fronts().get(n).outlines()) {
                    assertThat(outline).hasSizeGreaterThan(2).allSatisfy(p -> {
                        assertThat(p.r()).isBetween(0.0, 1.0);
                        assertThat(p.z()).isBetween(0.0, 1.0);
                    });
                    assertThat(area(outline)).isGreaterThan(0);
                }
            }
            SolidFront half = section.fronts().get(1);
            SolidFront most = section.fronts().get(3);
            for (double r = 0.013; r < 1; r += 0.1) {
                for (double z = 0.017; z < 1; z += 0.1) {
                    assertThat(half.holds(r, z) && !most.holds(r, z)).isFalse();
                }
            }
        }
    }

    @Test
    void the_wax_sets_from_the_wall_inward() {
        List<CandleSection> film = CandleSection.everyMinute(CASE, 30, 150);
        double before = 0;
        for (CandleSection section : film) {
            assertThat(section.wallShellMillimetres()).isBetween(before - 0.05, section.radiusMillimetres());
            before = section.wallShellMillimetres();
        }
        assertThat(film.get(20).fronts().get(1).holds(0.05, 0.5)).isTrue();
        assertThat(film.get(20).fronts().get(1).holds(0.97, 0.5)).isFalse();
    }

    @Test
    void freshly_poured_wax_is_liquid_throughout_and_in_the_end_no_front_is_left() {
        CandleSection poured = CandleSection.everyMinute(CASE, 0, 0).get(0);
        assertThat(volumeShare(poured.fronts().get(0))).isCloseTo(1, within(0.1));
        int set = (int) Math.ceil(CureSolver.solve(CASE).milestones().setMinutes().orElseThrow()) + 2;
        assertThat(CandleSection.everyMinute(CASE, set, set).get(0).fronts())
                .allSatisfy(front -> assertThat(front.outlines()).isEmpty());
    }

    @Test
    void a_span_that_runs_backward_is_a_mistake() {
        assertThatThrownBy(() -> CandleSection.everyMinute(CASE, 10, 9)).isInstanceOf(IllegalArgumentException.class);
    }
}

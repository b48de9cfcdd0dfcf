package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Chances that are stated before a class come true as often as stated. {@code -Dcalibration.plans=600} makes it a long
 * run with its sampling error a third of the short one's.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveningCalibrationTest {
    private static final int PLANS = Integer.getInteger("calibration.plans", 60);
    private static final int EVENINGS = 500;
    private static final double ERRORS = 3.5;
    private static final List<EveningCalibration.Case> BELIEVED = EveningCalibration.cases(MadeUpClass.AS_BELIEVED,
            PLANS, EVENINGS, 5);

    @Test void of_classes_given_70_to_80_in_a_hundred_so_many_are_on_time() {
        EveningCalibration.Bin bin = EveningCalibration.bins(BELIEVED).stream().filter(b -> b.from() == 70).findFirst()
                .orElseThrow();

        double error = Math.sqrt(0.75 * 0.25 / bin.cases());
        assertThat(bin.cases()).isGreaterThan(50);
        assertThat(bin.onTime()).isBetween(0.7 - 2 * error, 0.8 + 2 * error);
    }

    @Test void every_range_of_chances_is_right_within_sampling_error() {
        assertThat(EveningCalibration.bins(BELIEVED)).hasSizeGreaterThan(8)
                .allSatisfy(bin -> assertThat(Math.abs(bin.errors())).as(bin.line()).isLessThan(ERRORS));
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 12, 24, 40})
    void tables_of_every_size_are_on_time_as_often_as_stated(int seats) {
        List<EveningCalibration.Case> here = BELIEVED.stream().filter(c -> c.seats() == seats).toList();
        double stated = here.stream().mapToDouble(EveningCalibration.Case::stated).average().orElseThrow();
        double onTime = here.stream().filter(EveningCalibration.Case::onTime).count() / (double) here.size();
        double variance = here.stream().mapToDouble(c -> c.stated() * (1 - c.stated())).sum();

        assertThat(onTime).isBetween(stated - ERRORS * Math.sqrt(variance) / here.size(),
                stated + ERRORS * Math.sqrt(variance) / here.size());
    }

    /** Classes that differ more from one another than is believed, or less: stated chances are off, by how much. */
    @Test void with_other_spreads_than_believed_stated_chances_are_ten_in_a_hundred_off_at_most() {
        for (MadeUpClass law : List.of(MadeUpClass.WIDER, MadeUpClass.TIGHTER)) {
            assertThat(EveningCalibration.bins(EveningCalibration.cases(law, PLANS, EVENINGS, 6))).allSatisfy(bin -> {
                double error = Math.sqrt(bin.stated() * (1 - bin.stated()) / bin.cases());
                assertThat(Math.abs(bin.onTime() - bin.stated())).as(law + " " + bin.line())
                        .isLessThan(0.1 + 2 * error);
            });
        }
    }

    /** Had the odds no spread, or the wrong middle, the ranges would show it. */
    @Test void a_plan_that_is_wrong_by_a_fifth_is_found_out() {
        List<EveningCalibration.Case> wrong = BELIEVED.stream()
                .map(c -> new EveningCalibration.Case(c.seats(), Math.min(1, c.stated() + 0.15), c.onTime())).toList();

        assertThat(EveningCalibration.bins(wrong)).anySatisfy(
                bin -> assertThat(Math.abs(bin.errors())).isGreaterThan(ERRORS));
    }
}

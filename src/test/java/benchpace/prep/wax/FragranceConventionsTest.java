package benchpace.prep.wax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.prep.Figure;
import benchpace.prep.TestKits;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The two conventions of fragrance load, "of wax" F = p W and "of total" F = p (W + F), against figures computed from
 * those formulae apart from this program. No standards body fixes one (from memory). That the certificate's limit is
 * of the finished product is the heading of a fragrance database's lists of limits: "RESTRICTION LIMITS IN THE FINISHED
 * PRODUCT (%)".
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FragranceConventionsTest {
    private static final double EIGHT_OUNCES = 226.796185;

    @ParameterizedTest(name = "{0} %: {1} % of the total, or {2} % of the wax")
    @CsvSource({"6, 5.660, 6.383", "8, 7.407, 8.696", "10, 9.091, 11.111"})
    void a_percentage_is_another_in_the_other_convention(double percent, double ofTotal, double ofWax) {
        assertThat(100 * LoadConvention.OF_WAX.fractionOfTotal(percent)).isCloseTo(ofTotal, within(0.0005));
        assertThat(LoadConvention.OF_WAX.percent(percent / 100)).isCloseTo(ofWax, within(0.0005));
    }

    @ParameterizedTest(name = "8 oz of wax at {0} %: {1} g or {2} g")
    @CsvSource({"6, 13.608, 14.476", "8, 18.144, 19.721", "10, 22.680, 25.200"})
    void the_same_wax_takes_more_fragrance_by_the_total(double percent, double ofWax, double ofTotal) {
        assertThat(fragrance(percent, LoadConvention.OF_WAX)).isCloseTo(ofWax, within(0.0005));
        assertThat(fragrance(percent, LoadConvention.OF_TOTAL)).isCloseTo(ofTotal, within(0.0006));
    }

    private static double fragrance(double percent, LoadConvention convention) {
        double fraction = convention.fractionOfTotal(percent);
        return EIGHT_OUNCES * fraction / (1 - fraction);
    }

    @ParameterizedTest(name = "200 g at {0} % {1}: {2} g and {3} g")
    @CsvSource({"6, OF_WAX, 188.679, 11.321", "8, OF_WAX, 185.185, 14.815", "10, OF_WAX, 181.818, 18.182",
        "6, OF_TOTAL, 188, 12", "8, OF_TOTAL, 184, 16", "10, OF_TOTAL, 180, 20"})
    void a_fill_is_parted_so(double percent, LoadConvention convention, double wax, double fragrance) {
        CandleLine line = new CandleLine(TestKits.candle("c", TestKits.soy(), 200, convention.fractionOfTotal(percent),
                62), 1, Load.UNKNOWN, OptionalDouble.empty());

        assertThat(line.waxGramsPerSeat()).isCloseTo(wax, within(0.0005));
        assertThat(line.fragranceGramsPerSeat()).isCloseTo(fragrance, within(0.0005));
        assertThat(convention == LoadConvention.OF_WAX ? line.fragrancePercentOfWax() : line.fragrancePercentOfTotal())
                .isCloseTo(percent, within(1e-9));
    }

    @Test void six_seats_of_eight_ounces_of_wax_take_three_pounds_and_108_862_g_of_fragrance() {
        double fraction = LoadConvention.OF_WAX.fractionOfTotal(8);
        CandleLine line = new CandleLine(TestKits.candle("c", TestKits.soy(), EIGHT_OUNCES * 1.08, fraction, 62), 6,
                Load.UNKNOWN, OptionalDouble.empty());

        assertThat(line.waxGrams()).isCloseTo(1360.777, within(0.0005));
        assertThat(line.fragranceGrams()).isCloseTo(108.862, within(0.0005));
    }

    private static AllowedLoad allowed(LoadConvention convention, double maker, double certificate) {
        return AllowedLoad.of(new Loads(Optional.of(convention), OptionalDouble.of(maker),
                OptionalDouble.of(certificate), OptionalDouble.empty()));
    }

    @Test void nine_per_cent_of_the_wax_passes_a_limit_of_eight_and_a_half_of_the_total() {
        double nine = LoadConvention.OF_WAX.fractionOfTotal(9);

        assertThat(100 * nine).isCloseTo(8.257, within(0.0005));
        assertThat(allowed(LoadConvention.OF_WAX, 10, 8.5).judge(nine)).isEqualTo(Load.ALLOWED);
        assertThat(allowed(LoadConvention.OF_WAX, 10, 8.5).judge(0.09)).isEqualTo(Load.OVER);
    }

    @Test void exactly_at_a_limit_is_allowed_and_a_hair_above_is_not() {
        assertThat(allowed(LoadConvention.OF_WAX, 6, 50).judge(LoadConvention.OF_WAX.fractionOfTotal(6)))
                .isEqualTo(Load.ALLOWED);
        assertThat(allowed(LoadConvention.OF_TOTAL, 50, 8.5).judge(0.085)).isEqualTo(Load.ALLOWED);
        assertThat(allowed(LoadConvention.OF_TOTAL, 50, 8.5).judge(0.08501)).isEqualTo(Load.OVER);
    }

    @Test void without_both_limits_no_load_is_called_allowed() {
        AllowedLoad certificate = AllowedLoad.of(new Loads(Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.of(8.5), OptionalDouble.empty()));
        AllowedLoad noConvention = AllowedLoad.of(new Loads(Optional.empty(), OptionalDouble.of(10),
                OptionalDouble.of(8.5), OptionalDouble.empty()));

        assertThat(certificate.judge(0.05)).isEqualTo(Load.UNKNOWN);
        assertThat(certificate.wanting()).containsExactly(Figure.WAX_MAKER_LIMIT);
        assertThat(noConvention.judge(0.05)).isEqualTo(Load.UNKNOWN);
        assertThat(noConvention.wanting()).containsExactly(Figure.LOAD_CONVENTION);
        assertThat(AllowedLoad.of(Loads.NONE).wanting())
                .containsExactly(Figure.WAX_MAKER_LIMIT, Figure.CERTIFICATE_LIMIT);
    }

    @Test void what_passes_the_one_limit_that_is_known_is_too_much_whatever_the_other() {
        AllowedLoad certificate = AllowedLoad.of(new Loads(Optional.empty(), OptionalDouble.empty(),
                OptionalDouble.of(8.5), OptionalDouble.empty()));

        assertThat(certificate.judge(0.09)).isEqualTo(Load.OVER);
    }
}

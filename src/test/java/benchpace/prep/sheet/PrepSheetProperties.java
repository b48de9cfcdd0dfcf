package benchpace.prep.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import benchpace.prep.TestKits;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.wax.AllowedLoad;
import benchpace.prep.wax.Load;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class PrepSheetProperties {
    private static Plan plan(double fill, double fraction, double spill, double watts, double spare) {
        Melter melter = new Melter("pot", "Pot", "soy", OptionalDouble.of(4000), 300, OptionalDouble.of(watts),
                OptionalDouble.of(0.6), Melter.ScentedIn.MELTER);
        Kit kit = new Kit(OptionalDouble.of(20), spill, 30, OptionalInt.of(120), TestKits.LOADS, List.of(melter),
                List.of(), List.of(), List.of(new Supply("wick", "Wick", 1, 2, spare, 7, 3, false,
                        OptionalDouble.of(5), "")));
        Candle candle = TestKits.candle("amber", TestKits.soy(), fill, fraction, 62);
        return TestKits.plan(kit, candle, TestKits.candle("second", TestKits.soy(), 100, 0, 70));
    }

    /** Nothing is lost or made: what is melted and weighed is what is poured and the allowance. */
    @Property void wax_and_fragrance_are_what_is_poured_and_the_allowance(
            @ForAll @IntRange(min = 1, max = 60) int seats, @ForAll @IntRange(max = 60) int second,
            @ForAll @DoubleRange(min = 1, max = 5000) double fill,
            @ForAll @DoubleRange(max = 0.25) double fraction, @ForAll @DoubleRange(max = 100) double spill) {
        int others = Math.min(second, seats);

        PrepSheet sheet = PrepSheet.of(plan(fill, fraction, spill, 1000, 10), seats, Map.of("second", others));

        double poured = (seats - others) * fill + others * 100;
        double total = sheet.totals().orElseThrow().waxGrams() + sheet.totals().orElseThrow().fragranceGrams();
        assertThat(total).isCloseTo(poured * (1 + spill / 100), within(1e-6 * (1 + poured)));
        assertThat(sheet.melters().get(0).neededGrams().getAsDouble()).isCloseTo(total, within(1e-6 * (1 + poured)));
        assertThat(sheet.candles().stream().mapToInt(c -> c.seats()).sum()).isEqualTo(seats);
    }

    /** One seat more, or more spilt, never takes less of anything; more watts never take longer. */
    @Property void more_seats_spills_or_spares_never_take_less_and_more_watts_never_longer(
            @ForAll @IntRange(min = 1, max = 59) int seats, @ForAll @DoubleRange(min = 1, max = 5000) double fill,
            @ForAll @DoubleRange(max = 0.25) double fraction, @ForAll @DoubleRange(max = 99) double spill,
            @ForAll @DoubleRange(min = 1, max = 5000) double watts, @ForAll @DoubleRange(max = 400) double spare) {
        PrepSheet one = PrepSheet.of(plan(fill, fraction, spill, watts, spare), seats, Map.of());

        notLess(PrepSheet.of(plan(fill, fraction, spill, watts, spare), seats + 1, Map.of()), one);
        notLess(PrepSheet.of(plan(fill, fraction, spill + 1, watts, spare), seats, Map.of()), one);
        notLess(PrepSheet.of(plan(fill, fraction, spill, watts, spare + 1), seats, Map.of()), one);
        PrepSheet stronger = PrepSheet.of(plan(fill, fraction, spill, watts + 1, spare), seats, Map.of());
        assertThat(stronger.melters().get(0).meltMinutes().getAsDouble())
                .isLessThan(one.melters().get(0).meltMinutes().getAsDouble());
    }

    private static void notLess(PrepSheet more, PrepSheet less) {
        MelterLine a = more.melters().get(0);
        MelterLine b = less.melters().get(0);
        assertThat(more.totals().orElseThrow().waxGrams())
                .isGreaterThanOrEqualTo(less.totals().orElseThrow().waxGrams());
        assertThat(a.fills().getAsLong()).isGreaterThanOrEqualTo(b.fills().getAsLong());
        assertThat(a.firstFillGrams().getAsDouble()).isGreaterThanOrEqualTo(b.firstFillGrams().getAsDouble());
        assertThat(a.switchOnMinutesBefore().getAsDouble())
                .isGreaterThanOrEqualTo(b.switchOnMinutesBefore().getAsDouble());
        assertThat(more.supplies().get(0).needed()).isGreaterThanOrEqualTo(less.supplies().get(0).needed());
        assertThat(more.supplies().get(0).packs()).isGreaterThanOrEqualTo(less.supplies().get(0).packs());
        assertThat(more.cost().perClass().getAsDouble()).isGreaterThanOrEqualTo(less.cost().perClass().getAsDouble());
    }

    @Property void fills_hold_what_is_needed_and_one_less_would_not(
            @ForAll @IntRange(min = 1, max = 60) int seats, @ForAll @DoubleRange(min = 1, max = 5000) double fill) {
        MelterLine line = PrepSheet.of(plan(fill, 0.06, 5, 1000, 10), seats, Map.of()).melters().get(0);
        double needed = line.neededGrams().getAsDouble();
        long fills = line.fills().getAsLong();

        assertThat(fills * 3700.0).isGreaterThanOrEqualTo(needed * (1 - 2e-9));
        assertThat((fills - 1) * 3700.0).isLessThan(needed);
        assertThat(line.firstFillGrams().getAsDouble() - 300 + line.refills().stream()
                .mapToDouble(r -> r.topUp().coldGrams()).sum())
                .isCloseTo(Math.min(needed, 3700.0 * (1 + line.refills().size())), within(1e-6 * needed));
    }

    @Property void a_percentage_comes_back_from_the_other_convention(@ForAll LoadConvention convention,
                                                                    @ForAll @DoubleRange(max = 99) double percent) {
        assertThat(convention.percent(convention.fractionOfTotal(percent))).isCloseTo(percent, within(1e-9));
        assertThat(LoadConvention.OF_WAX.fractionOfTotal(percent))
                .isLessThanOrEqualTo(LoadConvention.OF_TOTAL.fractionOfTotal(percent));
    }

    @Property void what_is_allowed_is_the_smaller_limit(@ForAll LoadConvention convention,
                                                        @ForAll @DoubleRange(min = 0.1, max = 90) double maker,
                                                        @ForAll @DoubleRange(min = 0.1, max = 90) double certificate,
                                                        @ForAll @DoubleRange(max = 0.25) double fraction) {
        AllowedLoad allowed = AllowedLoad.of(new Loads(Optional.of(convention), OptionalDouble.of(maker),
                OptionalDouble.of(certificate), OptionalDouble.empty()));
        double smaller = Math.min(convention.fractionOfTotal(maker), certificate / 100);

        assertThat(allowed.fraction().getAsDouble()).isEqualTo(smaller);
        assertThat(allowed.judge(fraction)).isEqualTo(fraction > smaller * (1 + 1e-9) ? Load.OVER : Load.ALLOWED);
    }
}

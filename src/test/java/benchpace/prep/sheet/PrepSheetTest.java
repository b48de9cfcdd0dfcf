package benchpace.prep.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.prep.Caution;
import benchpace.prep.Figure;
import benchpace.prep.Part;
import benchpace.prep.PrepProblem;
import benchpace.prep.TestKits;
import benchpace.prep.circuit.Verdict;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.supply.SupplyLine;
import benchpace.prep.wax.CandleLine;
import benchpace.prep.wax.Load;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrepSheetTest {
    private static final Offset<Double> EXACT = within(0.0005);

    private final PrepSheet six = PrepSheet.of(TestKits.plan(), 6, Map.of());

    @Test void six_candles_of_110_g_at_six_per_cent_of_the_wax_add_up() {
        CandleLine amber = six.candles().get(0);

        assertThat(six.candles()).hasSize(1);
        assertThat(amber.seats()).isEqualTo(6);
        assertThat(amber.waxGramsPerSeat()).isCloseTo(103.774, EXACT);
        assertThat(amber.fragranceGramsPerSeat()).isCloseTo(6.226, EXACT);
        assertThat(amber.fragrancePercentOfWax()).isCloseTo(6.0, EXACT);
        assertThat(amber.fragrancePercentOfTotal()).isCloseTo(5.660, EXACT);
        assertThat(amber.load()).isEqualTo(Load.ALLOWED);
        assertThat(six.totals().orElseThrow().waxGrams()).isCloseTo(6 * 103.774 * 1.05, within(0.005));
        assertThat(six.totals().orElseThrow().fragranceGrams()).isCloseTo(39.226, EXACT);
    }

    @Test void the_melter_is_worked_out_for_its_wax_and_what_stays_in_it() {
        MelterLine pot = six.melters().get(0);
        double perKilogram = 2.1 * (38 - 21) + 135 + (2.1 + 2.2) / 2 * (50 - 38) + 2.2 * (62 - 50);

        assertThat(pot.neededGrams().getAsDouble()).isCloseTo(653.774, EXACT);
        assertThat(pot.fills()).hasValue(1);
        assertThat(pot.firstFillGrams().getAsDouble()).isCloseTo(1553.774, EXACT);
        assertThat(pot.heatKilojoules().getAsDouble()).isCloseTo(1.553774 * perKilogram, EXACT);
        assertThat(pot.meltMinutes().getAsDouble()).isCloseTo(1.553774 * perKilogram / 0.7 / 60, EXACT);
        assertThat(pot.switchOnMinutesBefore().getAsDouble()).isCloseTo(pot.meltMinutes().getAsDouble() + 60, EXACT);
        assertThat(six.firstOn()).contains(pot);
    }

    @Test void a_switch_on_time_is_told_to_five_minutes_and_never_too_late() {
        Instant start = Instant.parse("2027-03-04T18:30:00Z");

        assertThat(six.melters().get(0).switchOnMinutesBefore().getAsDouble()).isBetween(65.0, 70.0);
        assertThat(six.melters().get(0).switchOnAt(start)).contains(Instant.parse("2027-03-04T17:20:00Z"));
    }

    @Test void a_kettle_beside_a_melter_is_too_much_for_twenty_amperes() {
        assertThat(six.circuits().get(0).designAmps().getAsDouble()).isCloseTo(15 + 1.25 * 1000 / 120, EXACT);
        assertThat(six.circuits().get(0).verdict()).contains(Verdict.OVER);
        assertThat(six.problems()).containsExactly(new PrepProblem.CircuitOver("wall-a", "Sockets by the window"));
    }

    @Test void seven_wicks_are_needed_and_none_is_bought() {
        SupplyLine wick = six.supplies().get(0);

        assertThat(wick.needed()).isEqualTo(7);
        assertThat(wick.toBuy()).isZero();
        assertThat(wick.packs()).isZero();
        assertThat(six.cost().perClass().getAsDouble()).isCloseTo(6 * 6.50 / 50, EXACT);
        assertThat(six.cost().perSeat().getAsDouble()).isCloseTo(6.50 / 50, EXACT);
    }

    @Test void seats_choose_candles_and_the_rest_take_the_plans_first() {
        PrepSheet sheet = PrepSheet.of(TestKits.plan(), 6, Map.of("tin-paraffin", 2));

        assertThat(sheet.candles()).extracting(CandleLine::seats).containsExactly(4, 2);
        assertThat(sheet.totals().orElseThrow().waxGrams()).isCloseTo((4 * 103.77358 + 2 * 90) * 1.05, within(0.001));
        assertThat(sheet.melters().get(0).neededGrams().getAsDouble()).isCloseTo(4 * 103.77358 * 1.05, within(0.001));
    }

    @Test void what_cannot_be_chosen_is_refused_in_words() {
        assertThatThrownBy(() -> PrepSheet.of(TestKits.plan(), 6, Map.of("amber-soy", 4, "tin-paraffin", 3)))
                .hasMessage("candles are chosen for 7 seats, and there are 6");
        assertThatThrownBy(() -> PrepSheet.of(TestKits.plan(), 6, Map.of("bowl", 1)))
                .hasMessage("the plan has no candle \"bowl\"");
        assertThatThrownBy(() -> PrepSheet.of(TestKits.plan(), 6, Map.of("amber-soy", -1)))
                .hasMessage("a candle is made at 0 or more seats, not -1");
        assertThatThrownBy(() -> PrepSheet.of(TestKits.plan(), 0, Map.of()))
                .hasMessage("a class has 1 to 60 seats, not 0");
        assertThatThrownBy(() -> PrepSheet.of(TestKits.plan(), 1_000_000, Map.of())).hasMessageContaining("1 to 60");
    }

    @Test void a_plan_that_says_nothing_of_the_day_before_still_has_its_wax() {
        PrepSheet sheet = PrepSheet.of(TestKits.plan(Kit.NONE, TestKits.AMBER), 6, Map.of());

        assertThat(sheet.totals().orElseThrow().waxGrams()).isCloseTo(6 * 103.77358, within(0.001));
        assertThat(sheet.melters()).isEmpty();
        assertThat(sheet.candles().get(0).load()).isEqualTo(Load.UNKNOWN);
        assertThat(sheet.problems()).containsExactly(new PrepProblem.Wanting(Figure.WAX_MAKER_LIMIT, "", ""),
                new PrepProblem.Wanting(Figure.CERTIFICATE_LIMIT, "", ""));
    }

    @Test void a_plan_without_a_candle_has_no_wax_and_says_so_and_the_rest_stands() {
        PrepSheet sheet = PrepSheet.of(TestKits.plan(TestKits.KIT), 6, Map.of());

        assertThat(sheet.totals()).isEmpty();
        assertThat(sheet.melters().get(0).neededGrams()).isEmpty();
        assertThat(sheet.problems(Part.WAX)).containsExactly(new PrepProblem.NoCandle());
        assertThat(sheet.problems(Part.MELTER))
                .containsExactly(new PrepProblem.NoCandleOfWax("pot", "Nine-litre melter", "soy"));
        assertThat(sheet.supplies().get(0).needed()).isEqualTo(7);
        assertThat(sheet.circuits().get(0).verdict()).contains(Verdict.OVER);
    }

    @Test void how_long_a_melter_is_on_hangs_on_what_the_guests_of_the_class_were_told() {
        assertThat(six.cautions()).noneMatch(Caution.OnLonger.class::isInstance);
        assertThat(PrepSheet.of(TestKits.plan(), 6, Map.of(), 180).cautions())
                .filteredOn(Caution.OnLonger.class::isInstance).singleElement()
                .isEqualTo(new Caution.OnLonger("pot-1", "The pot-1", 240,
                        six.melters().get(0).switchOnMinutesBefore().orElseThrow() + 180));
    }

    @Test void both_conventions_are_one_number() {
        assertThat(Stream.of(6, 8, 10).map(p -> 100 * LoadConvention.OF_WAX.fractionOfTotal(p)))
                .zipSatisfy(List.of(5.660, 7.407, 9.091), (a, b) -> assertThat(a).isCloseTo(b, EXACT));
    }
}

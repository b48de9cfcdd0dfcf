package benchpace.prep.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Supply;
import benchpace.prep.TestKits;
import benchpace.prep.sheet.PrepSheet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SuppliesTest {
    private static final Supply JUG = new Supply("jug", "Jug", 0, 3, 50, 1, 2, true, OptionalDouble.of(9), "A");
    private static final Supply CARD = new Supply("card", "Card", 1, 1, 0, 20, 0, false, OptionalDouble.of(3), "A");
    private static final Supply TAPE = new Supply("tape", "Tape", 0, 1, 0, 1, 0, false, OptionalDouble.empty(), "");
    private static final Supply SOY = new Supply("soy", "Soy wax", 0, 0, 0, 500, 200, false, OptionalDouble.of(8),
            "B");

    private static PrepSheet sheet(int seats, Supply... supplies) {
        Kit kit = new Kit(TestKits.KIT.roomCelsius(), 5, 60, TestKits.KIT.promisedMinutes(), TestKits.LOADS,
                TestKits.KIT.melters(), TestKits.KIT.appliances(), TestKits.KIT.circuits(), List.of(supplies));
        return PrepSheet.of(TestKits.plan(kit, TestKits.AMBER), seats, Map.of());
    }

    private static SupplyLine line(double perSeat, double perClass, double spare, int seats) {
        return new SupplyLine(new Supply("s", "S", perSeat, perClass, spare, 10, 0, false, OptionalDouble.empty(), ""),
                seats, perClass, false);
    }

    @ParameterizedTest(name = "{0} a seat, {1} a class, {2} % spare, {3} seats: {4}")
    @CsvSource({"1, 0, 10, 6, 7", "1, 0, 10, 10, 11", "1, 0, 10, 20, 22", "1, 0, 10, 30, 33", "1, 0, 5, 20, 21",
        "1, 0, 15, 20, 23", "2, 1, 0, 6, 13", "0.1, 0, 0, 30, 3", "0.5, 0, 0, 7, 4", "0, 0, 50, 6, 0",
        "1, 0, 7, 100, 107"})
    void binary_fractions_buy_no_piece_too_many(double perSeat, double perClass, double spare, int seats, long needed) {
        assertThat(line(perSeat, perClass, spare, seats).needed()).isEqualTo(needed);
    }

    @Test void whole_packs_are_bought_for_what_is_not_in_stock() {
        SupplyLine cards = sheet(20, CARD).supplies().get(0);

        assertThat(cards.needed()).isEqualTo(21);
        assertThat(cards.toBuy()).isEqualTo(21);
        assertThat(cards.packs()).isEqualTo(2);
        assertThat(cards.priceToBuy()).hasValue(6);
        assertThat(sheet(19, CARD).supplies().get(0).packs()).isEqualTo(1);
    }

    @Test void reusable_things_take_no_spare_and_cost_nothing() {
        SupplyLine jugs = sheet(6, JUG).supplies().get(0);

        assertThat(jugs.needed()).isEqualTo(3);
        assertThat(jugs.toBuy()).isEqualTo(1);
        assertThat(sheet(6, JUG).cost().perClass()).isEmpty();
    }

    @Test void the_cost_is_what_is_used_up_and_never_what_is_bought() {
        PrepSheet sheet = sheet(20, CARD, JUG, TAPE);

        assertThat(sheet.cost().perClass().getAsDouble()).isCloseTo(21 * 3.0 / 20, within(1e-9));
        assertThat(sheet.cost().perSeat().getAsDouble()).isCloseTo(21 * 3.0 / 20 / 20, within(1e-9));
        assertThat(sheet.cost().unpriced()).containsExactly("Tape");
        assertThat(sheet.shopping().price()).hasValue(2 * 3 + 9);
        assertThat(sheet.shopping().unpriced()).isEqualTo(1);
    }

    @Test void wax_with_a_price_is_a_supply_like_others_in_grams_with_spills() {
        PrepSheet sheet = sheet(6, SOY);
        SupplyLine soy = sheet.supplies().get(0);

        assertThat(soy.used()).isCloseTo(sheet.totals().orElseThrow().waxGrams(), within(1e-9));
        assertThat(soy.needed()).isEqualTo(654);
        assertThat(soy.packs()).isEqualTo(1);
        assertThat(sheet.cost().perClass().getAsDouble()).isCloseTo(653.7736 * 8 / 500, within(1e-4));
    }

    @Test void wax_that_says_its_own_amount_keeps_it() {
        Supply perSeat = new Supply("soy", "Soy wax", 120, 0, 0, 500, 0, false, OptionalDouble.empty(), "");

        assertThat(sheet(6, perSeat).supplies().get(0).needed()).isEqualTo(720);
    }

    @Test void things_are_packed_by_box_and_what_comes_home_stands_apart() {
        List<PackingList.Box> boxes = sheet(6, CARD, JUG, TAPE, SOY).packing().boxes();

        assertThat(boxes).extracting(PackingList.Box::name).containsExactly("A", "B", "");
        assertThat(boxes.get(0).usedUp()).extracting(Packed::key).containsExactly("supply:card");
        assertThat(boxes.get(0).reusable()).extracting(Packed::key).containsExactly("supply:jug");
        assertThat(boxes.get(1).usedUp()).extracting(Packed::key).containsExactly("supply:soy");
        assertThat(boxes.get(2).usedUp()).extracting(Packed::key).containsExactly("supply:tape", "fragrance");
        assertThat(boxes.get(2).reusable()).extracting(Packed::key)
                .containsExactly("appliance:kettle", "appliance:pot-1");
    }

    @Test void what_two_places_share_stands_at_one_place_whole() {
        Supply jug = new Supply("jug", "Jug", 0.5, 0, 0, 1, 0, true, OptionalDouble.empty(), "");
        SupplyLine alone = new SupplyLine(jug, 1, 0, false);

        assertThat(alone.atPlaces()).isEqualTo(1);
        assertThat(alone.shared()).isZero();
        assertThat(new SupplyLine(jug, 5, 0, false).atPlaces()).isEqualTo(3);
    }

    @Test void what_lies_at_the_places_and_what_is_shared_are_all_that_is_needed() {
        PrepSheet sheet = sheet(6, CARD, TestKits.WICK, JUG);

        assertThat(sheet.places()).singleElement().satisfies(place -> {
            assertThat(place.places()).isEqualTo(6);
            assertThat(place.supplies()).extracting(s -> s.supply().id()).containsExactly("card", "wick");
        });
        assertThat(sheet.shared().supplies()).extracting(SupplyLine::shared).containsExactly(1.0, 1.0, 3.0);
        assertThat(sheet.supplies()).allSatisfy(
                s -> assertThat(s.atPlaces() + s.shared()).isCloseTo(s.needed(), within(1e-9)));
    }
}

package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.roster.Demo;
import benchpace.plan.BrimFill;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.kit.LoadConvention;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The candles of a plan as JSON. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanCandlesTest {
    private static final String SOY_IN_GLASS = """
            {"id":"soy-glass","name":"Soy in a glass",
             "vessel":{"id":"tumbler","name":"Tumbler","material":"glass","innerDiameterMm":64,"wallMm":3,
             "brimHeightMm":80},"wax":"soy","fillGrams":110,"fragrancePercentOfWax":6,"roomCelsius":21,
             "pourCelsius":62,"tableTop":"stone"}
            """;

    private static ObjectNode object(String text) {
        try {
            return (ObjectNode) Json.read(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static ObjectNode plan(ObjectNode... candles) {
        ObjectNode plan = PlanFile.write(Demo.eveningPlan());
        ArrayNode list = plan.putArray("candles");
        for (ObjectNode candle : candles) {
            list.add(candle);
        }
        return plan;
    }

    private static Candle only(ObjectNode candle) {
        return PlanFile.read(plan(candle)).ifSound().orElseThrow().candles().get(0);
    }

    private static List<String> problems(ObjectNode... candles) {
        return PlanFile.read(plan(candles)).problems().stream().map(Finding::toString).toList();
    }

    @Test void a_plan_may_name_no_candle() {
        ObjectNode plan = plan();
        plan.remove("candles");

        assertThat(PlanFile.read(plan).ifSound().orElseThrow().candles()).isEmpty();
    }

    @Test void a_wax_that_comes_with_the_program_is_named_by_its_id() {
        Candle candle = only(object(SOY_IN_GLASS));

        assertThat(candle.wax().name()).isEqualTo("Soy container wax");
        assertThat(candle.vessel().material()).isEqualTo(Vessel.Material.GLASS);
        assertThat(candle.tableTop()).isEqualTo(TableTop.STONE);
    }

    @Test void fragrance_is_told_per_cent_of_the_wax_as_the_trade_reckons_and_kept_as_a_share_of_all() {
        // 6 g of oil to 100 g of wax are 6/106 of what is poured
        assertThat(only(object(SOY_IN_GLASS)).fragranceFraction()).isCloseTo(6.0 / 106, within(1e-15));
    }

    @Test void what_is_written_holds_all_numbers_of_the_wax_and_reads_back_equal() {
        Plan plan = PlanFile.read(plan(object(SOY_IN_GLASS))).ifSound().orElseThrow();
        ObjectNode written = PlanFile.write(plan);

        assertThat(written.at("/candles/0/wax/latentHeatJKg").asDouble()).isEqualTo(135_000);
        assertThat(written.at("/candles/0/fragrancePercentOfWax").asDouble()).isEqualTo(6);
        assertThat(PlanFile.read(written).ifSound()).contains(plan);
    }

    @Test void any_share_of_fragrance_reads_back_to_the_last_bit() {
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            Candle c = Demo.eveningPlan().candles().get(0);
            Candle odd = new Candle(c.id(), c.name(), c.vessel(), c.wax(), c.fillGrams(), random.nextDouble() * 0.25,
                    c.roomCelsius(), c.pourCelsius(), c.tableTop(), c.brim(),
                    i % 2 == 0 ? LoadConvention.OF_WAX : LoadConvention.OF_TOTAL, c.asTyped());

            assertThat(only(CandleJson.write(odd))).isEqualTo(odd);
        }
    }

    @Test void an_overfull_vessel_is_told_at_its_fill() {
        ObjectNode candle = object(SOY_IN_GLASS).put("fillGrams", 400);

        assertThat(problems(candle)).singleElement().asString()
                .startsWith("/candles/0/fillGrams: ").contains("run over the brim");
    }

    @Test void wax_that_would_be_poured_cold_or_never_set_is_told_at_its_temperature() {
        assertThat(problems(object(SOY_IN_GLASS).put("pourCelsius", 45))).singleElement().asString()
                .startsWith("/candles/0/pourCelsius: ").contains("liquidus");
        assertThat(problems(object(SOY_IN_GLASS).put("roomCelsius", 41))).singleElement().asString()
                .startsWith("/candles/0/roomCelsius: ").contains("never set");
    }

    @Test void every_fault_of_a_candle_is_told_at_its_place() {
        ObjectNode candle = object(SOY_IN_GLASS).put("wax", "soi").put("tableTop", "marble").put("colour", "red");
        ((ObjectNode) candle.get("vessel")).put("material", "paper").put("wallMm", 90);

        assertThat(problems(candle)).hasSize(5)
                .anyMatch(p -> p.startsWith("/candles/0/wax: ") && p.endsWith("did you mean \"soy\"?"))
                .anyMatch(p -> p.startsWith("/candles/0/tableTop: "))
                .anyMatch(p -> p.startsWith("/candles/0/colour: "))
                .anyMatch(p -> p.startsWith("/candles/0/vessel/material: "))
                .anyMatch(p -> p.startsWith("/candles/0/vessel/wallMm: "));
    }

    @Test void two_candles_of_one_id_and_two_ways_to_tell_fragrance_are_refused() {
        assertThat(problems(object(SOY_IN_GLASS), object(SOY_IN_GLASS))).singleElement().asString()
                .startsWith("/candles/1/id: ");
        assertThat(problems(object(SOY_IN_GLASS).put("fragranceFraction", 0.05))).singleElement().asString()
                .startsWith("/candles/0/fragranceFraction: ");
    }

    /** 8 US fl oz (236.588 ml) to the brim, 85 % full: 181.0 g at 0.90 g/ml and 172.9 g at 0.86; computed. */
    @Test void a_fill_by_the_brim_is_volume_times_share_times_density() {
        ObjectNode candle = byTheBrim();
        assertThat(only(candle).fillGrams()).isCloseTo(181.0, within(0.05));
        assertThat(only(candle).brim()).contains(new BrimFill(236.588, 0.85));

        ObjectNode light = byTheBrim();
        ObjectNode wax = PlanFile.write(PlanFile.read(plan(candle)).ifSound().orElseThrow()).at("/candles/0/wax")
                .deepCopy();
        light.set("wax", wax.put("densityKgM3", 860));
        assertThat(only(light).fillGrams()).isCloseTo(172.95, within(0.05));
    }

    private static ObjectNode byTheBrim() {
        ObjectNode candle = object(SOY_IN_GLASS).put("brimMillilitres", 236.588).put("fillFraction", 0.85);
        ((ObjectNode) candle.get("vessel")).put("brimHeightMm", 90);
        candle.remove("fillGrams");
        return candle;
    }

    @Test void a_fill_by_the_brim_is_written_as_it_was_told_and_reads_back_equal() {
        Plan plan = PlanFile.read(plan(byTheBrim())).ifSound().orElseThrow();
        ObjectNode written = PlanFile.write(plan);

        assertThat(written.at("/candles/0").has("fillGrams")).isFalse();
        assertThat(written.at("/candles/0/fillFraction").asDouble()).isEqualTo(0.85);
        assertThat(PlanFile.read(written).ifSound()).contains(plan);
    }

    @Test void a_fill_told_twice_or_by_half_or_over_the_brim_is_told_of() {
        assertThat(problems(byTheBrim().put("fillGrams", 181))).containsExactly("/candles/0/fillGrams: says the same "
                + "as brimMillilitres and fillFraction: give the mass or those two");
        ObjectNode half = byTheBrim();
        half.remove("fillFraction");
        assertThat(problems(half)).containsExactly("/candles/0/fillFraction: is missing");
        assertThat(problems(byTheBrim().put("brimMillilitres", 600))).singleElement().asString()
                .startsWith("/candles/0/brimMillilitres: ").contains("run over the brim");
        assertThat(problems(byTheBrim().put("fillFraction", 1.2))).containsExactly(
                "/candles/0/fillFraction: must be 0.01 to 1, not 1.2");
    }

    /** The convention stays with the number: 8 % of the total are 8.696 % of the wax. */
    @Test void fragrance_of_the_total_is_kept_with_its_convention() {
        ObjectNode candle = object(SOY_IN_GLASS).put("fragrancePercentOfTotal", 8);
        candle.remove("fragrancePercentOfWax");

        assertThat(only(candle).fragranceFraction()).isEqualTo(0.08);
        assertThat(only(candle).convention()).isEqualTo(LoadConvention.OF_TOTAL);
        assertThat(LoadConvention.OF_WAX.percent(0.08)).isCloseTo(8.696, within(0.0005));
        assertThat(CandleJson.write(only(candle)).get("fragrancePercentOfTotal").asDouble()).isEqualTo(8);
        assertThat(only(object(SOY_IN_GLASS)).convention()).isEqualTo(LoadConvention.OF_WAX);
        assertThat(problems(object(SOY_IN_GLASS).put("fragrancePercentOfTotal", 8))).containsExactly(
                "/candles/0/fragrancePercentOfTotal: says the same as fragrancePercentOfWax: give one of them");
    }

    @Test void the_largest_load_that_is_accepted_is_accepted_in_every_convention() {
        for (String how : List.of("fragrancePercentOfWax", "fragrancePercentOfTotal", "fragranceFraction")) {
            ObjectNode candle = object(SOY_IN_GLASS);
            candle.remove("fragrancePercentOfWax");
            candle.put(how, how.endsWith("Wax") ? 100.0 / 3 : how.endsWith("Total") ? 25 : 0.25);

            assertThat(only(candle).fragranceFraction()).as(how).isEqualTo(0.25);
            assertThat(problems(candle.put(how, candle.get(how).asDouble() * 1.01))).as(how).singleElement()
                    .asString().startsWith("/candles/0/" + how + ": must be 0 to ");
        }
    }

    @Test void what_was_typed_is_kept_beside_the_figure() {
        ObjectNode candle = object(SOY_IN_GLASS).put("pourCelsius", 62.8);
        candle.putObject("asTyped").put("fillGrams", "3.88 oz").put("pourCelsius", "145 °F");

        assertThat(only(candle).asTyped().text("fillGrams")).contains("3.88 oz");
        assertThat(only(CandleJson.write(only(candle)))).isEqualTo(only(candle));
    }

    @Test void what_was_typed_must_mean_the_figure_beside_it() {
        ObjectNode candle = object(SOY_IN_GLASS);
        candle.putObject("asTyped").put("fillGrams", "8 oz").put("pourCelsius", "145 F").put("roomCelsius", "21 oz")
                .put("brimMillilitres", "8 US fl oz").put("wax", "soy").put("fill", 7);

        assertThat(problems(candle)).containsExactly(
                "/candles/0/asTyped/fillGrams: \"8 oz\" is 226.796185, and fillGrams is 110.0: leave the text out, or "
                        + "let both say the same",
                "/candles/0/asTyped/brimMillilitres: there is no brimMillilitres here that it could be",
                "/candles/0/asTyped/roomCelsius: \"21 oz\" is a weight, not a temperature: give a number and °C or °F",
                "/candles/0/asTyped/pourCelsius: \"145 F\" is 62.77777777777778, and pourCelsius is 62.0: leave the "
                        + "text out, or let both say the same",
                "/candles/0/asTyped/wax: is not a field here",
                "/candles/0/asTyped/fill: is not a field here");
    }
}

package benchpace.web.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.units.UnitChoice;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the fields of the page show is what they were given, and what was typed in them is what is kept. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EditReadingTest {

    static List<Plan> plans() throws IOException {
        List<Plan> plans = new ArrayList<>(Demo.plans());
        plans.add(PlanFile.read(Json.read(Files.readString(Path.of("src/test/resources/benchpace/web/plans/kit.json"))))
                .ifSound().orElseThrow());
        return plans;
    }

    private static Plan withKit() {
        try {
            List<Plan> plans = plans();
            return plans.get(plans.size() - 1);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Plan read(Plan plan, ObjectNode form, UnitChoice units) {
        EditReading.Read read = EditReading.read(plan.id().value(), form, units);
        assertThat(read.problems()).isEmpty();
        var reading = PlanFile.read(read.plan());
        assertThat(reading.problems()).isEmpty();
        return reading.ifSound().orElseThrow();
    }

    private static ObjectNode values(ObjectNode form, String section, int row) {
        return (ObjectNode) form.path(section).path(row).path("values");
    }

    @ParameterizedTest
    @MethodSource("plans")
    void a_plan_that_is_only_looked_at_stays_as_it_is(Plan plan) {
        assertThat(read(plan, EditForms.untouched(plan, UnitChoice.METRIC), UnitChoice.METRIC)).isEqualTo(plan);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void so_it_does_where_its_figures_are_shown_rounded_in_ounces_and_fahrenheit(Plan plan) {
        UnitChoice units = UnitChoice.NORTH_AMERICAN;

        assertThat(read(plan, EditForms.untouched(plan, units), units)).isEqualTo(plan);
    }

    /** An ounce is 28.349523125 g exactly, by the international pound of 1959. */
    @Test void ounces_are_kept_as_they_were_typed_and_reckoned_exactly() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put("fillGrams", "8 oz");

        Plan kept = read(plan, form, UnitChoice.METRIC);

        assertThat(kept.candles().get(0).fillGrams()).isEqualTo(226.796185);
        assertThat(kept.candles().get(0).asTyped().text("fillGrams")).contains("8 oz");
        assertThat(EditForms.untouched(kept, UnitChoice.METRIC).at("/candles/0/values/fillGrams").asText())
                .isEqualTo("8 oz");
        assertThat(read(kept, EditForms.untouched(kept, UnitChoice.METRIC), UnitChoice.METRIC)).isEqualTo(kept);
    }

    @Test void a_bare_number_is_in_the_unit_that_was_chosen() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.NORTH_AMERICAN);
        values(form, "candles", 0).put("pourCelsius", "140");
        ((ObjectNode) form.at("/candles/0/exact")).remove("pourCelsius");

        Plan kept = read(plan, form, UnitChoice.NORTH_AMERICAN);

        assertThat(kept.candles().get(0).pourCelsius()).isEqualTo(60);
        assertThat(kept.candles().get(0).asTyped().text("pourCelsius")).contains("140 °F");
    }

    @Test void what_is_typed_in_the_units_of_plans_needs_no_text_beside_it() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put("fillGrams", "120 g");

        assertThat(read(plan, form, UnitChoice.METRIC).candles().get(0).asTyped().texts()).isEmpty();
    }

    @Test void a_fill_told_by_the_brim_takes_the_place_of_its_mass() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put("_fill", "brim").put("brimMillilitres", "200 ml").put("_fillPercent", "80");

        Plan kept = read(plan, form, UnitChoice.METRIC);

        assertThat(kept.candles().get(0).brim()).hasValueSatisfying(brim -> {
            assertThat(brim.brimMillilitres()).isEqualTo(200);
            assertThat(brim.fraction()).isEqualTo(0.8);
        });
    }

    @Test void fragrance_is_kept_in_the_convention_that_was_chosen() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put("_convention", "of-total").put("_percent", "6");

        assertThat(read(plan, form, UnitChoice.METRIC).candles().get(0).fragranceFraction()).isEqualTo(0.06);
    }

    @Test void a_wax_of_ones_own_takes_all_its_numbers() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put("_wax", "_own").put("wax/name", "Loft blend").put("wax/densityKgM3", "880")
                .put("wax/solidusCelsius", "40 °C").put("wax/liquidusCelsius", "122 °F")
                .put("wax/latentHeatJKg", "140000").put("wax/specificHeatSolidJKgK", "2100")
                .put("wax/specificHeatLiquidJKgK", "2200")
                .put("wax/conductivitySolidWMK", "0,2").put("wax/conductivityLiquidWMK", "0.3");

        Plan kept = read(plan, form, UnitChoice.METRIC);

        assertThat(kept.candles().get(0).wax().name()).isEqualTo("Loft blend");
        assertThat(kept.candles().get(0).wax().liquidusCelsius()).isEqualTo(50);
        assertThat(kept.candles().get(0).wax().conductivitySolidWMK()).isEqualTo(0.2);
        assertThat(read(kept, EditForms.untouched(kept, UnitChoice.METRIC), UnitChoice.METRIC)).isEqualTo(kept);
    }

    @Test void a_field_that_is_not_asked_for_is_not_kept() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        int served = 0;
        while (plan.steps().get(served).stations().isEmpty()) {
            served++;
        }
        values(form, "steps", served).put("_stations", "false");

        assertThat(read(plan, form, UnitChoice.METRIC).steps().get(served).stations()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "fillGrams   | 8 bananas  | \"8 bananas\" is not a weight",
        "fillGrams   | 8 fl oz    | is a volume, not a weight",
        "fillGrams   | 1,500      | can be a thousand and more or one and a part",
        "pourCelsius | 60 g       | is a weight, not a temperature",
        "pourCelsius | NaN        | is not a temperature",
        "vessel/wallMm | 1,500    | can be a thousand and more or one and a part"})
    void what_is_no_such_figure_is_told_at_its_place(String at, String typed, String said) {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "candles", 0).put(at, typed);

        List<Finding> problems = EditReading.read("mine", form, UnitChoice.METRIC).problems();

        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.place()).isEqualTo("/candles/0/" + at);
            assertThat(problem.sentence()).contains(said);
        });
    }

    @Test void what_is_no_number_is_told_by_the_rules_of_plan_files() {
        Plan plan = withKit();
        ObjectNode form = EditForms.untouched(plan, UnitChoice.METRIC);
        values(form, "steps", 1).put("minutes", "ten");
        values(form, "supplies", 0).put("perSeat", "-1");

        var problems = PlanFile.read(EditReading.read("mine", form, UnitChoice.METRIC).plan()).problems();

        assertThat(problems).extracting(Finding::place).containsExactly("/steps/1/minutes", "/prep/supplies/0/perSeat");
    }

    @Test void new_rows_without_a_name_lack_a_name_and_no_id() {
        ObjectNode form = EditForms.untouched(withKit(), UnitChoice.METRIC);
        ((ArrayNode) form.path("steps")).addObject().put("id", "").put("rest", "{}")
                .putObject("values").put("kind", "finish").put("opening", "led").put("minutes", "5");

        var problems = PlanFile.read(EditReading.read("mine", form, UnitChoice.METRIC).plan()).problems();

        assertThat(problems).extracting(Finding::toString).singleElement().asString().endsWith("/name: is missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "{}", "7", "{\"steps\":7}",
        "{\"steps\":[null,[],{\"values\":3,\"rest\":\"[\"}]}",
        "{\"candles\":[{\"rest\":\"{\\\"vessel\\\":3}\",\"values\":{\"vessel/wallMm\":\"3\",\"_wax\":\"_own\"}}]}",
        "{\"plan\":{\"rest\":\"{\\\"steps\\\":{}}\",\"values\":[]},\"evening\":{\"rest\":\"x\"}}"})
    void whatever_else_is_sent_is_a_plan_with_problems(String form) throws IOException {
        EditReading.Read read = EditReading.read("mine", Json.read(form), UnitChoice.METRIC);

        assertThat(PlanFile.read(read.plan()).problems()).isNotEmpty();
    }
}

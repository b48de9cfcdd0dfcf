package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Melter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a plan says of the day before, and of what serves a step, as JSON. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanKitTest {
    private static final String PREP = """
            {"roomCelsius":21,"spillPercent":5,"readyMarginMinutes":60,"promisedMinutes":120,
             "loads":{"convention":"of-wax","waxMakerPercent":10,"certificatePercentOfTotal":8.5,
                      "flashPointCelsius":93},
             "melters":[{"id":"pot","name":"Nine-litre melter","wax":"soy","capacityGrams":8600,"heelGrams":900,
                         "watts":1000,"efficiency":0.7,"scentedIn":"jug"}],
             "appliances":[{"id":"kettle","name":"Kettle","watts":1800,"circuit":"wall-a","onMinutes":10},
                           {"id":"pot-1","melter":"pot","circuit":"wall-a","onMinutes":240}],
             "circuits":[{"id":"wall-a","name":"Sockets by the window","volts":120,"amps":20,"rule":"north-america"}],
             "supplies":[{"id":"wick","name":"Wick, cotton","perSeat":1,"perClass":0,"sparePercent":10,"packSize":50,
                          "inStock":12,"reusable":false,"pricePerPack":6.50}]}
            """;

    private static ObjectNode object(String text) {
        try {
            return (ObjectNode) Json.read(text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static ObjectNode with(ObjectNode prep) {
        ObjectNode plan = PlanFile.write(Demo.eveningPlan());
        plan.set("prep", prep);
        return plan;
    }

    private static Kit kit(ObjectNode prep) {
        return PlanFile.read(with(prep)).ifSound().orElseThrow().kit();
    }

    private static List<String> problems(ObjectNode plan) {
        return PlanFile.read(plan).problems().stream().map(Finding::toString).toList();
    }

    private static ObjectNode at(ObjectNode prep, String pointer) {
        return (ObjectNode) prep.at(pointer);
    }

    // ---- the day before

    @Test void everything_that_a_plan_says_is_read() {
        Kit kit = kit(object(PREP));

        assertThat(kit.roomCelsius()).hasValue(21);
        assertThat(kit.spillPercent()).isEqualTo(5);
        assertThat(kit.readyMarginMinutes()).isEqualTo(60);
        assertThat(kit.promisedMinutes()).isEqualTo(OptionalInt.of(120));
        assertThat(kit.loads().convention()).contains(LoadConvention.OF_WAX);
        assertThat(kit.loads().waxMakerPercent()).hasValue(10);
        assertThat(kit.loads().certificatePercentOfTotal()).hasValue(8.5);
        assertThat(kit.loads().flashPointCelsius()).hasValue(93);
        assertThat(kit.melters()).containsExactly(new Melter("pot", "Nine-litre melter", "soy",
                OptionalDouble.of(8600), 900, OptionalDouble.of(1000), OptionalDouble.of(0.7), Melter.ScentedIn.JUG));
        assertThat(kit.circuits()).containsExactly(new Circuit("wall-a", "Sockets by the window",
                OptionalDouble.of(120), OptionalDouble.of(20), Optional.of(Circuit.Rule.NORTH_AMERICA)));
        assertThat(kit.supplies()).singleElement().satisfies(wick -> {
            assertThat(wick.perSeat()).isEqualTo(1);
            assertThat(wick.sparePercent()).isEqualTo(10);
            assertThat(wick.packSize()).isEqualTo(50);
            assertThat(wick.inStock()).isEqualTo(12);
            assertThat(wick.pricePerPack()).hasValue(6.5);
        });
    }

    @Test void an_appliance_that_is_a_melter_has_that_melters_name_and_watts() {
        Kit kit = kit(object(PREP));

        assertThat(kit.appliances().get(1).name()).isEqualTo("Nine-litre melter");
        assertThat(kit.appliances().get(1).watts()).hasValue(1000);
        assertThat(kit.appliances().get(0).watts()).hasValue(1800);
    }

    @Test void what_is_not_said_is_absent_and_never_guessed() {
        ObjectNode prep = object(PREP);
        for (String field : List.of("roomCelsius", "spillPercent", "readyMarginMinutes", "promisedMinutes", "loads",
                "supplies")) {
            prep.remove(field);
        }
        at(prep, "/melters/0").remove(List.of("watts", "efficiency", "heelGrams", "capacityGrams", "scentedIn"));
        at(prep, "/circuits/0").remove(List.of("volts", "amps", "rule"));
        at(prep, "/appliances/1").remove("circuit");
        Kit kit = kit(prep);

        assertThat(kit.roomCelsius()).isEmpty();
        assertThat(kit.spillPercent()).isZero();
        assertThat(kit.readyMarginMinutes()).isZero();
        assertThat(kit.promisedMinutes()).isEmpty();
        assertThat(kit.loads().convention()).isEmpty();
        assertThat(kit.melters().get(0).watts()).isEmpty();
        assertThat(kit.melters().get(0).efficiency()).isEmpty();
        assertThat(kit.circuits().get(0).volts()).isEmpty();
        assertThat(kit.circuits().get(0).rule()).isEmpty();
        assertThat(kit.appliances().get(1).watts()).isEmpty();
        assertThat(kit.appliances().get(1).circuit()).isEmpty();
    }

    @Test void what_was_written_reads_back_equal_full_and_empty() {
        for (String prep : List.of(PREP, "{}", "{\"spillPercent\":2.5,\"melters\":[]}",
                "{\"loads\":{\"waxMakerPercent\":8}}", "{\"circuits\":[{\"id\":\"a\",\"name\":\"A\"}]}")) {
            Plan plan = PlanFile.read(with(object(prep))).ifSound().orElseThrow();

            assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).as(prep).contains(plan);
        }
    }

    @Test void a_plan_that_says_nothing_of_it_is_written_as_it_always_was() {
        ObjectNode written = PlanFile.write(PlanFile.read(with(object("{}"))).ifSound().orElseThrow());

        assertThat(written.has("prep")).isFalse();
        assertThat(written.at("/steps/1").has("stations")).isFalse();
        assertThat(written.at("/candles/0").has("asTyped")).isFalse();
        assertThat(written.at("/candles/0").has("brimMillilitres")).isFalse();
    }

    @Test void what_was_typed_for_melters_rooms_and_flash_points_is_kept() {
        ObjectNode prep = object(PREP);
        prep.putObject("asTyped").put("roomCelsius", "69.8 °F");
        at(prep, "/loads").putObject("asTyped").put("flashPointCelsius", "199.4 F");
        at(prep, "/melters/0").put("capacityGrams", 8618.25503).putObject("asTyped").put("capacityGrams", "19 lb")
                .put("watts", "1 kW");
        Plan plan = PlanFile.read(with(prep)).ifSound().orElseThrow();

        assertThat(plan.kit().asTyped().text("roomCelsius")).contains("69.8 °F");
        assertThat(plan.kit().loads().asTyped().text("flashPointCelsius")).contains("199.4 F");
        assertThat(plan.kit().melters().get(0).asTyped().text("capacityGrams")).contains("19 lb");
        assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).contains(plan);
        prep.putObject("asTyped").put("roomCelsius", "21 F");
        assertThat(problems(with(prep))).singleElement().asString()
                .startsWith("/prep/asTyped/roomCelsius: \"21 F\" is -6.1");
    }

    @Test void what_an_appliance_names_must_be_in_the_plan() {
        ObjectNode prep = object(PREP);
        at(prep, "/appliances/0").put("circuit", "wall-b");
        at(prep, "/appliances/1").put("melter", "urn");

        assertThat(problems(with(prep))).containsExactly(
                "/prep/appliances/0/circuit: no circuit of this plan has the id \"wall-b\"; did you mean \"wall-a\"?",
                "/prep/appliances/1/melter: no melter of this plan has the id \"urn\"");
    }

    @Test void what_names_an_unsound_thing_is_not_at_fault_for_that() {
        ObjectNode prep = object(PREP);
        at(prep, "/circuits/0").put("volts", 12_000);
        at(prep, "/melters/0").put("efficiency", 70);

        assertThat(problems(with(prep))).containsExactly(
                "/prep/melters/0/efficiency: the efficiency of \"Nine-litre melter\" must be 0.01 to 1 (a share), "
                        + "not 70",
                "/prep/circuits/0/volts: the voltage of \"Sockets by the window\" must be 50 to 500 V, not 12000");
    }

    @Test void two_things_of_one_id_are_told_at_the_second() {
        ObjectNode prep = object(PREP);
        for (String list : List.of("melters", "appliances", "circuits", "supplies")) {
            ((ArrayNode) prep.get(list)).add(prep.get(list).get(0).deepCopy());
        }

        assertThat(problems(with(prep))).containsExactly(
                "/prep/melters/1/id: \"pot\" is the id of an earlier melter already",
                "/prep/circuits/1/id: \"wall-a\" is the id of an earlier circuit already",
                "/prep/appliances/2/id: \"kettle\" is the id of an earlier appliance already",
                "/prep/supplies/1/id: \"wick\" is the id of an earlier supply already");
    }

    @Test void a_melters_watts_stand_in_one_place() {
        ObjectNode prep = object(PREP);
        at(prep, "/appliances/1").put("watts", 1000);
        assertThat(problems(with(prep))).isEmpty();

        at(prep, "/appliances/1").put("watts", 1500);
        assertThat(problems(with(prep))).containsExactly("/prep/appliances/1/watts: the watts of a melter stand with "
                + "the melter, \"pot\": leave them out here");
    }

    @Test void every_odd_figure_has_one_sentence_at_its_place() {
        ObjectNode prep = object(PREP);
        prep.put("spillPercent", -1).put("readyMarginMinutes", 1.5).put("promisedMinutes", 0);
        prep.put("roomCelsius", "warm");
        at(prep, "/loads").put("convention", "of wax").put("waxMakerPercent", 0).put("flashPointCelsius", 1e300);
        at(prep, "/melters/0").put("heelGrams", 8600).put("wax", "Soy!");
        at(prep, "/appliances/0").put("onMinutes", -5).put("watts", Double.POSITIVE_INFINITY);
        at(prep, "/supplies/0").put("packSize", 0).put("perseat", 2).put("pricePerPack", -1);

        assertThat(problems(with(prep))).containsExactly(
                "/prep/roomCelsius: must be a number, not the text \"warm\"",
                "/prep/spillPercent: the allowance for spills must be 0 to 100 %, not -1",
                "/prep/readyMarginMinutes: must be a whole number, not the number 1.5",
                "/prep/promisedMinutes: must be 1 to 1440, not 0",
                "/prep/loads/convention: must be one of \"of-wax\", \"of-total\", not \"of wax\"; "
                        + "did you mean \"of-wax\"?",
                "/prep/loads/waxMakerPercent: the wax maker's limit must be 0.001 to 100 %, not 0",
                "/prep/loads/flashPointCelsius: the flash point must be -50 to 400 °C, not 1.0E300",
                "/prep/melters/0/wax: the wax of \"Nine-litre melter\" must be 1 to 40 lower-case letters, digits or "
                        + "hyphens, not \"Soy!\"",
                "/prep/melters/0/heelGrams: what stays in \"Nine-litre melter\" must be less than it holds",
                "/prep/appliances/0/watts: the watts of \"Kettle\" must be 0.1 to 50000 W, not Infinity",
                "/prep/appliances/0/onMinutes: the time that \"Kettle\" is on must be 0.1 to 1440 minutes, not -5",
                "/prep/supplies/0/packSize: the pack of \"Wick, cotton\" must be 0.001 to 1000000, not 0",
                "/prep/supplies/0/pricePerPack: the price of \"Wick, cotton\" must be 0 to 10000000, not -1",
                "/prep/supplies/0/perseat: is not a field here; did you mean \"perSeat\"?");
    }

    @Test void lists_without_end_have_one_sentence_each() {
        ObjectNode plan = with(object(PREP));
        ArrayNode steps = (ArrayNode) plan.get("steps");
        ArrayNode supplies = (ArrayNode) plan.at("/prep/supplies");
        for (int i = 0; i < 1000; i++) {
            steps.add(steps.get(1).deepCopy());
            supplies.add(supplies.get(0).deepCopy());
        }

        assertThat(problems(plan)).containsExactly("/steps: must have 1 to 30 entries, not 1012",
                "/prep/supplies: must have 0 to 100 entries, not 1001");
    }

    // ---- what serves a step

    private static ObjectNode served(int step, String stations) {
        ObjectNode plan = PlanFile.write(Demo.eveningPlan());
        ((ObjectNode) plan.at("/steps/" + step)).set("stations", object(stations));
        return plan;
    }

    @Test void a_seat_keeps_its_station_as_long_as_the_step_takes_unless_a_time_is_said() {
        Plan plan = PlanFile.read(served(5, "{\"atOnce\":2,\"what\":\"two scales\"}")).ifSound().orElseThrow();
        Plan said = PlanFile.read(served(5, "{\"atOnce\":2,\"what\":\"two scales\",\"minutesEach\":1.5}")).ifSound()
                .orElseThrow();

        assertThat(plan.steps().get(5).stations()).contains(new Stations(2, "two scales", Duration.ofMinutes(4)));
        assertThat(said.steps().get(5).stations()).contains(new Stations(2, "two scales", Duration.ofSeconds(90)));
        assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).contains(plan);
        assertThat(PlanFile.read(PlanFile.write(said)).ifSound()).contains(said);
        assertThat(PlanFile.write(plan).at("/steps/5/stations").has("minutesEach")).isFalse();
    }

    @Test void stations_that_serve_nobody_are_told_of() {
        assertThat(problems(served(5, "{\"atOnce\":0,\"what\":\" \",\"minuteEach\":1}"))).containsExactly(
                "/steps/5/stations/atOnce: must be 1 to 60, not 0",
                "/steps/5/stations/what: what serves the seats is missing",
                "/steps/5/stations/minuteEach: is not a field here; did you mean \"minutesEach\"?");
        assertThat(problems(served(5, "{\"atOnce\":1,\"what\":\"a scale\",\"minutesEach\":9}"))).containsExactly(
                "/steps/5/stations: a seat cannot keep a scale longer than \"Weigh and stir\" takes it");
        assertThat(problems(served(0, "{\"atOnce\":1,\"what\":\"a scale\"}"))).containsExactly(
                "/steps/0/stations: nobody waits for a turn at \"Welcome\": it is not done by seats");
    }

    @Test void a_step_of_no_sound_length_is_told_of_once() {
        ObjectNode plan = served(5, "{\"atOnce\":1,\"what\":\"a scale\",\"minutesEach\":2}");
        ((ObjectNode) plan.at("/steps/5")).put("minutes", -1);

        assertThat(problems(plan)).containsExactly("/steps/5/minutes: the planned length of \"Weigh and stir\" must be "
                + "above 0 and at most 480 minutes");
    }
}

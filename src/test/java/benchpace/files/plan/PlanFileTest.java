package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.plan.Activity;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.TableShape;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans as JSON. Places of problems are JSON pointers (RFC 6901). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanFileTest {
    private static final String SMALL = """
            {"id":"small","name":"Small","seats":4,"table":"two-tables","steps":[
              {"id":"hello","name":"Hello","kind":"talk","minutes":2},
              {"id":"wicks","name":"Wicks","kind":"hands-on","opening":"free","minutes":2.5,"allowanceMinutes":0},
              {"id":"pour","name":"Pour","kind":"pour","minutes":3},
              {"id":"cure","name":"Cure","kind":"cure","opening":"free","minutes":60}],
             "activities":[
              {"id":"labels","name":"Labels","kind":"labels","audience":"own-pace","typicalMinutes":10,
               "longestMinutes":15,"places":6,"needs":["hands-free"]}]}
            """;

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static ObjectNode small() {
        try {
            return (ObjectNode) Json.read(SMALL);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> problems(ObjectNode plan) {
        return PlanFile.read(plan).problems().stream().map(Finding::toString).toList();
    }

    private static ObjectNode step(ObjectNode plan, int index) {
        return (ObjectNode) plan.at("/steps/" + index);
    }

    @Test void what_is_left_out_has_its_default() throws IOException {
        Plan plan = PlanFile.read(stream(SMALL)).ifSound().orElseThrow();

        assertThat(plan.table()).isEqualTo(TableShape.TWO_TABLES);
        assertThat(plan.about()).isEmpty();
        Step hello = plan.steps().get(0);
        assertThat(hello.opening()).isEqualTo(Opening.LED);
        assertThat(hello.allowance()).isEqualTo(Duration.ofMinutes(3));
        assertThat(hello.say()).isEmpty();
        assertThat(plan.steps().get(1).planned()).isEqualTo(Duration.ofSeconds(150));
        assertThat(plan.steps().get(1).allowance()).isZero();
        Activity labels = plan.activities().get(0);
        assertThat(labels.needs()).containsExactly(Activity.Need.HANDS_FREE);
        assertThat(labels.interruptible()).isTrue();
    }

    @Test void activities_may_be_left_out() {
        ObjectNode plan = small();
        plan.remove("activities");

        assertThat(PlanFile.read(plan).ifSound().orElseThrow().activities()).isEmpty();
    }

    @Test void a_plan_that_was_written_reads_back_equal() {
        Plan plan = PlanFile.read(small()).ifSound().orElseThrow();

        assertThat(PlanFile.read(PlanFile.write(plan))).isEqualTo(new PlanReading.Sound(plan));
    }

    @Test void every_problem_is_told_with_its_place_in_the_order_of_the_file() throws IOException {
        PlanReading reading = PlanFile.read(stream("""
                {"id":"Big One","nmae":"x","seats":0,"table":"horse-shoe","about":7,"steps":[
                  {"id":"wicks","name":"","kind":"handson","minutes":-1,"allowanceMinutes":"3"},
                  {"id":"cure","name":"Cure","kind":"cure","minutes":60,"say":"%s","wall":null},
                  {"id":"wicks","name":"Again","kind":"hands-on","minutes":1e999,"opening":"lead"},
                  7],
                 "activities":[{"id":"labels","name":"Labels","kind":"labels","audience":"all","typicalMinutes":20,
                   "longestMinutes":15,"places":0,"needs":["hands-free","tables-clear",3],"interruptible":"yes"}]}
                """.formatted("x".repeat(401))));

        assertThat(reading.problems().stream().map(Finding::toString)).containsExactly(
                "/id: the id of a plan must be 1 to 40 lower-case letters, digits or hyphens, not \"Big One\"",
                "/name: is missing",
                "/about: must be text in quotes, not the number 7",
                "/seats: must be 1 to 60, not 0",
                "/table: must be one of \"long-table\", \"two-tables\", \"horseshoe\", \"rows\", \"rounds\", not "
                        + "\"horse-shoe\"; did you mean \"horseshoe\"?",
                "/steps/0/name: the name of a step is missing",
                "/steps/0/kind: must be one of \"talk\", \"hands-on\", \"pour\", \"cure\", \"finish\", not "
                        + "\"handson\"; did you mean \"hands-on\"?",
                "/steps/0/minutes: the planned length of \"this step\" must be above 0 and at most 480 minutes",
                "/steps/0/allowanceMinutes: must be a number, not the text \"3\"",
                "/steps/1/say: the cue of \"Cure\" is longer than 400 characters",
                "/steps/2/opening: must be one of \"led\", \"free\", not \"lead\"; did you mean \"led\"?",
                "/steps/2/minutes: must be -86400 to 86400, not Infinity",
                "/steps/3: must be an object in braces, not the number 7",
                "/activities/0/audience: must be one of \"whole-class\", \"own-pace\", not \"all\"",
                "/activities/0/longestMinutes: the longest length of \"Labels\" is below its typical one",
                "/activities/0/places: must be 1 to 60, not 0",
                "/activities/0/needs/1: must be one of \"hands-free\", \"table-clear\", not \"tables-clear\"; "
                        + "did you mean \"table-clear\"?",
                "/activities/0/needs/2: must be one of \"hands-free\", \"table-clear\", not the number 3",
                "/activities/0/interruptible: must be true or false, not the text \"yes\"",
                "/nmae: is not a field here; did you mean \"name\"?");
    }

    @Test void steps_in_an_impossible_order_are_told_of_where_they_stand() {
        ObjectNode plan = small();
        ArrayNode steps = (ArrayNode) plan.get("steps");
        steps.insert(0, step(plan, 3).deepCopy().put("id", "early-cure"));
        steps.add(step(plan, 3).deepCopy().put("id", "second-pour"));
        steps.add(step(plan, 2).deepCopy().put("id", "late"));
        steps.add(step(plan, 2).deepCopy());

        assertThat(problems(plan)).containsExactly(
                "/steps/0/kind: step \"early-cure\" cures before anything was poured",
                "/steps/5/kind: step \"second-pour\" is a second pour; a class has one",
                "/steps/6/kind: step \"late\" comes after the cure: make it a finish step",
                "/steps/7/id: \"wicks\" is the id of an earlier step already");
    }

    @Test void two_activities_of_one_name_are_told_of() {
        ObjectNode plan = small();
        ((ArrayNode) plan.get("activities")).add(plan.at("/activities/0").deepCopy());

        assertThat(problems(plan)).containsExactly(
                "/activities/1/id: \"labels\" is the id of an earlier activity already");
    }

    @Test void a_plan_in_which_nobody_does_anything_is_no_plan() {
        ObjectNode plan = small();
        plan.putArray("steps").addObject().put("id", "talk").put("name", "Talk").put("kind", "talk").put("minutes", 5);

        assertThat(problems(plan)).containsExactly(
                "/steps: no step is done by the seats: a plan needs a hands-on or pour step");
    }

    @Test void the_longest_plan_is_read_and_one_step_more_is_not() {
        ObjectNode plan = small();
        ArrayNode steps = plan.putArray("steps");
        for (int i = 0; i < Plan.MOST_STEPS; i++) {
            steps.addObject().put("id", "s" + i).put("name", "S").put("kind", "hands-on").put("minutes", 1);
        }
        assertThat(problems(plan)).isEmpty();

        steps.add(step(plan, 0).deepCopy().put("id", "more"));
        assertThat(problems(plan)).containsExactly("/steps: must have 1 to 30 entries, not 31");
    }

    @Test void an_unknown_field_is_told_of_wherever_it_stands() {
        ObjectNode plan = small();
        step(plan, 1).put("minuts", 3).put("colour", "red").put("a/b~c", 1);

        assertThat(problems(plan)).containsExactly(
                "/steps/1/minuts: is not a field here; did you mean \"minutes\"?",
                "/steps/1/colour: is not a field here",
                "/steps/1/a~1b~0c: is not a field here");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "[] | must be an object in braces, not a list",
        "null | must be an object in braces, not nothing",
        "`` | must be an object in braces, not nothing",
        "7 | must be an object in braces, not the number 7",
        "{\"steps\":{}} | /steps: must be a list in brackets, not an object",
        "{\"id\":\"a\",\"id\":\"b\"} | line 1, column 15: is not sound JSON: the name \"id\" stands there twice",
        "{} {} | line 1, column 4: is not sound JSON: it goes on after its end",
        "{\"seats\":NaN} | line 1, column 13: is not sound JSON: there is a number that is none",
        "{\"seats\": | line 1, column 10: is not sound JSON: it ends too early",
    })
    void what_is_no_plan_at_all_is_told_so(String text, String start) throws IOException {
        assertThat(PlanFile.read(stream(text)).problems().stream().map(Finding::toString))
                .anySatisfy(p -> assertThat(p).startsWith(start));
    }

    @Test void nesting_and_numbers_without_end_are_refused() throws IOException {
        assertThat(PlanFile.read(stream("[".repeat(100_000))).problems()).hasSize(1)
                .allSatisfy(p -> assertThat(p.sentence()).contains("nested more than 40 deep"));
        assertThat(PlanFile.read(stream("9".repeat(100_000))).problems()).hasSize(1)
                .allSatisfy(p -> assertThat(p.sentence()).contains("longer than any number"));
    }
}

package benchpace.web.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.units.UnitChoice;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the page that edits a plan asks of the board, over the network. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EditAnswersTest {
    private static final Plan PLAN = Demo.eveningPlan();

    @TempDir
    private Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private Reply ask(String what, JsonNode body) {
        return board.post("/api/plans/" + what, Json.text(body), board.instructor());
    }

    private static ObjectNode form() {
        return EditForms.untouched(PLAN, UnitChoice.METRIC);
    }

    private static ObjectNode whole() {
        ObjectNode body = Json.object();
        body.set("plan", PlanFile.write(PLAN));
        return body;
    }

    private Reply units(String body, String token) {
        return board.send(board.request("/api/units").header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json").PUT(HttpRequest.BodyPublishers.ofString(body)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"form", "preview", "odds"})
    void only_an_instructor_is_answered(String what) {
        assertThat(board.post("/api/plans/" + what, "{}", board.helper()).status()).isEqualTo(403);
        assertThat(board.post("/api/plans/" + what, "{}", "").status()).isEqualTo(401);
        assertThat(units("{}", board.helper()).status()).isEqualTo(403);
    }

    @Test void a_sound_form_is_a_plan() {
        ObjectNode body = Json.object().put("id", PLAN.id().value());
        body.set("form", form());

        JsonNode answer = ask("form", body).ok().json();

        assertThat(answer.get("problems")).isEmpty();
        assertThat(PlanFile.read(answer.get("plan")).ifSound()).contains(PLAN);
        assertThat(answer.at("/beside/~1candles~10~1_percent").textValue())
                .isEqualTo("6 % of the wax, 5.66 % of all that is poured");
    }

    @Test void an_unsound_form_is_told_of_at_each_place_once_and_is_no_plan() {
        ObjectNode form = form();
        ((ObjectNode) form.at("/candles/0/values")).put("fillGrams", "8 bananas");
        ((ObjectNode) form.at("/steps/2/values")).put("minutes", "0");
        ObjectNode body = Json.object().put("id", "mine");
        body.set("form", form);

        JsonNode answer = ask("form", body).ok().json();

        assertThat(answer.has("plan")).isFalse();
        assertThat(answer.get("problems").findValuesAsText("place"))
                .containsExactlyInAnyOrder("/candles/0/fillGrams", "/steps/2/minutes");
        assertThat(answer.get("problems").findValuesAsText("sentence")).allSatisfy(sentence ->
                assertThat(sentence).endsWith(".").doesNotContain("is missing"));
    }

    @Test void a_plan_with_problems_comes_to_nothing_yet() {
        ask("preview", Json.object()).problem(422, "bad-value");
        ask("odds", Json.object()).problem(422, "bad-value");
    }

    @Test void a_plan_comes_to_its_times_its_candles_and_an_evening() {
        String part = ask("preview", whole()).ok().body();

        assertThat(part).contains("1 h 41 min", "Soy in an amber glass", "Pace lines of a typical evening");
        assertThat(part).doesNotContain("just now");
    }

    @Test void its_odds_come_in_the_end() {
        Awaitility.await().untilAsserted(() -> assertThat(ask("odds", whole()).ok().body())
                .contains("in 100, give or take").doesNotContain("data-unfinished"));
    }

    @Test void units_are_kept_for_the_whole_board() {
        String token = board.instructor();
        assertThat(units("{\"mass\":\"ounce\"}", token).ok().json()).isEqualTo(Json.object().put("mass", "ounce")
                .put("volume", "millilitre").put("temperature", "celsius"));
        assertThat(units("{\"temperature\":\"fahrenheit\"}", token).ok().text("mass")).isEqualTo("ounce");

        units("{\"mass\":\"stone\"}", token).problem(422, "bad-value");
        units("{\"volume\":\"litre\"}", token).problem(422, "bad-value");
        units("{\"mass\":7}", token).problem(422, "bad-value");
        assertThat(board.get("/plans/evening-pour", token).ok().body()).contains("3.88 oz", "143.6 °F");
    }

    @Test void there_is_no_page_of_a_plan_or_a_version_that_is_not_there() {
        assertThat(board.get("/plans/nothing", board.instructor()).status()).isEqualTo(404);
        assertThat(board.get("/plans/evening-pour?version=7", board.instructor()).status()).isEqualTo(404);
        assertThat(board.get("/plans/evening-pour?version=x", board.instructor()).status()).isEqualTo(404);
    }
}

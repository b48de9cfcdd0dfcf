package benchpace.web.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.TestPlans;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The book of plans over HTTP: entity tags and conditional requests as RFC 9110 (13.1.1) and RFC 6585 (3) say. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlansApiTest extends OneEvening {
    private static final String STARTER = "evening-pour";

    /** As it comes back when it is read. */
    private static ObjectNode tins() {
        try {
            return (ObjectNode) Json.read(PlanFolder.text(TestPlans.evening().as(new PlanId("tins"), "Tins")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode called(String name) {
        return tins().put("name", name);
    }

    private Reply ask(String method, String path, String body, String ifMatch) {
        HttpRequest.Builder request = board.request(path).header("Authorization", "Bearer " + board.instructor())
                .header("Content-Type", "application/json")
                .method(method, HttpRequest.BodyPublishers.ofString(body));
        return board.send(ifMatch.isEmpty() ? request : request.header("If-Match", ifMatch));
    }

    private Reply post(String path, JsonNode body) {
        return board.post(path, Json.text(body), board.instructor());
    }

    private Reply put(JsonNode plan, String ifMatch) {
        return ask("PUT", "/api/plans/tins", Json.text(plan), ifMatch);
    }

    private Reply get(String path) {
        return board.get(path, board.instructor());
    }

    private static String etag(Reply reply) {
        return reply.header("ETag").orElseThrow();
    }

    private List<String> ids() {
        return get("/api/plans").json().findValuesAsText("id");
    }

    // ---- making and reading

    @Test void a_plan_that_is_sent_is_in_the_book_at_the_address_it_is_told() {
        Reply made = post("/api/plans", tins());

        assertThat(made.status()).isEqualTo(201);
        assertThat(made.text("id")).isEqualTo("tins");
        assertThat(made.header("Location")).contains("/api/plans/tins");
        Reply read = get("/api/plans/tins");
        assertThat(read.json()).isEqualTo(tins());
        assertThat(etag(read)).isEqualTo(etag(made)).matches("\"[^\"]+\"");
        assertThat(ids()).startsWith("tins");
    }

    @Test void the_list_says_what_each_plan_is_and_when_it_is_used() {
        post("/api/plans", tins());
        board.post("/api/classes", "{\"planId\":\"tins\",\"startsAt\":\"" + board.clock.instant().plusSeconds(3600)
                + "\"}", board.instructor()).ok();
        Reply began = board.post("/api/classes", "{\"planId\":\"tins\"}", board.instructor()).ok();
        post("/api/classes/" + began.text("id") + "/commands", board.command("open-step").put("step", "welcome")).ok();

        JsonNode row = get("/api/plans").json().get(0);

        assertThat(row.get("name").textValue()).isEqualTo("Tins");
        assertThat(row.get("seats").intValue()).isEqualTo(6);
        assertThat(row.get("minutes").doubleValue()).isEqualTo(100);
        assertThat(row.get("version").intValue()).isEqualTo(1);
        assertThat(row.get("starter").booleanValue()).isFalse();
        assertThat(row.get("lastRanAt").textValue()).isEqualTo(board.clock.instant().toString());
        assertThat(row.get("nextAt").textValue()).isEqualTo(board.clock.instant().plusSeconds(3600).toString());
    }

    @Test void a_plan_downloads_as_the_file_that_can_be_sent_again() {
        post("/api/plans", tins());

        Reply file = get("/api/plans/tins?download");

        assertThat(file.header("Content-Disposition")).contains("attachment; filename=\"tins.json\"");
        assertThat(file.body()).isEqualTo(new String(PlanFolder.text(TestPlans.evening()
                .as(new PlanId("tins"), "Tins")), StandardCharsets.UTF_8));
        assertThat(board.post("/api/plans", "\uFEFF" + file.body(), board.instructor()).text("id"))
                .as("with the mark some editors write").isEqualTo("tins-2");
        assertThat(get("/api/plans/tins").header("Content-Disposition")).isEmpty();
    }

    @Test void helpers_look_and_change_nothing() {
        post("/api/plans", tins());
        String plan = Json.text(called("By a helper"));

        assertThat(board.get("/api/plans", board.helper()).status()).isEqualTo(200);
        assertThat(board.get("/api/plans/tins", board.helper()).status()).isEqualTo(200);
        assertThat(board.get("/api/plans/tins/versions", board.helper()).status()).isEqualTo(200);
        assertThat(board.get("/plans", board.helper()).ok().body()).as("no way that is shut to helpers")
                .contains("Tins").doesNotContain("/prep\"");
        for (String path : List.of("", "/tins/copy", "/tins/restore", "/tins/versions/1/bring-back")) {
            board.post("/api/plans" + path, plan, board.helper()).problem(403, "no-right");
        }
        for (String method : List.of("PUT", "DELETE")) {
            board.send(board.request("/api/plans/tins").header("Authorization", "Bearer " + board.helper())
                    .header("If-Match", "*").method(method, HttpRequest.BodyPublishers.ofString(plan)))
                    .problem(403, "no-right");
        }
        board.get("/api/plans", "").problem(401, "not-paired");
        assertThat(get("/api/plans/tins").text("name")).isEqualTo("Tins");
    }

    // ---- changing

    @Test void a_change_says_which_version_it_was_made_from() {
        String first = etag(post("/api/plans", tins()));

        Reply changed = put(called("Small tins"), first);

        assertThat(changed.status()).isEqualTo(200);
        assertThat(etag(changed)).isNotEqualTo(first).isEqualTo(etag(get("/api/plans/tins")));
        assertThat(get("/api/plans/tins").text("name")).isEqualTo("Small tins");
        Reply stale = put(called("From the other tablet"), first).problem(412, "changed-meanwhile")
                .detail("\"Small tins\" was changed elsewhere");
        assertThat(etag(stale)).as("which stands now").isEqualTo(etag(changed));
        ask("DELETE", "/api/plans/tins", "", first).problem(412, "changed-meanwhile");
        assertThat(get("/api/plans/tins").text("name")).isEqualTo("Small tins");
    }

    @Test void a_change_that_does_not_say_is_refused() {
        post("/api/plans", tins());

        put(called("Other"), "").problem(428, "version-not-said");
        ask("DELETE", "/api/plans/tins", "", "").problem(428, "version-not-said");
        ask("POST", "/api/plans/tins/versions/1/bring-back", "{}", "").problem(428, "version-not-said");
        assertThat(get("/api/plans/tins").text("name")).isEqualTo("Tins");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '\'', value = {"'\"1\"',200", "'*',200", "'\"7\", \"1\"',200",
        "'\"7\" , W/\"2\",\"1\"',200", "'\"2\"',412", "'W/\"1\"',412", "'\"\"',412", "'1',400", "'\"1',400",
        "'\"1\" \"2\"',400", "',',400"})
    void entity_tags_are_compared_as_the_standard_says(String ifMatch, int status) {
        post("/api/plans", tins());

        assertThat(put(called("Other"), ifMatch).status()).isEqualTo(status);
    }

    @Test void the_same_plan_saved_again_is_no_new_version() {
        String first = etag(post("/api/plans", tins()));

        assertThat(etag(put(tins(), first).ok())).isEqualTo(first);
    }

    @Test void a_plan_is_saved_at_its_own_address_only() {
        post("/api/plans", tins());

        Reply refused = put(tins().put("id", "other"), "*").problem(422, "bad-value");

        assertThat(refused.json().at("/problems/0/place").textValue()).isEqualTo("/id");
    }

    @Test void starter_plans_are_copied_and_never_changed() {
        Plan starter = PlanFile.read(get("/api/plans/" + STARTER).json()).ifSound().orElseThrow();

        ask("PUT", "/api/plans/" + STARTER, Json.text(PlanFile.write(starter)), "").problem(409, "starter-plan")
                .detail("Copy it");
        ask("DELETE", "/api/plans/" + STARTER, "", "*").problem(409, "starter-plan").detail("Copy it");
        Reply copy = post("/api/plans/" + STARTER + "/copy", Json.object());
        assertThat(copy.status()).isEqualTo(201);
        assertThat(copy.header("Location")).contains("/api/plans/evening-pour-2");
        assertThat(get("/api/plans/evening-pour-2").text("name")).isEqualTo("Copy of " + starter.name());
        assertThat(post("/api/plans/" + STARTER + "/copy", Json.object().put("name", "Ours")).text("name"))
                .isEqualTo("Ours");
        assertThat(etag(get("/api/plans/" + STARTER))).matches("\"starter-[0-9a-f]{12}\"");
    }

    @Test void a_new_plan_takes_no_others_id() {
        post("/api/plans", tins());

        assertThat(post("/api/plans", tins()).text("id")).isEqualTo("tins-2");
        assertThat(post("/api/plans", tins().put("id", STARTER)).text("id")).isEqualTo(STARTER + "-2");
    }

    @Test void what_was_deleted_is_gone_until_it_is_brought_back() {
        String first = etag(post("/api/plans", tins()));

        assertThat(ask("DELETE", "/api/plans/tins", "", first).status()).isEqualTo(204);

        get("/api/plans/tins").problem(404, "plan-deleted").detail("bring it back");
        put(called("Late"), first).problem(404, "plan-deleted");
        assertThat(ids()).doesNotContain("tins");
        board.restart();
        Reply back = post("/api/plans/tins/restore", Json.object()).ok();
        assertThat(etag(back)).isEqualTo(first);
        assertThat(ids()).contains("tins");
        post("/api/plans/nobody/restore", Json.object()).problem(404, "no-such-plan");
    }

    @Test void every_version_can_be_looked_at_and_brought_back() {
        String first = etag(post("/api/plans", tins()));
        String second = etag(put(called("Small tins"), first).ok());

        ArrayNode versions = (ArrayNode) get("/api/plans/tins/versions").json();
        assertThat(versions).hasSize(2);
        assertThat(versions.get(0).get("name").textValue()).isEqualTo("Small tins");
        assertThat(versions.get(1).get("version").intValue()).isEqualTo(1);
        assertThat(versions.get(1).get("by").textValue()).isEqualTo("instructor");
        assertThat(get("/api/plans/tins/versions/1").json()).isEqualTo(tins());

        ask("POST", "/api/plans/tins/versions/1/bring-back", "{}", first).problem(412, "changed-meanwhile");
        Reply back = ask("POST", "/api/plans/tins/versions/1/bring-back", "{}", second).ok();
        assertThat(back.json().get("version").intValue()).isEqualTo(3);
        assertThat(get("/api/plans/tins").json()).isEqualTo(tins());
        for (String none : List.of("9", "0", "one", "999999999999")) {
            assertThat(get("/api/plans/tins/versions/" + none).status()).as(none).isEqualTo(404);
        }
    }

    // ---- a new one

    private static ObjectNode answers() {
        return Json.object().put("name", "Thursday tea lights").put("seats", 6)
                .put("candle", "Candle glass").put("minutes", 240).put("venue", "own-shop").put("pouring", "guests")
                .put("atOnce", 3);
    }

    @Test void a_few_answers_make_a_sound_plan_at_once() {
        post("/api/plans", tins());

        Reply made = post("/api/plans/new", answers());

        assertThat(made.status()).as(made.body()).isEqualTo(201);
        assertThat(made.header("Location")).contains("/api/plans/thursday-tea-lights");
        assertThat(made.json().get("remarks").isArray()).isTrue();
        Plan plan = PlanFile.read(get("/api/plans/thursday-tea-lights").json()).ifSound().orElseThrow();
        assertThat(plan.usualSeats()).isEqualTo(6);
        assertThat(plan.candles()).extracting(candle -> candle.name()).containsExactly("Candle glass");
        assertThat(etag(made)).isEqualTo(etag(get("/api/plans/thursday-tea-lights")));
        assertThat(board.post("/api/classes", "{\"planId\":\"thursday-tea-lights\"}", board.instructor()).status())
                .isEqualTo(201);
    }

    @Test void what_cannot_be_as_it_was_asked_is_said() {
        post("/api/plans", tins());

        assertThat(post("/api/plans/new", answers().put("minutes", 30)).json().get("remarks")).isNotEmpty()
                .allSatisfy(remark -> assertThat(remark.textValue()).endsWith("."));
    }

    @ParameterizedTest
    @CsvSource({"seats,0,1 to 60", "seats,-3,1 to 60", "seats,100000,1 to 60", "minutes,5,30 to 480",
        "atOnce,0,1 to 60"})
    void an_answer_out_of_range_is_told_by_what_it_answers(String field, int value, String range) {
        post("/api/plans", tins());

        post("/api/plans/new", answers().put(field, value)).problem(422, "bad-value").detail(range);
        assertThat(ids()).doesNotContain("thursday-tea-lights");
    }

    @ParameterizedTest
    @CsvSource({"name,''", "candle,Soap", "venue,the moon", "pouring,nobody", "seats,many", "minutes,''"})
    void an_answer_that_is_none_is_told(String field, String value) {
        post("/api/plans", tins());

        post("/api/plans/new", answers().put(field, value)).problem(422, "bad-value");
        assertThat(ids()).doesNotContain("thursday-tea-lights");
    }

    // ---- what is wrong with a plan

    @Test void every_problem_is_told_with_its_place() {
        ObjectNode plan = tins().put("seats", 0);
        ((ObjectNode) plan.at("/steps/1")).put("minutes", -3);
        ((ObjectNode) plan.at("/candles/0/wax")).put("densityKgM3", 0);

        for (Reply refused : List.of(post("/api/plans", plan),
                post("/api/classes", Json.object().set("plan", plan)))) {
            refused.problem(422, "bad-value").detail("The plan is not sound: ").detail("(and 2 more)");
            assertThat(refused.json().get("problems").findValuesAsText("place"))
                    .containsExactly("/seats", "/steps/1/minutes", "/candles/0/wax/densityKgM3");
            assertThat(refused.json().get("problems").findValuesAsText("sentence")).doesNotContain("");
        }
        assertThat(ids()).doesNotContain("tins");
    }

    @Test void a_draft_is_checked_by_the_same_rules_and_nothing_is_kept() {
        assertThat(post("/api/plans/check", tins()).ok().json().get("problems")).isEmpty();

        JsonNode problems = post("/api/plans/check", tins().put("seats", 0)).ok().json().get("problems");
        assertThat(problems).isEqualTo(post("/api/plans", tins().put("seats", 0)).json().get("problems"));
        assertThat(board.post("/api/plans/check", "{\"id\":", board.instructor()).ok().json().get("problems")
                .findValuesAsText("place")).containsExactly("line 1, column 7");
        assertThat(ids()).doesNotContain("tins");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "\"tins\"", "{\"id\":", "%PDF-1.7", "NaN", "{\"seats\":NaN}", "\0\1\2"})
    void what_is_no_plan_is_refused_in_one_sentence_and_nothing_is_kept(String body) {
        Reply refused = board.post("/api/plans", body, board.instructor()).problem(422, "bad-value");

        assertThat(refused.text("detail")).hasLineCount(1).endsWith(".");
        assertThat(refused.json().get("problems")).isNotEmpty();
    }

    @Test void bytes_that_are_no_text_are_refused() {
        byte[] noise = {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff, 0, 1};
        board.send(board.request("/api/plans").header("Authorization", "Bearer " + board.instructor())
                .POST(HttpRequest.BodyPublishers.ofByteArray(noise)))
                .problem(422, "bad-value").detail("not text in UTF-8");
    }

    @Test void a_plan_of_a_thousand_steps_is_refused_in_one_sentence() {
        ObjectNode plan = tins();
        ArrayNode steps = (ArrayNode) plan.get("steps");
        JsonNode step = steps.get(1);
        while (steps.size() < 1000) {
            steps.add(((ObjectNode) step.deepCopy()).put("id", "step-" + steps.size()));
        }

        assertThat(post("/api/plans", plan).problem(422, "bad-value").json().get("problems").get(0)
                .get("place").textValue()).isEqualTo("/steps");
    }

    @Test void five_megabytes_are_refused_and_the_largest_plan_is_not() {
        String spaces = " ".repeat(5 * 1024 * 1024);
        board.post("/api/plans", spaces, board.instructor()).problem(413, "too-large").detail("512 KiB");
        String plan = Json.text(tins());

        assertThat(board.post("/api/plans", plan + " ".repeat(512 * 1024 - plan.length()), board.instructor())
                .status()).isEqualTo(201);
        board.post("/api/plans", plan + " ".repeat(512 * 1024), board.instructor()).problem(413, "too-large");
        board.post("/api/plans", plan + " ".repeat(64 * 1024), "").problem(413, "too-large");
    }

    // ---- what lasts

    @Test void plans_versions_and_files_are_there_after_a_restart() throws Exception {
        String first = etag(post("/api/plans", tins()));
        put(called("Small tins"), first).ok();
        board.restart();

        assertThat(get("/api/plans/tins").text("name")).isEqualTo("Small tins");
        assertThat(get("/api/plans/tins/versions").json()).hasSize(2);
        Path file = data.resolve("plans/tins.json");
        assertThat(Json.read(Files.readString(file)).get("name").textValue()).isEqualTo("Small tins");
    }

    @Test void a_class_keeps_the_plan_it_was_set_up_with() {
        String first = etag(post("/api/plans", tins()));
        String made = board.post("/api/classes", "{\"planId\":\"tins\"}", board.instructor()).ok().text("id");

        ObjectNode shorter = tins();
        ((ArrayNode) shorter.get("steps")).remove(0);
        put(shorter, first).ok();

        assertThat(get("/api/classes/" + made).json().get("steps")).hasSize(7);
        String next = board.post("/api/classes", "{\"planId\":\"tins\"}", board.instructor()).ok().text("id");
        assertThat(get("/api/classes/" + next).json().get("steps")).hasSize(6);
    }

    @Test void a_file_that_cannot_be_written_costs_no_plan_and_the_health_page_says_so() throws Exception {
        Files.writeString(data.resolve("plans"), "a file where the folder should be");

        assertThat(post("/api/plans", tins()).status()).isEqualTo(201);

        assertThat(board.get("/health", "").json().get("degraded").toString()).contains("plans/tins.json");
        assertThat(get("/api/plans/tins").json()).isEqualTo(tins());
    }
}

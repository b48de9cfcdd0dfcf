package benchpace.web.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.Reply;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a class would have saved, over HTTP, and the change made in a copy of its plan. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatIfOverTheNetworkTest extends OneEvening {
    private JsonNode whatIf() {
        return board.get("/api/classes/" + id + "/what-if", board.instructor()).ok().json();
    }

    private String section() {
        return board.get("/classes/" + id + "/report/what-if", board.instructor()).ok().body();
    }

    private Reply made(String change) {
        return board.post("/api/classes/" + id + "/what-if/" + change + "/plan", "", board.instructor());
    }

    private JsonNode answer(String change) {
        for (JsonNode answer : whatIf().get("answers")) {
            if (answer.get("change").asText().equals(change)) {
                return answer;
            }
        }
        throw new AssertionError("no answer to " + change);
    }

    private void poured() {
        SlowWick.pour(board, id);
    }

    @Test void before_every_candle_is_poured_it_says_so_and_nothing_else() {
        assertThat(whatIf().get("answers")).isEmpty();
        assertThat(section()).contains("once every candle is poured").doesNotContain("would have");
        made("helper").problem(404, "not-found").detail("once every candle is poured");
    }

    @Test void wicks_set_beforehand_would_have_saved_what_all_waited_for() {
        poured();
        JsonNode answer = answer("beforehand-wicks");
        JsonNode saved = answer.get("savedMinutes");
        assertThat(saved.get("p10").asDouble()).isBetween(5.0, 17.5);
        assertThat(saved.get("p90").asDouble()).isBetween(saved.get("p10").asDouble(), 18.0);
        assertThat(answer.get("says").asText()).matches("would have saved about 1\\d min.*");
        assertThat(answer.get("assumes").asText()).contains("of work before the class", "8 times 4 min");
        assertThat(answer.get("plan").asBoolean()).isTrue();
        assertThat(whatIf().get("suggestions")).extracting(JsonNode::asText).contains("beforehand-wicks")
                .hasSizeLessThanOrEqualTo(3);
    }

    @Test void every_answer_says_what_it_takes_for_granted_and_nothing_is_told_as_a_fact() {
        poured();
        for (JsonNode answer : whatIf().get("answers")) {
            assertThat(answer.get("assumes").asText()).matches("(Assumes|Same shape).*");
            assertThat(answer.get("says").asText()).startsWith("would have ");
        }
        assertThat(section()).contains("Worked out, not measured", "eight times in ten");
    }

    @Test void the_change_is_made_in_a_copy_once_however_often_it_is_asked_for() {
        poured();
        Reply first = made("beforehand-wicks");
        assertThat(first.status()).isEqualTo(201);
        String plan = first.json().get("id").asText();
        assertThat(first.json().get("name").asText()).isEqualTo("Evening pour, Set the wick beforehand");
        JsonNode copy = board.get("/api/plans/" + plan, board.instructor()).ok().json();
        assertThat(copy.get("steps")).extracting(s -> s.get("id").asText()).contains("mix", "pour")
                .doesNotContain("wicks");

        Reply second = made("beforehand-wicks");
        assertThat(second.status()).isEqualTo(200);
        assertThat(second.json().get("id").asText()).isEqualTo(plan);
        assertThat(section()).contains("Made: ", "/plans/" + plan);
        assertThat(board.get("/api/plans/evening-pour", board.instructor()).ok().body()).contains("\"wicks\"");
    }

    @Test void what_no_plan_can_hold_says_what_to_do_instead() {
        poured();
        made("helper").problem(409, "no-plan-holds-it").detail("ask one more to help");
        made("nothing-like-it").problem(404, "not-found").detail("does not apply");
    }

    @Test void only_the_instructor_is_told() {
        for (String path : new String[] {"/api/classes/" + id + "/what-if", "/classes/" + id + "/report/what-if"}) {
            assertThat(board.get(path, board.helper()).status()).isEqualTo(403);
            assertThat(board.get(path, "").status()).isEqualTo(401);
        }
        assertThat(board.post("/api/classes/" + id + "/what-if/helper/plan", "", board.helper()).status())
                .isEqualTo(403);
        assertThat(board.get("/api/classes/nothing/what-if", board.instructor()).status()).isEqualTo(404);
    }
}

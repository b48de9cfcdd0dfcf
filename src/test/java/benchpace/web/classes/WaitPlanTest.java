package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.OneEvening;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The wait over HTTP: the plan as JSON, its changes by commands, the page, a restart. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitPlanTest extends OneEvening {
    private void pourAll() {
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(id, TestBoard.opening(step));
        }
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, TestBoard.finish(seat, "pour")).ok();
            board.testClock().advance(Duration.ofSeconds(20));
        }
        board.testClock().advanceMinutes(3);
    }

    private JsonNode waiting() {
        return board.state(id).json().get("wait");
    }

    @Test void before_the_pour_activities_stand_there_without_a_plan() {
        JsonNode wait = waiting();

        assertThat(wait.get("plannedAt").isNull()).isTrue();
        assertThat(wait.get("activities")).isNotEmpty();
        assertThat(wait.get("strips")).isEmpty();
    }

    @Test void after_the_pour_every_seat_has_a_strip_and_the_plan_beats_first_come_first_served() {
        pourAll();
        JsonNode wait = waiting();

        assertThat(wait.get("strips")).hasSize(8);
        assertThat(wait.get("calls")).isNotEmpty();
        assertThat(wait.at("/idleMinutes/planned").intValue())
                .isLessThanOrEqualTo(wait.at("/idleMinutes/unplanned").intValue());
    }

    @Test void the_instructor_moves_starts_lengthens_ends_and_skips_an_activity() {
        pourAll();
        Instant at = Instant.parse(activity("drinks").at("/next/at").textValue());
        Instant later = at.plus(Duration.ofMinutes(5));
        board.tap(id, TestBoard.command("move-activity").put("activity", "drinks").put("to", later.toString())).ok();
        assertThat(activity("drinks").at("/next/at").textValue()).isEqualTo(later.toString());

        board.tap(id, TestBoard.command("open-activity").put("activity", "drinks")).ok();
        board.testClock().advanceMinutes(1);
        assertThat(activity("drinks").get("open").booleanValue()).isTrue();
        assertThat(activity("drinks").get("now")).hasSize(8);
        Instant until = Instant.parse(activity("drinks").get("nowUntil").textValue());

        board.tap(id, TestBoard.command("extend-activity").put("activity", "drinks").put("minutes", 5)).ok();
        assertThat(Instant.parse(activity("drinks").get("nowUntil").textValue()))
                .isEqualTo(until.plus(Duration.ofMinutes(5)));

        board.tap(id, TestBoard.command("close-activity").put("activity", "drinks")).ok();
        assertThat(activity("drinks").get("now")).isEmpty();

        board.tap(id, TestBoard.command("skip-activity").put("activity", "labels")).ok();
        assertThat(activity("labels").get("skipped").booleanValue()).isTrue();
        assertThat(activity("labels").get("next").isNull()).isTrue();
    }

    @Test void a_helper_sees_the_plan_and_may_not_change_it() {
        pourAll();

        assertThat(board.get("/classes/" + id + "/wait", board.helper()).ok().body()).contains("Seat by seat")
                .doesNotContain("data-command=\"skip-activity\"");
        board.tap(id, TestBoard.command("skip-activity").put("activity", "labels"), board.helper())
                .problem(403, "no-right");
    }

    @Test void a_guest_is_asked_to_pair_before_the_page_opens() {
        assertThat(board.get("/classes/" + id + "/wait", "").status()).isEqualTo(401);
    }

    @Test void a_restart_keeps_the_plan_what_was_told_and_what_is_taken_to_have_happened() {
        pourAll();
        List<JsonNode> seen = new ArrayList<>();
        for (int minute = 0; minute < 30; minute++) {
            board.testClock().advanceMinutes(1);
            seen.add(waiting());
            if (minute == 12) {
                board.tap(id, TestBoard.command("pause").put("seat", 2)).ok();
            }
        }
        JsonNode before = waiting();
        board.restart();

        assertThat(waiting()).isEqualTo(before);
        assertThat(seen).doesNotHaveDuplicates();
    }

    @Test void the_wall_calls_out_what_where_and_for_whom_by_number_and_names_nobody() {
        pourAll();
        String wall = board.get("/classes/" + id + "/wall", "").ok().body();

        assertThat(wall).contains("<ol class=\"calls", "seats ").doesNotContain("Ida", "Tomasz");
    }

    @Test void the_pages_follow_the_rules_of_their_policy() {
        pourAll();
        String page = board.get("/classes/" + id + "/wait", board.instructor()).ok().body();

        assertThat(page).doesNotContain(" style=", "<style", "onclick")
                .contains("<svg", "data-command=\"open-activity\"");
    }

    private JsonNode activity(String name) {
        for (JsonNode a : waiting().get("activities")) {
            if (a.get("id").textValue().equals(name)) {
                return a;
            }
        }
        throw new AssertionError(name + " in " + Json.pretty(waiting()));
    }
}

package benchpace.web.classes;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.plan.StarterPlans;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Setting classes up, listing them, and asking for their state and events. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClassesTest {
    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private Reply create(String body) {
        return board.post("/api/classes", body, board.instructor());
    }

    // ---- health

    @Test void health_is_told_to_anybody() {
        Reply reply = board.get("/health", "").ok();

        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.text("status")).isEqualTo("ok");
        assertThat(reply.header("Content-Type")).get().asString().startsWith("application/json");
    }

    // ---- setting up

    @Test void a_class_is_set_up_from_a_plan_that_the_board_knows() {
        Reply reply = create("{\"planId\":\"table-of-six\",\"seats\":5,\"name\":\"Saturday\","
                + "\"startsAt\":\"2027-03-04T20:00:00+01:00\"}");

        assertThat(reply.status()).isEqualTo(201);
        String id = reply.text("id");
        assertThat(reply.header("Location")).contains("/api/classes/" + id);
        JsonNode state = board.state(id).json();
        assertThat(state.get("name").textValue()).isEqualTo("Saturday");
        assertThat(state.get("startsAt").textValue()).isEqualTo("2027-03-04T19:00:00Z");
        assertThat(state.get("seats")).hasSize(5);
    }

    @Test void a_class_is_set_up_from_a_plan_that_is_sent_along() throws IOException {
        try (InputStream plan = getClass().getResourceAsStream("/demo-data/plans/table-of-six.json")) {
            Reply reply = create(Json.text(Json.object().set("plan", Json.read(plan))));

            assertThat(reply.status()).isEqualTo(201);
            assertThat(board.state(reply.text("id")).json().get("seats")).as("as many seats as the plan's").hasSize(6);
        }
    }

    @Test void a_class_without_a_name_has_its_plans_and_begins_now() {
        Reply reply = create("{\"planId\":\"table-of-six\"}");

        assertThat(reply.text("name")).isEqualTo("Table of six");
        assertThat(reply.text("startsAt")).isEqualTo(TestClock.EVENING.toString());
    }

    @Test void a_plan_that_is_not_sound_is_refused_with_its_first_problem() {
        create("{\"plan\":{\"id\":\"x\",\"name\":\"X\",\"seats\":6,\"steps\":[]}}").problem(422, "bad-value");
        create("{\"plan\":[]}").problem(422, "bad-value");
        create("{\"plan\":\"table-of-six\"}").problem(422, "bad-value");
    }

    @Test void a_class_needs_exactly_one_plan() {
        create("{}").problem(422, "bad-value").detail("\"planId\"");
        create("{\"plan\":{},\"planId\":\"table-of-six\"}").problem(422, "bad-value");
        create("{\"planId\":\"no-such-plan\"}").problem(422, "bad-value").detail("table-of-six");
        create("{\"planId\":7}").problem(422, "bad-value");
    }

    @Test void seats_names_and_start_have_to_be_sensible() {
        for (String seats : List.of("0", "-1", "61", "2.5", "\"6\"", "[]", "1e9", "99999999999999999999")) {
            create("{\"planId\":\"table-of-six\",\"seats\":" + seats + "}").problem(422, "bad-value")
                    .detail("\"seats\"");
        }
        for (String starts : List.of("\"tomorrow\"", "12", "\"2027-02-30T18:00:00Z\"", "\"2027-03-04T18:30:00\"",
                "\"1999-01-01T00:00:00Z\"", "\"+999999999-01-01T00:00:00Z\"", "[]")) {
            create("{\"planId\":\"table-of-six\",\"startsAt\":" + starts + "}").problem(422, "bad-value")
                    .detail("\"startsAt\"");
        }
        create("{\"planId\":\"table-of-six\",\"name\":\"" + "x".repeat(81) + "\"}").problem(422, "bad-value");
        create("{\"planId\":\"table-of-six\",\"name\":\"half \\ud83d of one\"}").problem(422, "bad-value");
        create("{\"planId\":\"table-of-six\",\"names\":[\"a\\nb\"]}").problem(422, "bad-value");
        create("{\"planId\":\"table-of-six\",\"names\":[7]}").problem(422, "bad-value");
        create("{\"planId\":\"table-of-six\",\"names\":\"Ida\"}").problem(422, "bad-value");
        create("{\"planId\":\"table-of-six\",\"seats\":1,\"names\":[\"Ida\",\"Bo\"]}").problem(422, "bad-value");
    }

    @Test void the_plans_to_choose_from_are_listed() {
        assertThat(board.get("/api/plans", board.instructor()).json().findValuesAsText("id"))
                .containsExactlyElementsOf(StarterPlans.IDS);
    }

    // ---- listing

    @Test void classes_are_listed_with_what_they_are() {
        assertThat(board.get("/api/classes", board.instructor()).json()).isEmpty();
        String id = board.evening();

        JsonNode list = board.get("/api/classes", board.helper()).ok().json();

        assertThat(list).hasSize(1);
        assertThat(list.get(0).get("id").textValue()).isEqualTo(id);
        assertThat(list.get(0).get("name").textValue()).isEqualTo("Thursday");
        assertThat(list.get(0).get("startsAt").textValue()).isEqualTo(TestClock.EVENING.toString());
        assertThat(list.get(0).get("status").textValue()).isEqualTo("before");
    }

    // ---- state

    @Test void the_state_tells_all_that_clients_rely_on() {
        String id = board.evening();
        board.tap(id, opening("welcome")).ok();
        board.tap(id, opening("wicks")).ok();
        board.testClock().advanceMinutes(3);
        long seq = board.tap(id, finish(4, "wicks")).seq();

        JsonNode state = board.state(id).json();

        assertThat(state.get("seq").longValue()).isEqualTo(seq).isEqualTo(4);
        assertThat(Instant.parse(state.get("now").textValue())).isEqualTo(TestClock.EVENING.plusSeconds(180));
        JsonNode step = state.get("steps").get(2);
        assertThat(step.get("id").textValue()).isEqualTo("wicks");
        assertThat(step.get("kind").textValue()).isEqualTo("hands-on");
        assertThat(step.get("opening").textValue()).isEqualTo("led");
        assertThat(step.get("open").booleanValue()).isTrue();
        assertThat(step.get("name").textValue()).isNotBlank();
        JsonNode four = state.get("seats").get(3);
        assertThat(four.get("seat").intValue()).isEqualTo(4);
        assertThat(four.get("finished")).extracting(JsonNode::textValue).containsExactly("wicks");
        assertThat(four.get("step").textValue()).isEqualTo("fragrance");
        assertThat(four.get("state").textValue()).isEqualTo("waiting");
        assertThat(four.get("pouredAt").isNull()).isTrue();
        assertThat(four.get("readyAt").isNull()).isTrue();
        assertThat(state.get("seats").get(0).get("name").textValue()).isEqualTo("Ida");
        assertThat(Instant.parse(four.get("since").textValue())).isEqualTo(TestClock.EVENING.plusSeconds(180));
        assertThat(state.get("flags").isArray()).isTrue();
        for (String quantile : List.of("p10", "p50", "p90")) {
            assertThat(Instant.parse(state.get("forecast").get(quantile).textValue())).isAfter(TestClock.EVENING);
        }
        assertThat(state.get("next").get("step").textValue()).isEqualTo("fragrance");
    }

    @Test void a_seat_that_is_far_over_its_time_is_flagged_with_its_reason() {
        String id = board.evening();
        board.stuckAtWicks(id, 4);
        board.testClock().advanceMinutes(12);

        JsonNode flags = board.state(id).json().get("flags");

        assertThat(flags).hasSize(1);
        assertThat(flags.get(0).get("level").textValue()).isEqualTo("behind");
        assertThat(flags.get(0).get("reason").textValue())
                .matches("Seat 4: Set the wick, \\d+ min longer than this table needs\\. "
                        + "If it goes on, everyone leaves \\d+ min later\\.");
        assertThat(flags.get(0).get("priceMinutes").intValue()).isPositive();
    }

    @Test void a_tablet_that_nobody_taps_is_said_to_be_silent_and_nobody_is_flagged() {
        String id = board.evening();
        board.tap(id, opening("wicks")).ok();
        board.testClock().advanceMinutes(2);
        board.tap(id, finish(1, "wicks")).ok();
        board.testClock().advanceMinutes(13);

        JsonNode state = board.state(id).json();

        assertThat(state.get("flags")).isEmpty();
        assertThat(state.get("silenceMinutes").intValue()).isEqualTo(13);
    }

    @Test void a_poured_seat_counts_down_to_the_plans_hour() {
        String id = board.evening();
        List.of("wicks", "fragrance", "mix", "pour").forEach(step -> board.tap(id, opening(step)).ok());
        List.of("wicks", "fragrance", "mix", "pour").forEach(step -> board.tap(id, finish(2, step)).ok());

        JsonNode two = board.state(id).json().get("seats").get(1);

        assertThat(two.get("pouredAt").textValue()).isEqualTo("2027-03-04T18:30:00Z");
        assertThat(two.get("readyAt").textValue()).isEqualTo("2027-03-04T19:30:00Z");
    }

    @Test void a_class_that_is_not_there_is_told_as_such_on_every_address() {
        for (String path : List.of("", "/events", "/stream")) {
            board.get("/api/classes/no-such-class" + path, board.instructor()).problem(404, "no-such-class");
        }
        board.tap("no-such-class", command("close")).problem(404, "no-such-class");
    }

    // ---- events

    @Test void events_are_lines_in_order_after_the_number_asked_for() {
        String id = board.evening();
        board.tap(id, opening("wicks")).ok();
        board.tap(id, finish(1, "wicks")).ok();

        List<JsonNode> all = lines(board.get("/api/classes/" + id + "/events", board.instructor()).ok());
        List<JsonNode> later = lines(board.get("/api/classes/" + id + "/events?after=2", board.instructor()).ok());

        assertThat(all).extracting(e -> e.get("seq").intValue()).containsExactly(1, 2, 3);
        assertThat(all).extracting(e -> e.get("type").textValue())
                .containsExactly("create", "open-step", "finish-step");
        assertThat(all).allMatch(e -> Instant.parse(e.get("at").textValue()).equals(TestClock.EVENING)
                && Instant.parse(e.get("recordedAt").textValue()).equals(TestClock.EVENING));
        assertThat(later).containsExactly(all.get(2));
        assertThat(board.get("/api/classes/" + id + "/events?after=999", board.instructor()).ok().body()).isEmpty();
    }

    private static List<JsonNode> lines(Reply reply) {
        List<JsonNode> events = new ArrayList<>();
        reply.body().lines().forEach(line -> {
            try {
                events.add(Json.read(line));
            } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
                throw new AssertionError(line, e);
            }
        });
        return events;
    }

    @Test void after_has_to_be_a_number() {
        String id = board.evening();
        for (String after : List.of("-1", "x", "1.5", "99999999999999999999", "%20", "1%002")) {
            board.get("/api/classes/" + id + "/events?after=" + after, board.instructor()).problem(400, "bad-request");
        }
    }
}

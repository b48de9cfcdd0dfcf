package benchpace.web.learned;

import static benchpace.web.cure.CureBoard.json;
import static benchpace.web.cure.CureBoard.wish;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.awaitility.Awaitility.await;

import benchpace.web.cure.CureBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What past classes taught in one place, each of it accepted or taken back there. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LearnedOverTheNetworkTest {
    private static final String PLACE = "The Tallow Loft, Quay Lane, Marrowby";
    private static final String STEPS = "/api/learned/plans/evening-pour?place="
            + URLEncoder.encode(PLACE, StandardCharsets.UTF_8);

    @TempDir private Path data;
    private CureBoard board;

    @BeforeEach void open() {
        board = new CureBoard(data);
    }

    @AfterEach void close() {
        board.close();
    }

    // ---- rooms

    /** A class whose first candle's top is that warm twenty minutes after the pour. */
    private String taught(double minute, double celsius) {
        String id = board.poured(minute, 1);
        board.minute(minute + 20).tap(id, wish("read-temperature").put("seat", 1).put("celsius", celsius));
        board.tap(id, wish("close"));
        await().atMost(Duration.ofSeconds(20)).until(() -> board.get("/api/learned/rooms").body().contains(id));
        return id;
    }

    private JsonNode room() {
        return json(board.get("/api/learned/rooms")).get(0);
    }

    private String tag() {
        return room().get("tag").textValue();
    }

    private List<String> states() {
        return room().get("classes").findValuesAsText("state");
    }

    private double loss() {
        return room().get("lossMedian").doubleValue();
    }

    private String page() {
        return board.get("/history/learned").body();
    }

    private HttpResponse<String> decide(String method, String classId) {
        return board.change(method, "/api/learned/classes/" + classId, tag(), board.instructor());
    }

    @Test void nothing_learned_yet_is_said_so() {
        assertThat(page()).contains("What past classes taught", "Nothing yet. Thermometer readings",
                "Nothing yet. When a class is closed");
    }

    @Test void a_class_that_taught_its_room_is_new_and_in_force_until_somebody_decides() {
        String id = taught(40, 40);

        assertThat(states()).containsExactly("new");
        assertThat(page()).contains(PLACE, "/classes/" + id + "/report", "New: in force unless you take it back",
                "One class's part is new", "From 1 observation: ", "Cools about ");
        assertThat(board.get("/cure").body()).contains("/history/learned")
                .contains(between(page(), "<p>Cools about ", "</p>"));

        assertThat(decide("POST", id).statusCode()).isEqualTo(200);
        assertThat(states()).containsExactly("accepted");
        assertThat(page()).contains("Accepted on ").doesNotContain("New: in force");
        board.restart();
        assertThat(states()).containsExactly("accepted");
    }

    private static String between(String text, String from, String to) {
        int at = text.indexOf(from);
        return text.substring(at, text.indexOf(to, at));
    }

    @Test void what_a_class_taught_is_taken_back_and_counts_again_and_later_lessons_follow() {
        String first = taught(40, 38);
        double one = loss();
        String second = taught(140, 44);
        double both = loss();

        assertThat(decide("DELETE", first).statusCode()).isEqualTo(200);
        double without = loss();
        assertThat(states()).containsExactly("new", "taken-back");
        assertThat(without).as("the second alone, which was read warmer, cools slower").isLessThan(both);
        assertThat(page()).contains("it teaches no more", "Let it count again", "left out", "in 1 class, the last on");
        board.restart();
        assertThat(loss()).as("after a restart").isEqualTo(without);

        assertThat(decide("DELETE", second).statusCode()).isEqualTo(200);
        assertThat(page()).contains("Nothing that was taught here counts.");
        assertThat(board.get("/cure").body()).contains("Nothing yet.");

        assertThat(decide("POST", first).statusCode()).isEqualTo(200);
        assertThat(loss()).isCloseTo(one, within(1e-9));
        assertThat(decide("POST", second).statusCode()).isEqualTo(200);
        assertThat(loss()).as("as if nothing had been").isCloseTo(both, within(1e-9));
    }

    @Test void a_class_that_has_begun_keeps_what_it_began_with() {
        String first = taught(40, 38);
        String running = board.poured(140, 1);
        String ready = board.seat(running, 1).get("readyAt").textValue();

        decide("DELETE", first);

        assertThat(board.seat(running, 1).get("readyAt").textValue()).isEqualTo(ready);
    }

    @Test void a_hand_test_noted_after_the_acceptance_makes_the_lesson_new_again() {
        String id = taught(40, 40);
        decide("POST", id);
        board.minute(140).tap(id, wish("judge-set").put("seat", 1));

        await().atMost(Duration.ofSeconds(20)).until(() -> states().equals(List.of("new")));
        decide("DELETE", id);
        board.minute(141).tap(id, wish("note").put("text", "draughty"));
        assertThat(states()).containsExactly("taken-back");
    }

    @Test void all_that_is_new_of_a_room_is_accepted_at_once() {
        taught(40, 38);
        taught(140, 44);

        assertThat(board.change("POST", "/api/learned/rooms?room=" + URLEncoder.encode(PLACE, StandardCharsets.UTF_8),
                tag(), board.instructor()).statusCode()).isEqualTo(200);
        assertThat(states()).containsExactly("accepted", "accepted");
    }

    @Test void the_second_of_two_devices_is_told_that_it_looks_at_what_was() {
        String id = taught(40, 40);
        String seen = tag();
        decide("DELETE", id);

        HttpResponse<String> late = board.change("POST", "/api/learned/classes/" + id, seen, board.instructor());

        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(json(late).get("detail").textValue()).contains("changed meanwhile", "Nothing was changed now");
        assertThat(states()).containsExactly("taken-back");
        assertThat(board.change("POST", "/api/learned/classes/" + id, "", board.instructor()).statusCode())
                .as("which version is not said").isEqualTo(428);
        assertThat(board.change("POST", "/api/learned/classes/nobody", tag(), board.instructor()).statusCode())
                .isEqualTo(404);
    }

    @Test void only_the_instructor_sees_and_decides() {
        String id = taught(40, 40);
        String helper = board.helper();

        assertThat(board.get("/history/learned", helper).statusCode()).isEqualTo(403);
        assertThat(board.get("/api/learned/rooms", helper).statusCode()).isEqualTo(403);
        for (String path : List.of("/api/learned/classes/" + id, STEPS)) {
            assertThat(board.change("POST", path, tag(), helper).statusCode()).isEqualTo(403);
            assertThat(board.change("DELETE", path, tag(), "").statusCode()).isEqualTo(401);
        }
        assertThat(states()).containsExactly("new");
    }

    @Test void a_room_that_is_reset_forgets_what_was_decided_too() {
        decide("DELETE", taught(40, 40));
        board.post("/api/rooms/reset", benchpace.files.Json.object().put("room", PLACE), board.instructor());

        assertThat(json(board.get("/api/learned/rooms"))).isEmpty();
        taught(140, 40);
        assertThat(states()).containsExactly("new");
    }

    // ---- steps

    /** Everybody needs nine minutes for the glass, where the plan has three, and thirteen for the wicks. */
    private String slow() {
        String id = board.create("evening-pour");
        board.minute(1);
        board.tap(id, wish("open-step").put("step", "welcome"));
        board.minute(15);
        tapAll(id, "vessel");
        board.tap(id, wish("open-step").put("step", "wicks"));
        board.minute(28);
        tapAll(id, "wicks");
        board.tap(id, wish("close"));
        return id;
    }

    private void tapAll(String id, String step) {
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, wish("finish-step").put("step", step).put("seat", seat));
        }
    }

    private JsonNode steps() {
        return json(board.get(STEPS));
    }

    private List<String> accepted() {
        return steps().get("steps").findValuesAsText("accepted");
    }

    private HttpResponse<String> step(String method, String step) {
        return board.change(method, STEPS + (step.isEmpty() ? "" : "&step=" + step),
                steps().get("tag").textValue(), board.instructor());
    }

    @Test void one_step_is_taken_over_and_back_and_all_of_them_are() {
        String id = slow();
        assertThat(accepted()).containsExactly("false", "false");

        assertThat(step("POST", "wicks").statusCode()).isEqualTo(200);
        assertThat(accepted()).containsExactly("false", "true");
        JsonNode wicks = steps().get("steps").get(1);
        assertThat(wicks.get("expectedMinutes")).isEqualTo(wicks.get("learnedMinutes"));
        assertThat(page()).contains("for one step, and by the plan for the others", "Expect this from the next class");
        assertThat(board.get("/classes/" + id + "/report").body()).as("the same there")
                .contains(between(page(), "<p class=\"hint\">The next class is judged", "</p>"));
        board.restart();
        assertThat(accepted()).containsExactly("false", "true");

        assertThat(step("POST", "").statusCode()).isEqualTo(200);
        assertThat(accepted()).containsExactly("true", "true");
        assertThat(step("DELETE", "vessel").statusCode()).isEqualTo(200);
        assertThat(accepted()).containsExactly("false", "true");
        assertThat(step("DELETE", "vessel").statusCode()).as("not in force").isEqualTo(404);
        assertThat(step("DELETE", "wicks").statusCode()).isEqualTo(200);
        assertThat(page()).contains("The next class is judged by the plan until you take this over.");
        assertThat(step("DELETE", "").statusCode()).isEqualTo(404);
        assertThat(step("POST", "dancing").statusCode()).isEqualTo(404);
    }

    @Test void a_lesson_that_another_class_changed_meanwhile_is_not_taken_over_unseen() {
        slow();
        String seen = steps().get("tag").textValue();
        slow();

        assertThat(board.change("POST", STEPS, seen, board.instructor()).statusCode()).isEqualTo(412);
        assertThat(accepted()).containsExactly("false", "false");
    }
}

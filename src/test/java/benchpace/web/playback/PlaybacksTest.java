package benchpace.web.playback;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Evenings played back, asked for as pages and programs do. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlaybacksTest {
    @TempDir
    private Path data;
    private TestBoard board;
    private String classId;

    @BeforeEach void an_evening_that_is_over() {
        board = TestBoard.open(data);
        classId = board.evening();
        board.stuckAtWicks(classId, 4);
        board.testClock().advanceMinutes(40);
        board.tap(classId, TestBoard.command("close")).ok();
    }

    @AfterEach void close() {
        board.close();
    }

    private Reply opening(String id, String token) {
        return board.post("/api/playbacks", Json.text(Json.object().put("classId", id)), token);
    }

    private String opened(String token) {
        Reply reply = opening(classId, token);
        assertThat(reply.status()).isEqualTo(201);
        return reply.text("id");
    }

    private JsonNode told(String id) {
        return board.get("/api/playbacks/" + id, board.instructor()).ok().json();
    }

    private Reply set(String id, String body) {
        return board.put("/api/playbacks/" + id, body, board.instructor());
    }

    @Test void every_screen_of_it_opens_and_says_what_it_is() {
        String id = opened(board.instructor());

        for (String screen : List.of("instructor", "helper", "wall", "wait")) {
            String page = board.get("/classes/" + id + "/" + screen, board.instructor()).ok().body();
            assertThat(page).as(screen).contains("Played back", "Thursday", "Not a class", "page--played");
        }
        assertThat(board.get("/classes/" + classId + "/instructor", board.instructor()).ok().body())
                .doesNotContain("Played back");
    }

    @Test void it_shows_the_class_as_it_was_at_the_time_that_it_is_at() {
        String id = opened(board.instructor());
        set(id, "{\"paused\":true}").ok();
        String begins = told(id).get("from").textValue();
        String ends = told(id).get("until").textValue();

        assertThat(board.state(id).text("status")).isNotEqualTo("closed");
        assertThat(set(id, "{\"at\":\"" + ends + "\"}").ok().json().get("ended").booleanValue()).isTrue();
        assertThat(board.state(id).text("status")).isEqualTo("closed");
        assertThat(board.state(id).json().get("seq")).isEqualTo(board.state(classId).json().get("seq"));
        set(id, "{\"at\":\"" + begins + "\"}").ok();
        assertThat(board.state(id).json().get("seq").longValue()).isLessThan(4);
    }

    @Test void what_happened_and_who_was_flagged_is_told_with_its_time() {
        List<String> marks = new ArrayList<>();
        told(opened(board.instructor())).get("marks").forEach(mark -> marks.add(mark.get("words").textValue()));

        assertThat(marks).contains("Opened Set the wick").anyMatch(words -> words.startsWith("Seat 4 is behind"));
    }

    @Test void nothing_can_be_tapped_in_it_and_the_class_stays_as_it_is() {
        String id = opened(board.instructor());
        String before = board.get("/api/classes/" + classId + "/events", board.instructor()).ok().body();

        Reply refused = board.tap(id, TestBoard.finish(3, "wicks"));
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text("type")).isEqualTo("urn:benchpace:played-back");
        assertThat(refused.text("detail")).contains("played back");
        assertThat(board.get("/api/classes/" + classId + "/events", board.instructor()).ok().body()).isEqualTo(before);
    }

    @Test void it_is_no_class_in_any_list_and_gone_after_a_restart() {
        String id = opened(board.instructor());

        assertThat(board.get("/api/classes", board.instructor()).ok().body()).doesNotContain(id);
        assertThat(board.get("/", board.instructor()).ok().body()).doesNotContain(id);
        assertThat(board.get("/api/shown", "").ok().body()).doesNotContain(id);
        board.restart();
        Reply gone = board.get("/classes/" + id + "/wall", "");
        assertThat(gone.status()).isEqualTo(404);
        assertThat(gone.body()).contains("no longer played back");
    }

    @Test void who_is_paired_may_open_one_and_moves_only_their_own_but_the_instructor_all() {
        String mine = opened(board.helper());
        String theirs = opened(board.instructor());

        assertThat(board.put("/api/playbacks/" + mine, "{\"speed\":60}", board.helper()).status()).isEqualTo(200);
        assertThat(set(mine, "{\"speed\":10}").ok().json().get("speed").intValue()).isEqualTo(10);
        Reply refused = board.put("/api/playbacks/" + theirs, "{\"speed\":60}", board.helper());
        assertThat(refused.status()).isEqualTo(403);
        assertThat(board.delete("/api/playbacks/" + theirs, board.helper()).status()).isEqualTo(403);
        assertThat(opening(classId, "").status()).isEqualTo(401);
        assertThat(board.get("/api/playbacks/" + mine, "").status()).isEqualTo(401);
    }

    @Test void what_cannot_be_is_refused_in_a_sentence_and_changes_nothing() {
        String id = opened(board.instructor());
        set(id, "{\"paused\":true}").ok();
        JsonNode before = told(id);

        for (String body : List.of("{\"speed\":0}", "{\"speed\":61}", "{\"speed\":1.5}", "{\"speed\":\"60\"}",
                "{\"paused\":1}", "{\"at\":\"now\"}", "{\"at\":\"1999-01-01T00:00:00Z\"}", "{\"at\":7}",
                "{\"paused\":false,\"speed\":100}")) {
            assertThat(set(id, body).status()).as(body).isEqualTo(422);
        }
        assertThat(told(id)).isEqualTo(before);
        assertThat(opening("no-such-class", board.instructor()).status()).isEqualTo(404);
        assertThat(opening(id, board.instructor()).status()).isEqualTo(409);
        assertThat(set("played.none", "{}").status()).isEqualTo(404);
    }

    @Test void the_recorded_evening_plays_without_any_class() {
        String id = board.post("/api/playbacks", "{\"demo\":true,\"speed\":60}", board.helper()).text("id");

        assertThat(board.get("/classes/" + id + "/helper", board.helper()).ok().body()).contains("Played back");
        assertThat(told(id).get("classId").isNull()).isTrue();
        assertThat(told(id).get("marks").size()).isGreaterThan(10);
        assertThat(told(id).get("speed").intValue()).isEqualTo(60);
        assertThat(board.post("/api/playbacks", "{}", board.helper()).status()).isEqualTo(422);
        assertThat(board.post("/api/playbacks", "{\"demo\":true,\"speed\":90}", board.helper()).status())
                .isEqualTo(422);
        assertThat(board.post("/api/playbacks", "{\"demo\":true,\"classId\":\"" + classId + "\"}", board.helper())
                .status()).isEqualTo(422);
    }

    @Test void a_class_that_is_not_over_is_not_played() {
        Reply refused = opening(board.evening(), board.instructor());

        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.text("detail")).contains("not over yet");
    }

    @Test void a_fifth_takes_the_place_of_the_one_that_was_not_looked_at_for_longest() {
        String first = opened(board.instructor());
        String second = opened(board.instructor());
        opened(board.instructor());
        opened(board.instructor());
        set(first, "{\"paused\":true}").ok();
        opened(board.instructor());

        assertThat(board.get("/api/playbacks/" + first, board.instructor()).status()).isEqualTo(200);
        assertThat(board.get("/api/playbacks/" + second, board.instructor()).status()).isEqualTo(404);
    }

    @Test void one_ends_when_somebody_ends_it_or_its_class_is_no_longer_as_it_was() {
        String ended = opened(board.instructor());
        String changed = opened(board.instructor());

        assertThat(board.delete("/api/playbacks/" + ended, board.instructor()).status()).isEqualTo(204);
        assertThat(board.get("/classes/" + ended + "/wall", "").status()).isEqualTo(404);
        board.tap(classId, TestBoard.command("note").put("text", "A calm evening")).ok();
        assertThat(board.get("/classes/" + changed + "/wall", "").status()).isEqualTo(404);
        String deleted = opened(board.instructor());
        assertThat(board.send(board.request("/api/classes/" + classId).header("Authorization",
                "Bearer " + board.instructor()).header("Content-Type", "application/json")
                .method("DELETE", java.net.http.HttpRequest.BodyPublishers.ofString("{\"confirm\":\"Thursday\"}")))
                .status()).isLessThan(300);
        assertThat(board.get("/classes/" + deleted + "/wall", "").status()).isEqualTo(404);
    }
}

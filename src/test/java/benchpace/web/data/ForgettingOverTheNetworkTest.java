package benchpace.web.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.store.Remnants;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Guests whose names are in every place that takes one, forgotten over the network and looked for in every byte. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForgettingOverTheNetworkTest {
    private static final List<String> WORDS = List.of("Quillonia", "Zephyriné", "Tarrowmead", "hazelnuttery",
            "Mirrabeth", "Velvetscarfe", "Wendolyne", "Brackenwick");

    @TempDir Path data;
    private TestBoard board;
    private ObjectNode arrival;
    private String token;

    @BeforeEach void open() {
        board = TestBoard.open(data);
        token = board.instructor();
        arrival = TestBoard.command("arrive").put("seat", 3).put("name", WORDS.get(4));
    }

    @AfterEach void close() {
        board.close();
    }

    private void tap(String id, ObjectNode command) {
        board.testClock().advance(Duration.ofSeconds(20));
        board.tap(id, command).ok();
    }

    /** A class in which every word was told. @return its id */
    private String evening() {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":4,\"name\":\"Thursday\",\"names\":[\""
                + WORDS.get(0) + "\",\"" + WORDS.get(1) + "\"]}");
        tap(id, TestBoard.command("correct-guest").put("seat", 2).put("name", WORDS.get(1)).put("party", WORDS.get(2))
                .put("note", WORDS.get(3)));
        tap(id, arrival);
        tap(id, TestBoard.command("add-seat").put("seat", 5).put("name", WORDS.get(6)).put("party", WORDS.get(2)));
        tap(id, TestBoard.opening("wicks"));
        tap(id, TestBoard.finish(1, "vessel"));
        tap(id, TestBoard.command("note").put("seat", 1).put("text", "her scarf: " + WORDS.get(5)));
        tap(id, TestBoard.command("note").put("text", WORDS.get(7) + " asked for it"));
        return id;
    }

    private String over() {
        String id = evening();
        tap(id, TestBoard.command("close"));
        return id;
    }

    private Reply forget(String id) {
        return board.post("/api/classes/" + id + "/forget-guests", "", board.instructor());
    }

    private void assertNothingIsLeft() {
        assertThat(Remnants.of(data, WORDS)).isEmpty();
    }

    @Test void a_class_that_is_over_forgets_them_everywhere_and_at_once() {
        String id = over();
        assertThat(Remnants.of(data, WORDS)).hasSizeGreaterThanOrEqualTo(WORDS.size());
        long seq = board.state(id).json().get("seq").asLong();

        Reply reply = forget(id).ok();

        assertThat(reply.json().get("cleared").asBoolean()).isTrue();
        assertNothingIsLeft();
        assertThat(board.state(id).json().get("seq").asLong()).isEqualTo(seq);
        for (String page : List.of("instructor", "helper", "wall", "wait", "report", "prep", "setup")) {
            assertThat(board.get("/classes/" + id + "/" + page, board.instructor()).body()).as(page)
                    .doesNotContain(WORDS);
        }
        for (String json : List.of("", "/events", "/guests")) {
            assertThat(board.get("/api/classes/" + id + json, board.instructor()).body()).as(json)
                    .doesNotContain(WORDS);
        }
        assertThat(board.get("/classes/" + id + "/report", board.instructor()).body())
                .contains("The guests of this class are forgotten since");
        board.restart();
        assertNothingIsLeft();
        assertThat(board.state(id).json().get("seq").asLong()).isEqualTo(seq);
        assertThat(board.boards().find(id).orElseThrow().forgotten()).isPresent();
        board.close();
        assertNothingIsLeft();
        board.comeBack();
    }

    @Test void a_backup_that_waits_to_be_fetched_goes_and_one_that_is_being_made_is_made_without_them() {
        String id = over();
        String other = over();
        assertThat(backup("ready")).isEqualTo("ready");
        assertThat(data.resolve("outgoing.backup")).exists();

        forget(id).ok();

        assertThat(board.get("/api/backup", token).ok().text("state")).isEqualTo("none");
        assertThat(data.resolve("outgoing.backup")).doesNotExist();

        backup("making");
        forget(other).ok();

        await().atMost(Duration.ofSeconds(60)).until(() -> !board.get("/api/backup", token).ok().text("state")
                .equals("making"));
        assertNothingIsLeft();
    }

    /** Begins one and waits for it, if it is to be ready. @return how it stands */
    private String backup(String until) {
        board.post("/api/backup", "{}", token).ok();
        await().atMost(Duration.ofSeconds(60)).until(() -> until.equals("making")
                || board.get("/api/backup", token).ok().text("state").equals(until));
        return board.get("/api/backup", token).ok().text("state");
    }

    @Test void a_tap_sent_again_has_its_first_answer_and_its_name_is_not_kept() {
        String id = over();
        long seq = board.tap(id, arrival).ok().json().get("seq").asLong();
        forget(id).ok();

        Reply again = board.tap(id, arrival).ok();

        assertThat(again.json().get("seq").asLong()).isEqualTo(seq);
        assertThat(again.json().get("duplicate").asBoolean()).isTrue();
        assertNothingIsLeft();
    }

    @Test void what_brings_words_of_guests_later_is_refused_in_a_sentence() {
        String id = over();
        forget(id).ok();

        assertThat(board.tap(id, TestBoard.command("note").put("text", WORDS.get(0)))
                .problem(409, "guests-forgotten").text("detail")).contains("no names and no notes");
        board.tap(id, TestBoard.command("undo").put("seq", board.state(id).json().get("seq").asLong())).ok();
        board.tap(id, TestBoard.command("arrive").put("seat", 4).put("name", WORDS.get(0)))
                .problem(409, "guests-forgotten");
        board.tap(id, TestBoard.command("arrive").put("seat", 4)).ok();
        assertNothingIsLeft();
    }

    @Test void a_class_that_is_not_over_keeps_them() {
        String id = evening();

        assertThat(forget(id).problem(409, "class-not-over").text("detail")).startsWith("The class is not over");
        assertThat(state(id)).contains(WORDS.get(0));
        board.testClock().advance(Duration.ofHours(13));
        forget(id).ok(); // left open, and heard of no more
        assertNothingIsLeft();
    }

    @Test void a_class_without_names_and_notes_has_nothing_to_forget_and_offers_nothing() {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":4,\"name\":\"Quiet\"}");
        String nothing = "Nobody has a name in this class and nothing is noted, so there is nothing to forget.";
        tap(id, TestBoard.command("close"));
        assertThat(report(id)).contains(nothing).doesNotContain("Forget the guests of this class");

        tap(id, TestBoard.command("note").put("text", "Mind the draught"));

        assertThat(report(id)).doesNotContain(nothing).contains("Forget the guests of this class");
        forget(id).ok();
        assertThat(report(id)).contains("are forgotten since").doesNotContain(nothing);
    }

    private String report(String id) {
        return board.get("/classes/" + id + "/report", token).ok().body();
    }

    @Test void asked_again_it_is_done_already() {
        String id = over();
        String at = forget(id).ok().text("forgottenAt");
        board.testClock().advanceMinutes(3);

        assertThat(forget(id).ok().text("forgottenAt")).isEqualTo(at);
    }

    @Test void only_the_instructor_may() {
        String id = over();
        board.post("/api/classes/" + id + "/forget-guests", "", board.helper()).problem(403, "no-right");
        board.put("/api/settings/forget-guests", "{\"days\":1}", board.helper()).problem(403, "no-right");
        board.post("/api/classes/none/forget-guests", "", board.instructor()).problem(404, "no-such-class");
        assertThat(state(id)).contains(WORDS.get(0));
    }

    @Test void by_age_they_go_by_themselves_some_days_after_the_class() {
        String id = over();
        board.put("/api/settings/forget-guests", "{\"days\":30}", token).ok();
        assertThat(board.get("/data", token).body()).contains("30 days after it",
                "1 class waits for that, the first until", "Thursday");
        hours(29 * 24);
        assertThat(state(id)).contains(WORDS.get(0));

        hours(25);

        assertThat(state(id)).doesNotContain(WORDS);
        assertThat(board.boards().find(id).orElseThrow().forgotten().orElseThrow().byAge()).isTrue();
        assertNothingIsLeft();
        assertThat(board.get("/data", token).body()).contains("The guests of 1 class are forgotten already.");
    }

    private void hours(int hours) {
        board.testClock().advance(Duration.ofHours(hours));
        board.erasing().look();
        token = board.pair(Json.object().put("pin", TestBoard.PIN)); // no pairing lasts that long
    }

    private String state(String id) {
        return board.get("/api/classes/" + id, token).ok().body();
    }

    @Test void until_somebody_chooses_the_days_nothing_goes_by_itself() {
        String id = over();
        hours(24 * 400);

        assertThat(state(id)).contains(WORDS.get(0));
        assertThat(board.get("/data", token).body()).contains("kept until you forget them");
    }

    @Test void days_that_would_forget_some_at_once_have_to_be_agreed_to() {
        String id = over();
        hours(24 * 60);

        assertThat(board.put("/api/settings/forget-guests", "{\"days\":30}", token)
                .problem(409, "needs-a-yes").text("detail")).contains("1 class", "\"Thursday\"", "cannot be undone");
        hours(2);
        assertThat(state(id)).contains(WORDS.get(0));
        board.put("/api/settings/forget-guests", "{\"days\":30,\"sure\":true}", token).ok();
        hours(2);
        assertThat(state(id)).doesNotContain(WORDS);
        assertNothingIsLeft();
    }

    @Test void days_are_whole_numbers_and_null_keeps_names() {
        for (String odd : List.of("{}", "{\"days\":0}", "{\"days\":-1}", "{\"days\":1.5}", "{\"days\":\"30\"}",
                "{\"days\":4000}", "{\"days\":99999999999}", "{\"days\":30,\"sure\":1}")) {
            board.put("/api/settings/forget-guests", odd, token).problem(422, "bad-value");
        }
        board.put("/api/settings/forget-guests", "{\"days\":30}", token).ok();
        assertThat(board.put("/api/settings/forget-guests", "{\"days\":null}", token).ok().json()
                .get("days").isNull()).isTrue();
        String id = over();
        hours(24 * 90);
        assertThat(state(id)).contains(WORDS.get(0));
    }

    @Test void other_classes_keep_their_guests() {
        String id = over();
        String other = over();
        forget(id).ok();

        assertThat(state(other)).contains(WORDS.get(0), WORDS.get(3));
        assertThat(state(id)).doesNotContain(WORDS);
    }

    @Test void a_deleted_class_leaves_none_of_its_words_within_the_hour() {
        String id = over();
        board.change("DELETE", "/api/classes/" + id, "{\"confirm\":\"Thursday\"}", board.instructor()).ok();
        hours(1);

        assertNothingIsLeft();
    }
}

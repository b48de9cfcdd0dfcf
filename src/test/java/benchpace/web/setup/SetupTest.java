package benchpace.web.setup;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class is set up, changed until it begins, corrected afterwards, and deleted if it was a mistake. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SetupTest {
    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private LiveClass live(String id) {
        return board.boards().find(id).orElseThrow().live();
    }

    private Reply put(String id, String body) {
        return put(id, body, board.instructor());
    }

    private Reply put(String id, String body, String token) {
        return board.send(board.request("/api/classes/" + id + "/setup").header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json").PUT(HttpRequest.BodyPublishers.ofString(body)));
    }

    private Reply delete(String id, String body) {
        HttpRequest.Builder request = board.request("/api/classes/" + id)
                .header("Authorization", "Bearer " + board.instructor());
        return board.send(body.isEmpty() ? request.DELETE() : request.header("Content-Type", "application/json")
                .method("DELETE", HttpRequest.BodyPublishers.ofString(body)));
    }

    private Reply restore(String id) {
        return board.post("/api/classes/" + id + "/restore", "{}", board.instructor());
    }

    @Test void a_class_takes_all_that_can_be_said_of_it() {
        String id = board.create("""
                {"planId":"evening-pour","name":"Choir","begins":"2027-03-04T18:30","ends":"20:45",
                "place":"The Old Chandlery","table":"rounds","numbering":"anticlockwise-from-right","seats":9,
                "roster":[{"seat":1,"name":"Ida","party":"choir","candle":"tin-paraffin","note":"no nuts"},
                {"seat":9,"name":"=1+1"}]}""");

        assertThat(live(id).startsAt()).as("by the clock of the room").isEqualTo(Instant.parse("2027-03-04T17:30:00Z"));
        assertThat(live(id).promisedEnd()).isEqualTo(Instant.parse("2027-03-04T19:45:00Z"));
        assertThat(live(id).plan().place()).isEqualTo("The Old Chandlery");
        Seat first = live(id).seat(new SeatNumber(1)).orElseThrow();
        assertThat(first.mind()).isEqualTo("no nuts");
        assertThat(live(id).candlesToMake()).containsEntry("tin-paraffin", 1);
        assertThat(live(id).seat(new SeatNumber(9)).orElseThrow().name()).isEqualTo("=1+1");
        assertThat(board.state(id).json().get("forecast").get("promised").asText()).isEqualTo("2027-03-04T19:45:00Z");
    }

    @Test void until_it_begins_what_is_sent_changes_and_the_rest_stays() {
        String id = board.evening();
        board.tap(id, command("correct-guest").put("seat", 2).put("name", "Bodil").put("note", "no nuts")).ok();

        put(id, "{\"name\":\"Friday\",\"table\":\"two-tables\",\"promisedEnd\":null}").ok();

        assertThat(live(id).name()).isEqualTo("Friday");
        assertThat(live(id).seats()).hasSize(8);
        assertThat(live(id).seat(new SeatNumber(2)).orElseThrow().mind()).isEqualTo("no nuts");
        long seq = live(id).seq();
        assertThat(put(id, "{\"name\":\"Friday\"}").ok().json().get("seq").asLong()).as("said once more")
                .isEqualTo(seq);
        board.restart();
        assertThat(live(id).name()).isEqualTo("Friday");
    }

    @Test void a_seat_more_or_a_name_put_right_keeps_what_is_known_of_all_guests() {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":2,\"roster\":"
                + "[{\"seat\":1,\"name\":\"Ida\",\"party\":\"choir\",\"candle\":\"tin-paraffin\","
                + "\"note\":\"no nuts\"}]}");

        put(id, "{\"seats\":3}").ok();
        put(id, "{\"names\":[\"Ina\",\"Bo\"]}").ok();

        assertThat(live(id).seats()).extracting(Seat::name).containsExactly("Ina", "Bo", "");
        Seat first = live(id).seat(new SeatNumber(1)).orElseThrow();
        assertThat(first.mind()).isEqualTo("no nuts");
        assertThat(first.party()).isEqualTo("choir");
        assertThat(first.candle()).contains("tin-paraffin");
    }

    @Test void who_says_what_they_looked_at_overwrites_nothing_that_was_changed_on_another_page() {
        String id = board.evening();
        String looked = "\"" + tagOnThePage(id) + "\"";
        put(id, "{\"name\":\"Theirs\"}").ok();

        String now = putFor(looked, id, "{\"name\":\"Mine\"}").problem(412, "changed-meanwhile").header("ETag")
                .orElseThrow();
        assertThat(live(id).name()).isEqualTo("Theirs");
        assertThat(now).isEqualTo("\"" + tagOnThePage(id) + "\"").isNotEqualTo(looked);
        putFor(now, id, "{\"name\":\"Mine\"}").ok();
        assertThat(live(id).name()).isEqualTo("Mine");
        board.tap(id, opening("welcome")).ok();
        putFor(looked, id, "{\"name\":\"Friday\"}").problem(409, "already-begun");
    }

    private Reply putFor(String tag, String id, String body) {
        return board.send(board.request("/api/classes/" + id + "/setup").header("If-Match", tag)
                .header("Authorization", "Bearer " + board.instructor()).header("Content-Type", "application/json")
                .PUT(HttpRequest.BodyPublishers.ofString(body)));
    }

    private String tagOnThePage(String id) {
        String page = board.get("/classes/" + id + "/setup", board.instructor()).ok().body();
        String tag = page.substring(page.indexOf("data-tag=\"") + "data-tag=\"".length());
        return tag.substring(0, tag.indexOf('"')).replace("&#34;", "");
    }

    @Test void another_plan_is_taken_and_candles_it_has_not_are_let_go() {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":4,\"roster\":"
                + "[{\"seat\":1,\"name\":\"Ida\",\"candle\":\"tin-paraffin\"}]}");
        put(id, "{\"planId\":\"table-of-six\"}").ok();
        assertThat(live(id).plan().id().value()).isEqualTo("table-of-six");
        assertThat(live(id).seat(new SeatNumber(1)).orElseThrow().name()).isEqualTo("Ida");
    }

    @Test void once_it_has_begun_it_says_what_can_still_be_corrected() {
        String id = board.evening();
        board.tap(id, opening("welcome")).ok();
        put(id, "{\"name\":\"Friday\"}").problem(409, "already-begun").detail("Names, notes and seats");

        board.tap(id, command("add-seat").put("seat", 9).put("name", "Io")).ok();
        board.tap(id, command("take-away-seat").put("seat", 8)).ok();
        assertThat(live(id).seats()).hasSize(8);
        assertThat(board.state(id).json().get("seats").findValuesAsText("seat")).contains("9").doesNotContain("8");
    }

    @Test void what_cannot_be_is_told_in_one_sentence_and_nothing_is_changed() {
        String id = board.evening();
        LiveClass before = live(id);
        put(id, "{\"promisedEnd\":\"2000-01-01T00:00:00Z\"}").problem(422, "bad-value")
                .detail("promised end is not after the beginning");
        put(id, "{\"begins\":\"tomorrow\"}").problem(422, "bad-value").detail("room's clock");
        put(id, "{\"begins\":\"2027-03-04T18:30\",\"ends\":\"17:00\"}").problem(422, "bad-value")
                .detail("The promised end, 17:00, is not after the beginning.");
        put(id, "{\"ends\":\"NaN\"}").problem(422, "bad-value").detail("room's clock");
        put(id, "{\"table\":\"oval\"}").problem(422, "bad-value").detail("rounds");
        put(id, "{\"seats\":-1}").problem(422, "bad-value");
        put(id, "{\"seats\":1e9}").problem(422, "bad-value");
        put(id, "{\"seats\":2,\"roster\":[{\"seat\":3,\"name\":\"Ida\"}]}").problem(422, "bad-value")
                .detail("but there are 2 seats");
        put(id, "{\"roster\":[{\"seat\":1,\"candle\":\"none\"}]}").problem(422, "bad-value").detail("no candle");
        put(id, "{\"roster\":[{\"seat\":1},{\"seat\":1}]}").problem(422, "bad-value").detail("second time");
        put(id, "{\"roster\":[{\"seat\":1,\"note\":\"" + "x".repeat(201) + "\"}]}").problem(422, "bad-value")
                .detail("too long");
        put(id, "{\"name\":\"x\"}", board.helper()).problem(403, "no-right");
        put("none", "{}").problem(404, "no-such-class");
        assertThat(live(id)).isSameAs(before);
    }

    @Test void a_class_that_has_not_begun_is_deleted_and_can_be_had_back() {
        String id = board.evening();
        board.guestCode(id, 1);

        assertThat(delete(id, "").ok().json().get("restorable").asBoolean()).isTrue();
        board.get("/api/classes/" + id, board.instructor()).problem(404, "class-deleted");
        board.tap(id, opening("welcome")).problem(404, "class-deleted");
        assertThat(board.get("/api/classes", board.instructor()).ok().body()).doesNotContain(id);
        board.restart();
        board.get("/api/classes/" + id, board.instructor()).problem(404, "class-deleted");

        restore(id).ok();
        assertThat(live(id).seat(new SeatNumber(1)).orElseThrow().name()).isEqualTo("Ida");
        board.tap(id, opening("welcome")).ok();
        board.restart();
        assertThat(live(id).begun()).isTrue();
    }

    @Test void a_class_that_has_begun_asks_for_its_name_and_is_gone_for_good() {
        String id = board.evening();
        board.tap(id, opening("welcome")).ok();
        delete(id, "").problem(409, "needs-its-name").detail("Thursday");
        delete(id, "{\"confirm\":\"thursday\"}").problem(409, "needs-its-name");
        assertThat(live(id).begun()).isTrue();

        assertThat(delete(id, "{\"confirm\":\"Thursday\"}").ok().json().get("restorable").asBoolean()).isFalse();
        restore(id).problem(404, "not-found");
        delete(id, "{\"confirm\":\"Thursday\"}").problem(404, "class-deleted");
        board.restart();
        assertThat(board.boards().find(id)).isEmpty();
    }

    @Test void what_was_deleted_is_erased_after_a_day() {
        String id = board.evening();
        delete(id, "").ok();
        board.testClock().advanceMinutes(23 * 60);
        board.boards().eraseDeleted();
        restore(id).ok();
        delete(id, "").ok();
        board.testClock().advanceMinutes(25 * 60);
        board.boards().eraseDeleted();
        restore(id).problem(404, "not-found");
    }

    @Test void only_the_instructor_deletes() {
        String id = board.evening();
        for (String token : List.of(board.helper(), "nobody")) {
            Reply reply = board.send(board.request("/api/classes/" + id).header("Authorization", "Bearer " + token)
                    .DELETE());
            assertThat(reply.status()).isIn(401, 403);
        }
        assertThat(live(id).seq()).isEqualTo(1);
    }

    @Test void notes_on_guests_are_for_those_who_look_after_the_table() {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":2,\"roster\":"
                + "[{\"seat\":1,\"name\":\"Ida\",\"note\":\"no nuts\"}]}");
        for (String page : List.of("/classes/" + id + "/wall", "/g/" + board.guestCode(id, 1), "/")) {
            assertThat(board.get(page, "").body()).as(page).doesNotContain("no nuts");
        }
        assertThat(Json.text(board.state(id).json())).contains("no nuts");
        assertThat(board.get("/classes/" + id + "/seats/1/sheet", board.helper()).ok().body()).contains("no nuts");
    }
}

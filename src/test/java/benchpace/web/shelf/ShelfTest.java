package benchpace.web.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Erasing;
import benchpace.board.WatchedLog;
import benchpace.files.Json;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.store.sqlite.Database;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Leaving early and the pickup shelf over HTTP. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShelfTest extends OneEvening {
    @BeforeEach void open() {
        id = poured(id);
    }

    private String poured(String classId) {
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(classId, TestBoard.opening(step));
        }
        for (int seat = 1; seat <= 4; seat++) {
            board.tap(classId, TestBoard.finish(seat, "pour")).ok();
        }
        board.testClock().advanceMinutes(10);
        return classId;
    }

    private static ObjectNode wish(int place) {
        return Json.object().put("commandId", TestBoard.freshId()).put("shelf", "Upper").put("place", place);
    }

    private Reply leave(String classId, int seat, ObjectNode wish) {
        return board.post("/api/classes/" + classId + "/seats/" + seat + "/leave", Json.text(wish), board.instructor());
    }

    private Reply shelf(String path, ObjectNode body) {
        return board.post("/api/shelf/" + path, Json.text(body.put("commandId", TestBoard.freshId())), board.helper());
    }

    private JsonNode entries() {
        return board.get("/api/shelf", board.helper()).ok().json().get("entries");
    }

    private String state(int seat) {
        return board.state(id).json().at("/seats/" + (seat - 1) + "/state").textValue();
    }

    // ---- leaving

    @Test void a_seat_that_leaves_early_gets_its_place_and_word_and_holds_the_class_no_more() {
        JsonNode entry = leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok().json();

        assertThat(entry.get("claim").textValue()).isEqualTo("maple 42");
        assertThat(entry.get("place").intValue()).isEqualTo(5);
        assertThat(entry.get("status").textValue()).isEqualTo("setting");
        assertThat(entry.get("left").booleanValue()).isTrue();
        assertThat(state(3)).isEqualTo("left");
    }

    @Test void ready_from_is_the_late_end_of_the_range_and_the_margin() {
        String late = board.state(id).json().at("/seats/2/readyUntil").textValue();
        JsonNode entry = leave(id, 3, wish(5)).ok().json();

        assertThat(java.time.Instant.parse(entry.get("readyFrom").textValue()))
                .isEqualTo(java.time.Instant.parse(late).plus(Duration.ofMinutes(30)));
        assertThat(entry.get("claim").textValue()).matches("[a-z]+ \\d\\d");
    }

    @Test void a_repeated_request_counts_once() {
        ObjectNode wish = wish(5);
        JsonNode first = leave(id, 3, wish).ok().json();
        JsonNode again = leave(id, 3, wish).ok().json();

        assertThat(again).isEqualTo(first);
        assertThat(entries()).hasSize(1);
    }

    @Test void two_devices_that_want_one_place_one_gets_it_and_the_other_is_told() throws Exception {
        ExecutorService devices = Executors.newFixedThreadPool(2);
        try {
            for (int place = 1; place <= 2; place++) {
                int wanted = place;
                int first = 2 * place - 1;
                List<Callable<Reply>> taps = List.of(() -> leave(id, first, wish(wanted)),
                        () -> leave(id, first + 1, wish(wanted)));
                List<Integer> statuses = new java.util.ArrayList<>();
                for (Future<Reply> reply : devices.invokeAll(taps)) {
                    statuses.add(reply.get().status());
                }
                assertThat(statuses).containsExactlyInAnyOrder(201, 409);
            }
        } finally {
            devices.shutdownNow();
        }
        assertThat(entries()).hasSize(2);
    }

    @Test void a_place_that_is_taken_leaves_the_seat_at_the_table() {
        leave(id, 1, wish(5)).ok();

        leave(id, 2, wish(5)).problem(409, "place-taken").detail("Upper 5");
        assertThat(state(2)).isNotEqualTo("left");
        leave(id, 2, wish(6)).ok();
    }

    @Test void what_cannot_be_is_refused_with_the_fitting_problem() {
        leave(id, 7, wish(1)).problem(409, "not-poured");
        leave(id, 1, wish(99)).problem(422, "no-such-place");
        leave(id, 1, wish(1).put("claim", "x")).problem(422, "bad-value");
        leave(id, 1, wish(1).put("collectBy", "soon")).problem(422, "bad-value");
        leave(id, 77, wish(1)).problem(404, "not-found");
        assertThat(board.post("/api/classes/" + id + "/seats/1/leave", Json.text(wish(1)), board.helper()).status())
                .isEqualTo(403);
        shelf("99/collect", Json.object()).problem(404, "no-such-candle-on-shelf");
        shelf("collect", Json.object().put("claim", "birch 11")).problem(404, "no-such-word");
        assertThat(board.get("/api/shelf", "").status()).isEqualTo(401);
        assertThat(entries()).isEmpty();
    }

    @Test void undoing_the_leaving_takes_the_candle_off_the_shelf_and_keeps_its_word_until_it_is_erased() {
        leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok();
        long left = board.state(id).json().get("seq").longValue();
        Reply undone = board.tap(id, TestBoard.command("undo").put("seq", left)).ok();

        assertThat(undone.json().get("offTheShelf").booleanValue()).isTrue();
        assertThat(entries()).isEmpty();
        assertThat(state(3)).isNotEqualTo("left");
        leave(id, 4, wish(5).put("claim", "maple 42")).problem(409, "word-taken");
        board.testClock().advance(Duration.ofDays(7).plusMinutes(1));
        board.erasing().look();
        leave(id, 4, wish(5).put("claim", "maple 42")).ok();
    }

    @Test void an_arrival_sent_again_because_its_answer_was_lost_leaves_the_candle_off_the_shelf() {
        leave(id, 3, wish(5)).ok();
        ObjectNode arrive = TestBoard.command("arrive").put("seat", 3).put("name", "");
        board.testClock().advanceMinutes(1);
        board.boards().find(id).orElseThrow().submit(new Command(arrive.get("commandId").textValue(), "instructor",
                board.clock.instant(), new ClassEvent.SeatArrived(new SeatNumber(3), "")));

        Reply again = board.tap(id, arrive).ok();

        assertThat(again.json().get("duplicate").booleanValue()).isTrue();
        assertThat(entries()).isEmpty();
    }

    @Test void an_old_arrival_sent_again_takes_nothing_that_was_put_there_later() {
        leave(id, 3, wish(5)).ok();
        ObjectNode arrive = TestBoard.command("arrive").put("seat", 3).put("name", "");
        board.tap(id, arrive).ok();
        board.testClock().advanceMinutes(1);
        board.tap(id, TestBoard.command("close")).ok();
        leave(id, 3, wish(6)).ok();

        assertThat(board.tap(id, arrive).ok().json().get("offTheShelf").booleanValue()).isFalse();

        assertThat(entries()).hasSize(1);
    }

    @Test void undoing_an_arrival_puts_the_candle_back_with_its_word() {
        leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok();
        long arrived = board.tap(id, TestBoard.command("arrive").put("seat", 3).put("name", "")).ok().seq();
        assertThat(entries()).isEmpty();
        board.restart();
        ObjectNode undo = TestBoard.command("undo").put("seq", arrived);

        assertThat(board.tap(id, undo).ok().json().get("onTheShelf").booleanValue()).isTrue();
        assertThat(board.tap(id, undo).ok().json().get("duplicate").booleanValue()).isTrue();

        assertThat(entries()).singleElement().satisfies(e -> {
            assertThat(e.get("claim").textValue()).isEqualTo("maple 42");
            assertThat(e.get("name").textValue()).isEqualTo("Io");
            assertThat(e.get("place").intValue()).isEqualTo(5);
        });
        assertThat(state(3)).isEqualTo("left");
    }

    @Test void addresses_of_the_shelf_answer_HEAD_as_they_do_GET() {
        for (String path : List.of("/api/shelf", "/api/shelf/settings", "/shelf", "/classes/" + id + "/guest-codes")) {
            assertThat(board.send(board.request(path).header("Authorization", "Bearer " + board.instructor())
                    .method("HEAD", java.net.http.HttpRequest.BodyPublishers.noBody())).status()).as(path)
                    .isEqualTo(200);
        }
    }

    @Test void ids_that_are_the_boards_own_are_taken_from_nobody() {
        leave(id, 3, wish(5).put("commandId", "board.back." + id + ".9")).problem(422, "bad-value").detail("board.");
        board.tap(id, TestBoard.command("note").put("text", "x").put("commandId", "board.leave.c-1"))
                .problem(422, "bad-value").detail("board.");
        board.tap(id, TestBoard.command("note").put("text", "x").put("commandId", "create"))
                .problem(422, "bad-value").detail("create");
    }

    @Test void a_guest_who_comes_back_takes_the_candle_off_the_shelf_too() {
        leave(id, 3, wish(5)).ok();
        board.tap(id, TestBoard.command("arrive").put("seat", 3).put("name", "")).ok();

        assertThat(entries()).isEmpty();
    }

    @Test void a_class_that_is_over_may_still_leave_a_candle_on_the_shelf() {
        board.tap(id, TestBoard.command("close")).ok();

        assertThat(leave(id, 3, wish(5)).ok().json().get("left").booleanValue()).isFalse();
        assertThat(entries()).hasSize(1);
    }

    // ---- at the counter

    @Test void a_candle_is_collected_by_its_word_however_it_is_typed_and_that_can_be_undone() {
        leave(id, 3, wish(5).put("claim", "maple 42")).ok();
        shelf("collect", Json.object().put("claim", "Maple-42")).problem(409, "still-setting");
        assertThat(shelf("collect", Json.object().put("claim", "MAPLE42").put("handTested", true)).ok()
                .text("status")).isEqualTo("collected");
        shelf("collect", Json.object().put("claim", "maple 42")).problem(409, "already-collected");

        assertThat(shelf("1/undo", Json.object()).ok().text("status")).isEqualTo("setting");
        board.testClock().advance(Duration.ofHours(3));
        assertThat(entries().get(0).get("status").textValue()).isEqualTo("ready");
        shelf("1/collect", Json.object()).ok();
    }

    @Test void a_candle_whose_place_was_given_away_comes_back_to_another() {
        leave(id, 3, wish(5)).ok();
        shelf("1/collect", Json.object().put("handTested", true)).ok();
        leave(id, 4, wish(5)).ok();

        shelf("1/undo", Json.object()).problem(409, "place-taken");
        shelf("1/undo", Json.object().put("shelf", "Lower").put("place", 2)).ok();
        shelf("2/move", Json.object().put("shelf", "Lower").put("place", 2)).problem(409, "place-taken");
        assertThat(shelf("2/move", Json.object().put("shelf", "Lower").put("place", 3)).ok().text("shelf"))
                .isEqualTo("Lower");
    }

    @Test void search_and_reminders_find_what_is_waited_for() {
        leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok();
        leave(id, 4, wish(6).put("claim", "birch 17")).ok();

        for (String typed : List.of("maple", "42", "io", "upper+5", "maple+42")) {
            assertThat(board.get("/api/shelf?q=" + typed, board.helper()).ok().json().get("entries")).as(typed)
                    .singleElement().satisfies(e -> assertThat(e.get("seat").intValue()).isEqualTo(3));
        }
        assertThat(board.get("/api/shelf/reminders", board.helper()).ok().json()).isEmpty();
        board.testClock().advance(Duration.ofDays(15));
        assertThat(board.get("/api/shelf/reminders", board.helper()).ok().json()).hasSize(2);
        assertThat(board.get("/shelf", board.helper()).ok().body()).contains("Overdue", "To remind", "maple 42");
    }

    @Test void the_shelf_survives_a_restart_and_words_go_some_days_after_collection() {
        leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok();
        leave(id, 4, wish(6).put("claim", "birch 17").put("name", "Una")).ok();
        board.restart();
        assertThat(entries()).hasSize(2);
        shelf("1/collect", Json.object().put("handTested", true)).ok();
        board.testClock().advance(Duration.ofDays(6));
        assertThat(entries().get(0).get("claim").textValue()).isEqualTo("maple 42");
        board.testClock().advance(Duration.ofDays(1).plusMinutes(1));
        board.erasing().look();

        JsonNode after = entries();
        assertThat(after.get(0).get("claim").isNull()).isTrue();
        assertThat(after.get(0).get("name").textValue()).isEmpty();
        assertThat(after.get(0).get("status").textValue()).as("the fact stays").isEqualTo("collected");
        assertThat(after.get(1).get("name").textValue()).as("not collected, not erased").isEqualTo("Una");
        shelf("1/undo", Json.object()).problem(409, "words-erased");
        board.restart();
        assertThat(board.get("/shelf", board.instructor()).ok().body()).contains("words erased")
                .doesNotContain("maple 42");
    }

    @Test void words_that_cannot_be_erased_are_told_to_whoever_watches_the_board() throws SQLException {
        leave(id, 3, wish(5).put("name", "Io")).ok();
        shelf("1/collect", Json.object().put("handTested", true)).ok();
        board.testClock().advance(Duration.ofDays(8));
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Database.FILE));
                Statement statement = other.createStatement()) {
            statement.execute("create trigger ill before insert on shelf_event when new.type = 'erase' "
                    + "begin select raise(abort, 'ill'); end");
            try (WatchedLog log = new WatchedLog(Erasing.class.getName())) {
                board.erasing().look();
                assertThat(log.records()).hasSize(1);
            }
            assertThat(degraded()).singleElement().asString().contains("words of candles").doesNotContain("Io");
            statement.execute("drop trigger ill");
        }
        board.testClock().advanceMinutes(1);
        board.erasing().look();

        assertThat(degraded()).isEmpty();
        assertThat(entries().get(0).get("name").textValue()).isEmpty();
    }

    private JsonNode degraded() {
        return board.get("/health", "").ok().json().get("degraded");
    }

    @Test void the_instructor_arranges_the_shelf_and_nobody_else() {
        String own = "{\"shelves\":[{\"name\":\"Window\",\"places\":3}],\"readyMarginMinutes\":60,"
                + "\"collectWithinDays\":7,\"eraseAfterDays\":2}";
        assertThat(put(own, board.helper()).status()).isEqualTo(403);
        put(own, board.instructor()).ok();
        put("{\"shelves\":[]}", board.instructor()).problem(422, "bad-value");
        put(own.replace("7", "0"), board.instructor()).problem(422, "bad-value");
        board.restart();

        leave(id, 3, wish(1)).problem(422, "no-such-place");
        assertThat(board.get("/api/shelf", board.helper()).ok().json().get("free")).hasSize(3);
    }

    private Reply put(String body, String token) {
        return board.send(board.request("/api/shelf/settings").header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json")
                .PUT(java.net.http.HttpRequest.BodyPublishers.ofString(body)));
    }

    @Test void a_tag_carries_word_place_times_and_the_cautions() {
        leave(id, 3, wish(5).put("claim", "maple 42")).ok();
        String page = board.get("/shelf/tags?ids=1", board.helper()).ok().body();

        assertThat(page).contains("maple 42", "<dt>Shelf</dt><dd>Upper 5</dd>", "Ready from about",
                "Collect by", "Burn within sight.");
        board.get("/shelf/tags?ids=9", board.helper()).problem(404, "not-found");
        board.get("/shelf/tags?ids=1;drop", board.helper()).problem(400, "bad-request");
    }

    @Test void the_dialogue_of_leaving_suggests_free_places_a_word_and_a_day() {
        leave(id, 1, wish(1)).ok();
        String dialogue = board.get("/classes/" + id + "/seats/3/leave", board.instructor()).ok().body();

        assertThat(dialogue).contains("Upper 2", "Claim word", "type=\"date\"", "hand test decides")
                .doesNotContain("Upper 1<");
        assertThat(board.get("/classes/" + id + "/seats/3/leave", board.helper()).status()).isEqualTo(403);
    }

    /** RFC 5545, as ical4j reads it. */
    @Test void the_calendar_file_holds_class_breaks_and_last_days_and_no_name() throws Exception {
        leave(id, 3, wish(5).put("claim", "maple 42").put("name", "Io")).ok();
        Reply reply = board.get("/classes/" + id + "/calendar.ics", board.helper()).ok();
        Calendar calendar = new CalendarBuilder().build(new StringReader(reply.body()));

        List<String> summaries = calendar.<VEvent>getComponents("VEVENT").stream()
                .map(e -> e.getSummary().getValue()).toList();
        assertThat(summaries).contains("Thursday", "First candles ready, about")
                .anyMatch(s -> s.startsWith("Last day to collect"));
        assertThat(reply.body()).doesNotContain("Io\r", "Ida", "Tomasz");
        assertThat(reply.header("Content-Type")).get().asString().startsWith("text/calendar");
        assertThat(board.get("/classes/" + id + "/calendar.ics", "").status()).isEqualTo(401);
    }
}

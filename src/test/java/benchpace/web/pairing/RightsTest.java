package benchpace.web.pairing;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import benchpace.web.RouteAddress;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import benchpace.web.stream.ListeningScreen;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Who may do and see what: the instructor, a helper, and everybody else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class RightsTest extends OneEvening {
    /** A body for each type of command that is sound, whether or not the class would agree. */
    private static final Map<String, Object> FIELDS = Map.of("seat", 1, "step", "vessel", "seq", 1, "helper", "AB",
            "activity", "labels", "text", "hello", "celsius", 60, "minutes", 5, "with", 2, "candle", "tin");


    private static ObjectNode any(String type) {
        ObjectNode command = command(type);
        FIELDS.forEach((name, value) -> command.putPOJO(name, value));
        command.put("to", 2).put("on", true);
        if (type.equals("correct-time") || type.equals("move-activity")) {
            command.put("to", TestClock.EVENING.toString());
        }
        return command;
    }

    @Test void without_pairing_nothing_but_the_wall_is_to_be_had() {
        for (String path : List.of("/api/classes", "/api/plans", "/api/classes/" + id,
                "/api/classes/" + id + "/events", "/classes/" + id + "/seats/1/sheet",
                "/classes/" + id + "/instructor/stream", "/classes/" + id + "/helper/stream")) {
            board.get(path, "").problem(401, "not-paired");
        }
        board.post("/api/classes", "{\"planId\":\"table-of-six\"}", "").problem(401, "not-paired");
        for (String type : EventJson.types()) {
            board.tap(id, any(type), "").problem(401, "not-paired");
        }
        assertThat(board.state(id).seq()).as("nothing was recorded").isEqualTo(1);
    }

    @Test void a_token_that_was_never_given_out_opens_nothing() {
        board.get("/api/classes", "AAAAAAAAAAAAAAAAAAAAAAAAAAA").problem(401, "not-paired");
        board.get("/api/classes", "' or 1=1 --").problem(401, "not-paired");
    }

    @Test void pages_for_staff_ask_a_guest_to_pair_and_show_no_names() {
        for (String page : List.of("/classes/" + id + "/instructor", "/classes/" + id + "/helper")) {
            Reply reply = board.send(board.request(page).header("Accept", "text/html"));

            assertThat(reply.status()).isEqualTo(401);
            assertThat(reply.body()).contains("Pair").doesNotContain("Ida", "Tomasz");
        }
    }

    @Test void what_anybody_can_see_names_no_guest() {
        board.tap(id, command("note").put("seat", 1).put("text", "Idas note")).ok();
        board.tap(id, command("claim").put("seat", 1).put("helper", "QX")).ok();
        for (String step : List.of("wicks", "fragrance", "mix", "pour")) {
            for (String page : List.of("/", "/classes/" + id + "/wall", "/health")) {
                assertThat(board.send(board.request(page).header("Accept", "text/html")).ok().body())
                        .doesNotContain("Ida", "Tomasz", "QX", "behind");
            }
            board.tap(id, opening(step)).ok();
            for (int seat = 1; seat <= 8; seat++) {
                board.tap(id, finish(seat, step)).ok();
            }
        }
        board.testClock().advanceMinutes(90);
        assertThat(board.get("/classes/" + id + "/wall", "").ok().body()).doesNotContain("Ida", "Tomasz", "QX");
    }

    @Test void a_helper_may_do_what_helpers_do_at_the_table_and_nothing_else() {
        Set<String> allowed = new TreeSet<>();
        for (String type : EventJson.types()) {
            Reply reply = board.tap(id, any(type), board.helper());
            if (reply.status() != 403) {
                allowed.add(type);
            }
        }

        // "create", "set-up" and "shift-clock" are no commands for anybody and answered as such
        assertThat(allowed).containsExactlyInAnyOrder("create", "set-up", "shift-clock", "claim", "sorted",
                "finish-step", "still-at-it", "note", "pause", "resume", "read-temperature", "judge-skin",
                "join-activity", "quit-activity");
    }

    @Test void an_instructor_may_wish_for_anything() {
        for (String type : EventJson.types()) {
            assertThat(board.tap(id, any(type)).status()).as(type).isNotEqualTo(403).isLessThan(500);
        }
    }

    @Test void a_helper_sets_no_class_up_and_does_not_get_the_instructors_page() {
        board.post("/api/classes", "{\"planId\":\"table-of-six\"}", board.helper()).problem(403, "no-right");
        board.get("/classes/" + id + "/instructor", board.helper()).problem(403, "no-right");
        board.get("/classes/" + id + "/instructor/stream", board.helper()).problem(403, "no-right");
        assertThat(board.get("/classes/" + id + "/helper", board.helper()).status()).isEqualTo(200);
        assertThat(board.get("/classes/" + id + "/seats/1/sheet", board.helper()).status()).isEqualTo(200);
    }

    @Test void the_helpers_link_is_on_the_start_page_for_the_instructor_only() {
        assertThat(board.get("/", board.instructor()).body()).contains("#helper=" + board.helperKey());
        assertThat(board.get("/", board.helper()).body()).doesNotContain(board.helperKey());
        assertThat(board.get("/", "").body()).doesNotContain(board.helperKey(), TestBoard.PIN);
    }

    /** The helpers' PIN opens less than this device already may, and the start page tells it to the instructor. */
    @Test void no_page_repeats_a_token_or_a_pin_that_opens_as_much_as_it() {
        for (String page : List.of("/", "/classes/" + id + "/instructor", "/classes/" + id + "/helper",
                "/classes/" + id + "/wall")) {
            assertThat(board.get(page, board.instructor()).ok().body())
                    .doesNotContain(board.instructor(), TestBoard.PIN);
            assertThat(board.get(page, board.helper()).body())
                    .doesNotContain(board.helper(), TestBoard.PIN, TestBoard.HELPER_PIN);
        }
    }

    @Test void the_address_of_a_class_leads_each_to_their_own_page() {
        assertThat(board.get("/classes/" + id, board.instructor()).header("Location")).get().asString()
                .endsWith("/instructor");
        assertThat(board.get("/classes/" + id, board.helper()).header("Location")).get().asString().endsWith("/helper");
        assertThat(board.get("/classes/" + id, "").header("Location")).get().asString().endsWith("/wall");
    }

    // ---- a paired wall

    private String wall() {
        return board.pair(Json.object().put("key", board.access().keys().wall()));
    }

    @Test void a_paired_wall_has_no_more_rights_than_a_stranger_and_a_place_of_its_own() {
        String wall = wall();

        for (Endpoint endpoint : board.server().endpoints()) {
            String path = RouteAddress.of(endpoint.path, id);
            if (endpoint.method.equals(HandlerType.GET) && !path.endsWith("/stream")) {
                assertThat(board.get(path, wall).status() < 400).as(path).isEqualTo(board.get(path, "").status() < 400);
                assertThat(board.get(path, wall).body()).as(path).doesNotContain("Ida", "Tomasz");
            }
        }
        for (String type : EventJson.types()) {
            board.tap(id, any(type), wall).problem(403, "no-right");
        }
        assertThat(board.state(id).seq()).as("nothing was recorded").isEqualTo(1);
    }

    @Test void a_wall_is_paired_by_its_link_or_its_pin_and_stays_so() {
        assertThat(board.post("/api/pair", "{\"pin\":\"" + TestBoard.WALL_PIN + "\"}", "").ok().text("role"))
                .isEqualTo("wall");
        String key = board.access().keys().wall();
        board.restart();
        assertThat(board.post("/api/pair", "{\"key\":\"" + key + "\"}", "").ok().text("role")).isEqualTo("wall");
    }

    /** Those are no strangers, who may have to give way. */
    @Test void the_screen_of_a_paired_wall_is_a_paired_devices_screen() throws Exception {
        try (ListeningScreen wall = ListeningScreen.at(board, "/classes/" + id + "/wall/stream", wall())) {
            await().until(() -> wall.seq() == 1);

            assertThat(board.get("/api/devices", board.instructor()).json().findParents("role")).anyMatch(device ->
                    device.get("role").textValue().equals("wall") && device.get("looking").booleanValue());
        }
    }
}

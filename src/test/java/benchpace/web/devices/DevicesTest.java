package benchpace.web.devices;

import static benchpace.web.TestBoard.command;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.store.PairingKeys;
import benchpace.store.sqlite.Database;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.TestClock;
import benchpace.web.pairing.Keys;
import benchpace.web.pairing.Pins;
import benchpace.web.stream.ListeningScreen;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who is let in, and how they are let go: OWASP ASVS 5.0, 7.4.1 (signing out ends the session), 7.4.5 and 7.5.2 (one
 * may see and end all sessions), 7.2.4 (pairing anew ends the pairing of before).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DevicesTest extends OneEvening {
    private String phone;

    @BeforeEach void open() {
        phone = board.helper();
    }

    private List<JsonNode> devices() {
        return StreamSupport.stream(board.get("/api/devices", board.instructor()).ok().json().spliterator(), false)
                .toList();
    }

    private JsonNode device(String role) {
        return devices().stream().filter(d -> d.get("role").textValue().equals(role)).findFirst().orElseThrow();
    }

    private Reply send(String method, String path, ObjectNode body, String token) {
        return board.send(board.request(path).header("Authorization", "Bearer " + token)
                .method(method, HttpRequest.BodyPublishers.ofString(Json.text(body))));
    }

    private Reply signOutAll(String who) {
        return board.post("/api/devices/sign-out", "{\"who\":\"" + who + "\"}", board.instructor());
    }

    private boolean paired(String token) {
        return board.get("/api/classes", token).status() == 200;
    }

    private int pairing(String body) {
        return board.post("/api/pair", body, "").status();
    }

    @Test void every_paired_device_is_told_with_what_it_may_and_when_it_came() {
        JsonNode helper = device("helper");

        assertThat(helper.get("initials").textValue()).isEqualTo("AB");
        assertThat(helper.get("pairedAt").textValue()).isEqualTo(TestClock.EVENING.toString());
        assertThat(helper.get("thisOne").booleanValue()).isFalse();
        assertThat(device("instructor").get("thisOne").booleanValue()).isTrue();
        assertThat(board.get("/devices", board.instructor()).ok().body()).contains("Helper AB", "this device")
                .doesNotContain(phone, board.instructor());
    }

    @Test void when_a_device_was_last_seen_is_told_and_outlives_a_restart() {
        board.testClock().advanceMinutes(90);
        assertThat(paired(phone)).isTrue();
        String seen = TestClock.EVENING.plus(Duration.ofMinutes(90)).toString();
        board.testClock().advanceMinutes(30);

        assertThat(device("helper").get("lastSeenAt").textValue()).isEqualTo(seen);
        board.restart();
        assertThat(device("helper").get("lastSeenAt").textValue()).isEqualTo(seen);
    }

    @Test void another_device_is_signed_out_at_once_and_its_screens_close() throws Exception {
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/helper/stream", phone);
                ListeningScreen wall = ListeningScreen.at(board, "/classes/" + id + "/wall/stream", "")) {
            await().until(() -> screen.seq() == 1 && wall.seq() == 1);
            assertThat(device("helper").get("looking").booleanValue()).isTrue();

            assertThat(send("DELETE", "/api/devices/" + device("helper").get("mark").textValue(), Json.object(),
                    board.instructor()).status()).isEqualTo(204);

            await().atMost(Duration.ofSeconds(5)).until(screen::ended);
            assertThat(wall.ended()).isFalse();
            assertThat(paired(phone)).isFalse();
            board.tap(id, command("note").put("text", "too late"), phone).problem(401, "not-paired");
        }
    }

    @Test void a_device_that_is_signed_out_while_its_screen_opens_gets_none(@TempDir Path other) throws Exception {
        AtomicReference<Runnable> meanwhile = new AtomicReference<>(() -> { });
        InstantSource clock = () -> {
            if (Thread.currentThread().getName().startsWith("paired")) { // asked once the device was found to be paired
                meanwhile.getAndSet(() -> { }).run();
            }
            return TestClock.EVENING;
        };
        try (TestBoard late = new TestBoard(other, clock, StreamLimits.USUAL)) {
            String path = "/classes/" + late.evening() + "/helper/stream";
            String opens = late.helper();
            meanwhile.set(() -> assertThat(late.access().signOut(device -> true)).hasSize(2));

            try (ListeningScreen screen = ListeningScreen.at(late, path, opens)) {
                assertThat(screen.response().statusCode()).isEqualTo(401);
            }
            assertThat(late.get("/health", "").json().get("screens").intValue()).isZero();
        }
    }

    @Test void a_device_that_is_gone_cannot_be_signed_out_again() {
        String mark = device("helper").get("mark").textValue();
        send("DELETE", "/api/devices/" + mark, Json.object(), board.instructor());

        send("DELETE", "/api/devices/" + mark, Json.object(), board.instructor()).problem(404, "not-found");
        send("DELETE", "/api/devices/0123456789ab", Json.object(), board.instructor()).problem(404, "not-found");
    }

    @Test void all_others_are_signed_out_and_links_and_pins_stay() {
        assertThat(signOutAll("others").ok().json().get("signedOut").intValue()).isEqualTo(1);

        assertThat(paired(phone)).isFalse();
        assertThat(paired(board.instructor())).isTrue();
        assertThat(pairing("{\"key\":\"" + board.helperKey() + "\"}")).isEqualTo(200);
        assertThat(pairing("{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}")).isEqualTo(200);
    }

    @Test void when_all_are_signed_out_no_key_and_no_drawn_pin_of_before_opens_anything() throws Exception {
        String oneTime = board.access().keys().newInstructorKey();
        String helpers = board.helperKey();
        String walls = board.access().keys().wall();
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/instructor/stream",
                board.instructor())) {
            Reply reply = signOutAll("all").ok();

            await().atMost(Duration.ofSeconds(5)).until(screen::ended);
            assertThat(paired(phone)).isFalse();
            assertThat(paired(board.instructor())).isFalse();
            for (String key : List.of(oneTime, helpers, walls)) {
                assertThat(pairing("{\"key\":\"" + key + "\"}")).isEqualTo(401);
            }
            assertThat(pairing("{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}")).isEqualTo(401);
            assertThat(pairing("{\"pin\":\"" + reply.text("helper") + "\"}")).isEqualTo(200);
            assertThat(reply.json().has("instructor")).as("it was chosen at the start").isFalse();
            assertThat(pairing("{\"pin\":\"" + TestBoard.PIN + "\"}")).isEqualTo(200);
        }
    }

    @Test void whoever_pairs_while_all_are_signed_out_is_out_or_not_in() throws Exception {
        ExecutorService phones = Executors.newFixedThreadPool(8);
        try {
            String pin = "{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}";
            List<Callable<String>> rush = Collections.nCopies(60, () -> board.post("/api/pair", pin, "").text("token"));
            Future<Reply> signingOut = phones.submit(() -> signOutAll("all"));
            List<Future<String>> tokens = phones.invokeAll(rush);
            signingOut.get().ok();
            for (Future<String> token : tokens) {
                assertThat(paired(token.get())).isFalse();
            }
        } finally {
            phones.shutdownNow();
        }
    }

    @Test void pins_that_nobody_chose_are_drawn_anew_no_two_alike() {
        Pins pins = Pins.drawn(java.util.Optional.empty());
        String before = pins.instructor();

        pins.drawAnew();

        assertThat(pins.whose(before)).isEmpty();
        assertThat(List.of(pins.instructor(), pins.helper(), pins.wall())).doesNotHaveDuplicates()
                .allMatch(pin -> pin.matches("\\d{6}"));
        assertThat(Pins.drawn(java.util.Optional.of("2468")).whose("2468"))
                .contains(benchpace.web.screen.shell.Role.INSTRUCTOR);
    }

    @Test void a_key_of_no_known_role_opens_nothing(@TempDir Path folder) {
        try (Database database = Database.open(folder)) {
            PairingKeys kept = new PairingKeys(database);
            Keys keys = new Keys(kept, new TestClock());
            for (String role : List.of("juggler", "guest", "")) {
                kept.add("a key of " + role, role, java.time.Instant.EPOCH);
                assertThat(keys.open("a key of " + role)).as(role).isEmpty();
            }
        }
    }

    @Test void a_new_helpers_link_makes_the_old_one_worthless_and_leaves_helpers_in() {
        String old = board.helperKey();
        board.restart();
        String older = old;
        String printedToday = board.helperKey();
        assertThat(pairing("{\"key\":\"" + older + "\"}")).as("printed before the restart").isEqualTo(200);

        String fresh = board.post("/api/helper-keys", "{}", board.instructor()).ok().text("key");

        assertThat(pairing("{\"key\":\"" + older + "\"}")).isEqualTo(401);
        assertThat(pairing("{\"key\":\"" + printedToday + "\"}")).isEqualTo(401);
        assertThat(pairing("{\"key\":\"" + fresh + "\"}")).isEqualTo(200);
        assertThat(paired(phone)).isTrue();
        assertThat(board.get("/", board.instructor()).body()).contains("#helper=" + fresh);
    }

    @Test void what_was_printed_opens_for_a_year() {
        String printed = board.helperKey();
        board.testClock().advance(Duration.ofDays(364));
        board.restart();
        assertThat(pairing("{\"key\":\"" + printed + "\"}")).isEqualTo(200);
        board.testClock().advance(Duration.ofDays(2));
        board.restart();

        assertThat(pairing("{\"key\":\"" + printed + "\"}")).isEqualTo(401);
    }

    @Test void a_device_can_be_given_a_name() {
        String mark = device("helper").get("mark").textValue();

        send("PUT", "/api/devices/" + mark, Json.object().put("name", " Counter <b>phone</b> "), board.instructor())
                .ok();

        assertThat(device("helper").get("name").textValue()).isEqualTo("Counter <b>phone</b>");
        assertThat(board.get("/devices", board.instructor()).body()).contains("Counter &lt;b>phone&lt;/b>")
                .doesNotContain("<b>phone");
        send("PUT", "/api/devices/" + mark, Json.object().put("name", "x".repeat(41)), board.instructor())
                .problem(422, "bad-value");
        send("PUT", "/api/devices/none", Json.object().put("name", "x"), board.instructor()).problem(404, "not-found");
    }

    @Test void devices_are_the_instructors_affair() {
        String mark = device("instructor").get("mark").textValue();
        for (String token : List.of(phone, "")) {
            int status = token.isEmpty() ? 401 : 403;
            String code = token.isEmpty() ? "not-paired" : "no-right";
            board.get("/api/devices", token).problem(status, code);
            assertThat(board.get("/devices", token).status()).isEqualTo(status);
            for (String path : List.of("/api/devices/sign-out", "/api/helper-keys", "/api/wall-keys", "/api/pins",
                    "/api/instructor-keys")) {
                board.post(path, "{\"who\":\"all\"}", token).problem(status, code);
            }
            send("DELETE", "/api/devices/" + mark, Json.object(), token).problem(status, code);
            send("PUT", "/api/devices/" + mark, Json.object().put("name", "x"), token).problem(status, code);
        }
        assertThat(devices()).hasSize(2);
    }

    @Test void whoever_pairs_anew_is_one_device_and_not_two() {
        String again = board.post("/api/pair", "{\"pin\":\"" + TestBoard.PIN + "\"}", phone).ok().text("token");

        assertThat(paired(phone)).isFalse();
        assertThat(paired(again)).isTrue();
        assertThat(devices()).extracting(d -> d.get("role").textValue()).containsOnly("instructor");
    }

    @Test void a_link_made_on_the_page_opens_within_the_hour_and_once() {
        String first = board.post("/api/instructor-keys", "{}", board.instructor()).ok().text("key");
        String second = board.post("/api/instructor-keys", "{}", board.instructor()).ok().text("key");
        board.testClock().advanceMinutes(59);
        assertThat(pairing("{\"key\":\"" + first + "\"}")).isEqualTo(200);
        assertThat(pairing("{\"key\":\"" + first + "\"}")).isEqualTo(401);
        board.testClock().advanceMinutes(2);

        assertThat(pairing("{\"key\":\"" + second + "\"}")).isEqualTo(401);
    }
}

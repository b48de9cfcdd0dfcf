package benchpace.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Letting devices in. Cookie flags and token length as OWASP ASVS 5.0, 3.3.1 to 3.3.4 and 7.2.3, ask; waits between
 * guesses as NIST SP 800-63B-4 (draft), 5.2.2, "30 seconds up to an hour", and "no more than 100" wrong ones.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PairingTest {
    private static final String WRONG = "{\"pin\":\"000000\"}";
    private static final String RIGHT = "{\"pin\":\"" + TestBoard.PIN + "\"}";

    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data);
    }

    @AfterEach void close() {
        board.close();
    }

    private Reply pair(String body) {
        return board.post("/api/pair", body, "");
    }

    @Test void the_right_pin_lets_an_instructor_in() {
        Reply reply = pair(RIGHT).ok();

        assertThat(reply.text("role")).isEqualTo("instructor");
        assertThat(board.get("/api/classes", reply.text("token")).status()).isEqualTo(200);
    }

    @Test void a_token_is_long_random_and_new_each_time() {
        Set<String> tokens = new HashSet<>();
        for (int i = 0; i < 20; i++) {
            tokens.add(pair(RIGHT).text("token"));
        }

        assertThat(tokens).hasSize(20).allMatch(t -> t.matches("[A-Za-z0-9_-]{22,}"), "at least 128 bits in base64url");
    }

    @Test void the_cookie_is_hidden_from_scripts_and_from_other_sites() {
        String cookie = pair(RIGHT).header("Set-Cookie").orElseThrow();

        assertThat(cookie).containsIgnoringCase("; HttpOnly").containsIgnoringCase("; SameSite=Strict")
                .containsIgnoringCase("; Path=/").doesNotContainIgnoringCase("Domain=");
    }

    @Test void the_cookie_opens_what_the_token_opens() {
        String cookie = pair(RIGHT).header("Set-Cookie").orElseThrow().split(";")[0];

        assertThat(board.send(board.request("/api/classes").header("Cookie", cookie)).status()).isEqualTo(200);
    }

    @Test void a_helper_pairs_with_a_pin_of_its_own_and_with_the_shared_key() {
        assertThat(pair("{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}").text("role")).isEqualTo("helper");
        assertThat(pair("{\"key\":\"" + board.helperKey() + "\"}").text("role")).isEqualTo("helper");
        assertThat(pair("{\"key\":\"" + board.helperKey() + "\"}").text("role")).isEqualTo("helper");
    }

    @Test void whether_a_link_is_right_is_told_without_pairing_and_one_that_opens_once_is_neither_told_nor_spent() {
        String once = board.access().keys().newInstructorKey();
        int paired = board.access().devices().size();

        Reply right = board.post("/api/pair/link", "{\"key\":\"" + board.helperKey() + "\"}", "").ok();
        Reply ofOnce = board.post("/api/pair/link", "{\"key\":\"" + once + "\"}", "").problem(401, "wrong-pin");

        assertThat(right.text("role")).isEqualTo("helper");
        assertThat(right.body()).doesNotContain("token");
        assertThat(List.of(right, ofOnce)).allMatch(reply -> reply.header("Set-Cookie").isEmpty());
        assertThat(board.access().devices()).hasSize(paired);
        assertThat(pair("{\"key\":\"" + once + "\"}").ok().text("role")).isEqualTo("instructor");
    }

    @Test void a_wrong_pin_lets_nobody_in() {
        Reply reply = pair(WRONG).problem(401, "wrong-pin");

        assertThat(reply.header("Set-Cookie")).isEmpty();
    }

    @Test void every_401_names_a_way_in_as_RFC_9110_15_5_2_asks() {
        assertThat(pair(WRONG).header("WWW-Authenticate")).contains("Bearer");
        assertThat(board.get("/api/classes", "").problem(401, "not-paired").header("WWW-Authenticate"))
                .contains("Bearer");
    }

    @Test void a_few_wrong_pins_in_a_row_have_to_wait_and_are_told_how_long() {
        for (int i = 0; i < Throttle.FREE; i++) {
            pair(WRONG).problem(401, "wrong-pin");
        }

        Reply reply = pair(WRONG).problem(429, "too-many-tries");

        assertThat(Integer.parseInt(reply.header("Retry-After").orElseThrow())).isBetween(30, 31);
        assertThat(pair(RIGHT).problem(429, "too-many-tries").header("Set-Cookie"))
                .as("while it waits even the right one is not tried").isEmpty();
    }

    @Test void after_the_wait_the_right_pin_opens_again_and_the_count_starts_anew() {
        for (int i = 0; i < Throttle.FREE; i++) {
            pair(WRONG);
        }
        board.testClock().advance(java.time.Duration.ofSeconds(31));

        pair(RIGHT).ok();

        pair(WRONG).problem(401, "wrong-pin");
    }

    @Test void the_link_from_the_console_opens_although_somebody_guessed_pins() {
        for (int i = 0; i <= Throttle.FREE; i++) {
            pair(WRONG);
        }

        String key = board.access().keys().newInstructorKey();

        assertThat(pair("{\"key\":\"" + key + "\"}").ok().text("role")).isEqualTo("instructor");
    }

    @Test void a_one_time_key_works_once() {
        String body = "{\"key\":\"" + board.access().keys().newInstructorKey() + "\"}";

        pair(body).ok();

        pair(body).problem(401, "wrong-pin");
    }

    @Test void an_instructor_can_ask_for_a_key_for_one_more_device_and_a_helper_cannot() {
        String key = board.post("/api/instructor-keys", "{}", board.instructor()).ok().text("key");

        assertThat(pair("{\"key\":\"" + key + "\"}").text("role")).isEqualTo("instructor");
        board.post("/api/instructor-keys", "{}", board.helper()).problem(403, "no-right");
        board.post("/api/instructor-keys", "{}", "").problem(401, "not-paired");
    }

    @Test void a_paired_device_stays_paired_over_a_restart() {
        String token = board.instructor();

        board.restart();

        assertThat(board.get("/api/classes", token).status()).isEqualTo(200);
    }

    @Test void a_device_that_was_paired_long_ago_has_to_pair_again() {
        String token = board.instructor();

        board.testClock().advance(java.time.Duration.ofDays(31));

        board.get("/api/classes", token).problem(401, "not-paired");
    }

    @Test void a_device_that_was_paired_a_year_ago_is_forgotten_when_the_board_starts() {
        String token = board.instructor();
        board.testClock().advance(java.time.Duration.ofDays(366));

        board.restart();

        board.testClock().advance(java.time.Duration.ofDays(-366));
        board.get("/api/classes", token).problem(401, "not-paired");
    }

    @Test void the_right_pin_of_a_helper_clears_no_wrong_ones() {
        for (int i = 0; i < Throttle.FREE - 1; i++) {
            pair(WRONG).problem(401, "wrong-pin");
        }

        pair("{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}").ok();

        pair(WRONG).problem(401, "wrong-pin");
        pair(WRONG).problem(429, "too-many-tries");
    }

    @Test void an_unpaired_device_is_out_at_once() {
        String token = board.instructor();

        assertThat(board.post("/api/unpair", "", token).status()).isEqualTo(204);

        board.get("/api/classes", token).problem(401, "not-paired");
    }

    @Test void pairing_needs_a_pin_or_a_key_as_text() {
        pair("{}").problem(422, "bad-value").detail("\"pin\"");
        pair("{\"pin\":135790}").problem(422, "bad-value").detail("\"pin\"");
        pair("{\"pin\":null}").problem(422, "bad-value");
        pair("{\"pin\":\"" + "1".repeat(65) + "\"}").problem(422, "bad-value");
        pair("[\"135790\"]").problem(400, "bad-request");
    }

    @Test void a_helpers_initials_are_up_to_three_letters_whatever_was_typed() {
        String token = board.pair(Json.object().put("pin", TestBoard.HELPER_PIN).put("initials", "  j. <b>doe "));
        String id = board.evening();

        board.tap(id, TestBoard.command("note").put("text", "hello"), token).ok();

        assertThat(board.get("/api/classes/" + id + "/events?after=1", board.instructor()).body())
                .contains("\"by\":\"JBD\"");
    }
}

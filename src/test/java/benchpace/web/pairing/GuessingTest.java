package benchpace.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.web.TestBoard;
import benchpace.web.entrance.RawExchange;
import benchpace.web.stream.ListeningScreen;
import benchpace.web.stream.StreamLimits;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hundred wrong PINs from twenty addresses: strangers are shut out for an hour, and nobody who belongs here. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class GuessingTest {
    private static final String RIGHT = "{\"pin\":\"" + TestBoard.PIN + "\"}";

    @TempDir Path data;
    private TestBoard board;
    private String tablet;
    private String phone;

    @BeforeEach void open() {
        board = TestBoard.open(data, new StreamLimits(Duration.ofMillis(200), Duration.ofSeconds(20), 20, 10, 10));
        tablet = pairedFrom("127.0.0.2", RIGHT);
        phone = pairedFrom("127.0.0.3", "{\"pin\":\"" + TestBoard.HELPER_PIN + "\"}");
    }

    @AfterEach void close() {
        board.close();
    }

    private String pairedFrom(String address, String body) {
        try {
            String answer = pair(address, "", body);
            assertThat(RawExchange.status(answer)).as(answer).isEqualTo(200);
            return Json.read(RawExchange.body(answer)).get("token").textValue();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private String pair(String address, String cookie, String body) throws IOException {
        return RawExchange.from(address, board, "POST /api/pair HTTP/1.1\nHost: localhost\nConnection: close\n"
                + "Origin: http://localhost\n" + (cookie.isEmpty() ? "" : "Cookie: benchpace=" + cookie + "\n")
                + "Content-Length: " + body.length() + "\n\n" + body);
    }

    private void guessAHundredFromTwentyAddresses() throws IOException {
        for (int address = 20; address < 40; address++) {
            for (int i = 0; i < 5; i++) {
                assertThat(RawExchange.status(pair("127.0.0." + address, "", "{\"pin\":\"00000" + i + "\"}")))
                        .isEqualTo(401);
            }
        }
    }

    @Test void strangers_are_shut_out_and_the_console_and_paired_devices_are_not() throws IOException {
        guessAHundredFromTwentyAddresses();

        assertThat(RawExchange.status(pair("127.0.0.99", "", RIGHT))).as("a stranger").isEqualTo(429);
        assertThat(RawExchange.status(pair("127.0.0.1", "", RIGHT))).as("the console").isEqualTo(200);
        assertThat(RawExchange.status(pair("127.0.0.2", tablet, RIGHT))).as("the tablet").isEqualTo(200);
        assertThat(RawExchange.status(pair("127.0.0.3", phone, RIGHT))).as("the helper's phone").isEqualTo(200);
    }

    @Test void a_device_whose_pairing_has_run_out_is_no_stranger() throws IOException {
        board.testClock().advance(Duration.ofDays(45));
        board.restart();
        guessAHundredFromTwentyAddresses();

        assertThat(RawExchange.status(pair("127.0.0.2", tablet, RIGHT))).isEqualTo(200);
    }

    @Test void a_made_up_pairing_makes_nobody_known() throws IOException {
        guessAHundredFromTwentyAddresses();

        assertThat(RawExchange.status(pair("127.0.0.99", "A".repeat(27), RIGHT))).isEqualTo(429);
    }

    @Test void a_paired_devices_own_wrong_ones_wait_as_everybodys_do() throws IOException {
        for (int i = 0; i < Throttle.FREE; i++) {
            assertThat(RawExchange.status(pair("127.0.0.3", phone, "{\"pin\":\"000000\"}"))).isEqualTo(401);
        }

        assertThat(RawExchange.status(pair("127.0.0.55", phone, RIGHT))).as("wherever it is").isEqualTo(429);
    }

    @Test void the_link_opens_for_a_stranger_all_the_while() throws IOException {
        guessAHundredFromTwentyAddresses();

        String key = board.post("/api/instructor-keys", "{}", tablet).ok().text("key");

        pairedFrom("127.0.0.77", "{\"key\":\"" + key + "\"}");
    }

    @Test void those_who_run_the_board_are_told_and_strangers_are_not() throws Exception {
        String id = board.evening();
        try (ListeningScreen screen = ListeningScreen.at(board, "/classes/" + id + "/instructor/stream", tablet)) {
            assertThat(board.get("/", tablet).body()).doesNotContain("wrong PIN");

            guessAHundredFromTwentyAddresses();

            String told = "Somebody tried 100 wrong PINs in the last hour, from 20 addresses. Until 20:30 new devices "
                    + "are let in by link only.";
            await().atMost(Duration.ofSeconds(5)).until(() -> screen.events("guesses").stream()
                    .anyMatch(e -> e.data().contains(told)));
            assertThat(board.get("/", tablet).body()).contains(told);
            assertThat(board.get("/", phone).body()).contains(told);
            assertThat(board.get("/", "").body()).doesNotContain("wrong PIN");
        }
    }

    @Test void a_slip_of_the_finger_is_no_alarm() throws IOException {
        pair("127.0.0.20", "", "{\"pin\":\"000000\"}");

        assertThat(board.get("/", tablet).body()).doesNotContain("wrong PIN");
    }
}

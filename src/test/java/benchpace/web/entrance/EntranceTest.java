package benchpace.web.entrance;

import static benchpace.web.TestBoard.command;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.web.Stranger;
import benchpace.web.TestBoard;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a device that nobody has paired may try on the board's connections, each while a paired one goes on tapping:
 * slow and endless requests (known since 2009 as "slow HTTP" attacks; OWASP ASVS 5.0, 13.1.2 and 15.2.2, from memory).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EntranceTest {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    /** A tap that has not come back by then has not come back: the old board kept them for 75 s. */
    private static final Duration A_TAPS_PATIENCE = Duration.ofSeconds(10);
    private static final String HOST = "Host: localhost\n";
    /** Asks for 50 kB; three hundred of them fill every buffer between the board and a reader. */
    private static final String LARGE = "GET /webjars/htmx.js HTTP/1.1\n" + HOST + "\n";

    @TempDir Path data;
    private TestBoard board;
    private String id;
    private final List<Stranger> strangers = new ArrayList<>();

    private void open(EntranceLimits limits) {
        board = TestBoard.open(data, limits);
        id = board.evening();
    }

    private static EntranceLimits limits(Duration toAsk, Duration toSend, int strangers, int ofOneAddress) {
        EntranceLimits usual = EntranceLimits.USUAL;
        return new EntranceLimits(usual.largestBody(), toAsk, toSend, usual.answers(),
                new EntranceLimits.Connections(strangers, ofOneAddress, usual.connections().most()), usual.lanes());
    }

    private static EntranceLimits answers(int largestHeld, Duration toRead) {
        EntranceLimits usual = EntranceLimits.USUAL;
        return new EntranceLimits(usual.largestBody(), usual.toAsk(), usual.toSend(), new EntranceLimits.Answers(
                largestHeld, usual.answers().mostHeld(), toRead, 1_000_000), usual.connections(), usual.lanes());
    }

    @AfterEach void close() throws IOException {
        for (Stranger stranger : strangers) {
            stranger.close();
        }
        board.close();
    }

    private Stranger stranger(int address) throws IOException {
        Stranger stranger = new Stranger(board, Stranger.at(address));
        strangers.add(stranger);
        return stranger;
    }

    private void assertTapsGoOn() {
        for (int i = 0; i < 20; i++) {
            HttpRequest.Builder tap = board.request("/api/classes/" + id + "/commands").timeout(A_TAPS_PATIENCE)
                    .header("Authorization", "Bearer " + board.instructor())
                    .POST(HttpRequest.BodyPublishers.ofString(Json.text(command("note").put("text", "tap " + i))));
            board.send(tap).ok();
        }
        board.send(board.request("/classes/" + id + "/instructor").timeout(A_TAPS_PATIENCE)
                .header("Authorization", "Bearer " + board.instructor())).ok();
    }

    @Test void bodies_that_come_a_byte_at_a_time_hold_up_no_tap() throws IOException {
        open(EntranceLimits.USUAL);
        for (int i = 0; i < 70; i++) {
            for (String address : List.of("/api/pair", "/nothing/here", "/api/classes/" + id + "/commands")) {
                stranger(1 + i % 10).says("POST " + address + " HTTP/1.1\n" + HOST
                        + "Content-Type: application/json\nContent-Length: 60000\n\n{").drips(' ', 400);
            }
        }

        assertTapsGoOn();

        assertThat(strangers).as("the bodies still come").noneMatch(Stranger::isHungUpOn);
    }

    @Test void a_body_that_is_not_there_in_time_is_refused_and_its_connection_closed() throws IOException {
        open(limits(PATIENCE, Duration.ofMillis(800), 40, 20));

        String answer = stranger(1).says("POST /api/pair HTTP/1.1\n" + HOST + "Content-Length: 60000\n\n{")
                .drips(' ', 50).hears();

        assertThat(RawExchange.status(answer)).isEqualTo(408);
        assertThat(answer).containsIgnoringCase("Connection: close").contains("urn:benchpace:too-slow");
    }

    /** Closing over unread bytes may swallow a refusal (RFC 9112, 9.6): what is still to come is waited for. */
    @Test void who_is_refused_may_finish_what_they_were_saying_and_is_then_parted_from_in_order() throws IOException {
        open(limits(PATIENCE, Duration.ofSeconds(1), 40, 20));
        Stranger late = stranger(1).says("POST /api/pair HTTP/1.1\n" + HOST + "Content-Length: 60000\n\n");
        assertThat(late.hearsUntil("urn:benchpace:too-slow")).startsWith("HTTP/1.1 408");
        for (int piece = 0; piece < 6; piece++) {
            late.says("x".repeat(10_000)); // fails once the board has closed
        }
        assertThat(late.hearsToTheEnd()).endsWith("}");

        Stranger large = stranger(1).says("POST /api/pair HTTP/1.1\n" + HOST + "Content-Length: 70000\n\n");
        assertThat(large.hearsUntil("urn:benchpace:too-large")).startsWith("HTTP/1.1 413");
        for (int piece = 0; piece < 7; piece++) {
            large.says("x".repeat(10_000));
        }
        assertThat(large.hearsToTheEnd()).endsWith("}");
    }

    @Test void a_header_that_never_ends_is_hung_up_on_however_lively_it_comes() throws IOException {
        open(limits(Duration.ofSeconds(1), PATIENCE, 40, 20));
        Stranger dripping = stranger(1).says("GET / HTTP/1.1\n" + HOST + "X: ").drips('x', 50);
        Stranger silent = stranger(1);
        Stranger idle = stranger(1).says("GET /health HTTP/1.1\n" + HOST + "\n");

        for (Stranger stranger : List.of(dripping, silent, idle)) {
            await().atMost(PATIENCE).until(stranger::isHungUpOn);
        }
        assertTapsGoOn();
    }

    @Test void answers_that_nobody_reads_hold_up_no_tap() throws IOException {
        open(EntranceLimits.USUAL);
        for (int i = 0; i < 60; i++) {
            stranger(1 + i % 10).says(LARGE.repeat(300));
        }

        assertTapsGoOn();
        assertThat(board.get("/classes/" + id + "/wall", "").status()).as("strangers who do read are served, too")
                .isEqualTo(200);
    }

    @Test void an_answer_that_is_not_read_in_time_ends_its_connection() throws IOException {
        open(answers(EntranceLimits.USUAL.answers().largestHeld(), Duration.ofSeconds(1)));

        Stranger asleep = stranger(1).says(LARGE.repeat(300))
                .drips('x', 100);

        await().atMost(PATIENCE).until(asleep::isCutOff);
    }

    @Test void an_answer_too_large_to_be_held_arrives_whole_all_the_same() throws IOException {
        open(answers(1000, PATIENCE));
        String whole = "GET /static/js/taps.js HTTP/1.1\n" + HOST + "\n";
        String end = "GET /health HTTP/1.1\n" + HOST + "Connection: close\n\n";

        String heard = stranger(1).says(whole + whole + end).hears();

        String script = board.get("/static/js/taps.js", "").ok().body();
        assertThat(script.length()).isGreaterThan(5000);
        assertThat(heard.split(java.util.regex.Pattern.quote(script), -1)).as("twice, and the rest").hasSize(3);
        assertThat(heard).endsWith("}").contains("\"status\":\"ok\"");
    }

    private static long hungUpOn(List<Stranger> strangers) {
        return strangers.stream().filter(Stranger::isHungUpOn).count();
    }

    @Test void of_too_many_connections_one_that_says_nothing_goes_and_a_newcomer_is_let_in() throws IOException {
        open(limits(Duration.ofMinutes(2), PATIENCE, 8, 3));
        List<Stranger> ofOne = List.of(stranger(1), stranger(1), stranger(1), stranger(1));
        await().atMost(PATIENCE).until(() -> hungUpOn(ofOne) == 1);
        stranger(2);
        stranger(2);
        stranger(3);
        stranger(3);
        stranger(4);

        Stranger newcomer = stranger(5).says("GET /health HTTP/1.1\n" + HOST + "\n");

        assertThat(newcomer.hearsUntil("\"ok\"")).startsWith("HTTP/1.1 200");
        // one more if the board's own client, another address, has left a connection of before it was paired
        await().atMost(PATIENCE).until(() -> hungUpOn(ofOne) >= 2);
        assertThat(strangers.subList(4, 9)).as("addresses that hold less").noneMatch(Stranger::isHungUpOn);
    }

    @Test void a_paired_devices_connection_makes_room_for_no_stranger_even_behind_the_same_address()
            throws IOException {
        open(limits(PATIENCE, PATIENCE, 8, 3));
        String health = "GET /health HTTP/1.1\n" + HOST + "Authorization: Bearer " + board.instructor() + "\n\n";
        Stranger paired = stranger(1).says(health);
        paired.hearsUntil("\"ok\"");

        for (int i = 0; i < 40; i++) {
            stranger(1).says("POST /api/pair HTTP/1.1\n" + HOST + "Content-Length: 9\n\n{");
        }
        await().atMost(PATIENCE).until(() -> hungUpOn(strangers) == 37);

        assertThat(paired.says(health).hearsUntil("\"ok\"")).contains("HTTP/1.1 200");
        assertThat(stranger(1).says(health).hearsUntil("\"ok\"")).as("another of its connections")
                .contains("HTTP/1.1 200");
        assertTapsGoOn();
    }

    @Test void many_requests_sent_ahead_take_the_strangers_threads_only() throws IOException {
        open(EntranceLimits.USUAL);
        String ask = "GET /classes/" + id + "/wait HTTP/1.1\n" + HOST + "\n";
        for (int i = 0; i < 20; i++) {
            stranger(1 + i).says(ask.repeat(300));
        }

        assertTapsGoOn();
    }

    @Test void a_paired_device_that_reads_nothing_of_what_it_asks_for_holds_up_itself_only() throws IOException {
        open(answers(1000, Duration.ofMinutes(2)));
        String asks = LARGE.replace("\n\n", "\nAuthorization: Bearer " + board.helper() + "\n\n").repeat(300);
        for (int i = 0; i < 40; i++) {
            stranger(1).says(asks);
        }

        assertTapsGoOn();
    }

    @Test void answers_that_find_no_room_to_be_held_arrive_whole_all_the_same() throws IOException {
        EntranceLimits usual = EntranceLimits.USUAL;
        open(new EntranceLimits(usual.largestBody(), usual.toAsk(), usual.toSend(), new EntranceLimits.Answers(
                usual.answers().largestHeld(), 10, PATIENCE, 1_000_000), usual.connections(), usual.lanes()));

        String heard = stranger(1).says("GET /static/js/taps.js HTTP/1.1\n" + HOST + "\n"
                + "GET /health HTTP/1.1\n" + HOST + "Connection: close\n\n").hears();

        assertThat(heard).contains(board.get("/static/js/taps.js", "").ok().body()).endsWith("}");
    }

    private String health(String token) {
        return "GET /health HTTP/1.1\n" + HOST + "Authorization: Bearer " + token + "\n\n";
    }

    @Test void a_device_that_opens_as_many_connections_as_there_may_be_keeps_no_other_out() throws IOException {
        EntranceLimits usual = EntranceLimits.USUAL;
        open(new EntranceLimits(usual.largestBody(), PATIENCE, PATIENCE, usual.answers(),
                new EntranceLimits.Connections(4, 2, 12), usual.lanes()));
        Stranger instructor = stranger(1).says(health(board.instructor()));
        instructor.hearsUntil("\"ok\"");
        for (int i = 0; i < 14; i++) {
            stranger(2).says(health(board.helper())).hearsUntil("\"ok\"");
        }

        assertTapsGoOn();
        assertThat(stranger(1).says(health(board.instructor())).hearsUntil("\"ok\"")).as("a new one of another device")
                .contains("HTTP/1.1 200");
        assertThat(instructor.says(health(board.instructor())).hearsUntil("\"ok\"")).contains("HTTP/1.1 200");
    }

    @Test void a_device_that_was_signed_out_is_a_stranger_again_on_the_connections_it_has() throws IOException {
        open(limits(PATIENCE, PATIENCE, 8, 3));
        String token = board.helper();
        List<Stranger> kept = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            kept.add(stranger(1).says(health(token)));
            kept.get(i).hearsUntil("\"ok\"");
        }
        board.send(board.request("/api/unpair").header("Authorization", "Bearer " + token)
                .POST(HttpRequest.BodyPublishers.noBody()));
        for (Stranger each : kept) {
            each.says(health(token)).hearsUntil("\"ok\"");
        }

        for (int i = 0; i < 3; i++) {
            stranger(1);
        }

        await().atMost(PATIENCE).until(() -> hungUpOn(kept) >= 3);
    }

    @Test void what_is_another_protocol_is_no_burden() throws IOException {
        open(EntranceLimits.USUAL);
        String endless = "x".repeat(8000);
        for (String said : List.of("PRI * HTTP/2.0\n\nSM\n\n", "\u0016\u0003\u0001\u0002\u0000\u0001",
                "SSH-2.0-none\n", "GET /health HTTP/1.1\n" + HOST
                + "Connection: Upgrade, HTTP2-Settings\nUpgrade: h2c\nHTTP2-Settings: AAMAAABk\n\n",
                "GET /health HTTP/1.1\n" + HOST + "Connection: Upgrade\nUpgrade: websocket\n"
                + "Sec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\nSec-WebSocket-Version: 13\n\n",
                "CONNECT elsewhere:443 HTTP/1.1\nHost: elsewhere:443\n\n",
                "POST /api/pair HTTP/1.1\n" + HOST + "Transfer-Encoding: chunked\n\n1;" + endless)) {
            for (int i = 0; i < 12; i++) {
                stranger(1).says(said);
            }
        }
        for (int i = 0; i < 12; i++) {
            Stranger noisy = stranger(2).says("POST /api/pair HTTP/1.1\n" + HOST
                    + "Transfer-Encoding: chunked\n\n1;");
            noisy.drips('x', 10);
        }

        assertTapsGoOn();
    }
}

package benchpace.web.entrance;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.OddInput;
import benchpace.web.OneEvening;
import benchpace.web.Reply;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** JSON that is none (RFC 8259), is too much, or means nothing here; and messages that are no HTTP (RFC 9112). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class BadInputTest extends OneEvening {
    private static final int LIMIT = 64 * 1024;

    private String commands;

    @BeforeEach void open() {
        commands = "/api/classes/" + id + "/commands";
    }

    @AfterEach void close() {
        assertThat(board.state(id).seq()).as("nothing of it was recorded").isEqualTo(1);
    }

    private Reply command(String body) {
        return board.post(commands, body, board.instructor());
    }

    @Test void what_is_no_json_is_a_400_on_every_address() {
        for (String body : List.of("", " ", "{", "}", "{\"a\":}", "{'a':1}", "{\"a\":1,}", "nonsense", "{\"a\":1} x",
                "{\"a\":01}", "{\"a\":NaN}", "{\"a\":\"\t\"}", "\"\\ud83d", "{\"a\":\"\\x\"}", "// {}",
                "\uFEFF\uFEFF{}",                "{}{}", "<xml/>", "pin=135790", "{\"a\":1e}")) {
            command(body).problem(400, "bad-request");
            board.post("/api/classes", body, board.instructor()).problem(400, "bad-request");
            board.post("/api/pair", body, "").problem(400, "bad-request");
        }
    }

    @Test void no_refusal_names_what_reads_the_request() {
        for (String body : List.of("{}{}", "[".repeat(50), "{\"a\":" + "9".repeat(70) + "}",
                "{\"a\":1,\"a\":2}", "{\"a\":")) {
            assertThat(OddInput.LEAKS.matcher(command(body).problem(400, "bad-request").body()).find()).as(body)
                    .isFalse();
        }
    }

    /** Whatever the method is, known or not. */
    @Test void what_no_route_sees_is_refused_as_a_problem_too() throws IOException {
        String answer = RawExchange.of(board, "PROPFIND / HTTP/1.1\nHost: localhost\nConnection: close\nExpect: x\n\n");

        assertThat(RawExchange.status(answer)).isEqualTo(417);
        assertThat(answer).contains("application/problem+json");
    }

    @Test void json_that_is_no_object_is_a_400() {
        for (String body : List.of("[]", "[{}]", "\"text\"", "7", "true", "null")) {
            command(body).problem(400, "bad-request").detail("object");
        }
    }

    @Test void a_name_that_stands_twice_is_a_400() {
        command("{\"commandId\":\"a\",\"type\":\"close\",\"type\":\"note\"}").problem(400, "bad-request");
        command("{\"commandId\":\"a\",\"type\":\"note\",\"text\":\"x\",\"at\":{\"a\":1,\"a\":2}}")
                .problem(400, "bad-request");
    }

    @Test void deep_nesting_is_a_400_and_not_a_stack_overflow() {
        command("[".repeat(30_000) + "]".repeat(30_000)).problem(400, "bad-request");
        command("{\"a\":".repeat(10_000) + "1" + "}".repeat(10_000)).problem(400, "bad-request");
    }

    @Test void endless_numbers_are_a_400() {
        command("{\"commandId\":\"a\",\"type\":\"pause\",\"seat\":" + "9".repeat(50_000) + "}")
                .problem(400, "bad-request");
        command("{\"commandId\":\"a\",\"type\":\"pause\",\"seat\":1e999999999}").problem(422, "bad-value");
    }

    @Test void wrong_types_and_ranges_are_a_422_that_names_the_field() {
        for (String seat : List.of("\"4\"", "4.5", "0", "-1", "61", "true", "[]", "{}", "null", "99999999999999999999",
                "1e1")) {
            command("{\"commandId\":\"a\",\"type\":\"pause\",\"seat\":" + seat + "}").problem(422, "bad-value")
                    .detail("\"seat\"");
        }
        for (String step : List.of("4", "\"\"", "\"no spaces here\"", "\"" + "x".repeat(200) + "\"", "[]", "null",
                "\"\\u0000\"", "\"../..\"")) {
            command("{\"commandId\":\"a\",\"type\":\"open-step\",\"step\":" + step + "}").problem(422, "bad-value")
                    .detail("\"step\"");
        }
        command("{\"commandId\":\"a\",\"type\":\"pause\"}").problem(422, "bad-value").detail("\"seat\"");
        command("{\"type\":\"pause\",\"seat\":1}").problem(422, "bad-value").detail("\"commandId\"");
        command("{\"commandId\":\"a\",\"seat\":1}").problem(422, "bad-value").detail("\"type\"");
        command("{\"commandId\":\"a\",\"type\":\"juggle\",\"seat\":1}").problem(422, "bad-value").detail("\"type\"");
        command("{\"commandId\":\"a\",\"type\":7,\"seat\":1}").problem(422, "bad-value").detail("\"type\"");
        command("{\"commandId\":\"a\",\"type\":\"create\"}").problem(422, "bad-value");
        command("{\"commandId\":\"a\",\"type\":\"note\",\"text\":\"half \\ud83d of one\"}").problem(422, "bad-value");
        command("{\"commandId\":\"a\",\"type\":\"note\",\"text\":\"" + "x".repeat(501) + "\"}")
                .problem(422, "bad-value");
        command("{\"commandId\":\"a\",\"type\":\"note\",\"text\":\"a\\u0007b\"}").problem(422, "bad-value");
    }

    @Test void a_body_beyond_64_KiB_is_a_413() {
        String tooLong = "{\"commandId\":\"" + "x".repeat(LIMIT) + "\"}";

        command(tooLong).problem(413, "too-large");
        board.post("/api/pair", tooLong, "").problem(413, "too-large");
        board.post("/api/classes", tooLong, board.instructor()).problem(413, "too-large");
        command("{\"a\":\"" + "x".repeat(LIMIT - 8) + "\"}").problem(422, "bad-value");
    }

    private String posted(String headers, String body) throws IOException {
        return RawExchange.of(board, "POST " + commands + " HTTP/1.1\nHost: localhost\nConnection: close\n"
                + "Authorization: Bearer " + board.instructor() + "\n" + headers + "\n" + body);
    }

    @Test void a_body_that_tells_no_length_is_read_to_the_limit_only() throws IOException {
        String piece = "x".repeat(8192);
        String chunk = "2000\n" + piece + "\n";

        String answer = posted("Transfer-Encoding: chunked\n", chunk.repeat(20) + "0\n\n");

        assertThat(RawExchange.status(answer)).isEqualTo(413);
        assertThat(answer).contains("application/problem+json", "too-large");
    }

    @Test void a_length_beyond_the_limit_is_refused_before_the_body_has_come() throws IOException {
        String answer = posted("Content-Length: 99999999999\n", "{}");

        assertThat(RawExchange.status(answer)).isEqualTo(413);
    }

    @Test void messages_that_are_no_sound_http_are_refused_as_problems() throws IOException {
        for (String headers : List.of("Content-Length: -1\n", "Content-Length: x\n",
                "Content-Length: 2\nContent-Length: 3\n", "Transfer-Encoding: gzip\n", "Bad Header: x\n",
                "X: " + "y".repeat(20_000) + "\n")) {
            String answer = posted(headers, "{}");

            assertThat(RawExchange.status(answer)).as(headers).isBetween(400, 501).isNotEqualTo(500);
            assertThat(answer).as(headers).contains("application/problem+json");
        }
        String chunked = posted("Transfer-Encoding: chunked\n", "zz\n{}\n0\n\n");

        assertThat(RawExchange.status(chunked)).isEqualTo(400);
        for (String line : List.of("GET", "GET /", "GET / HTTP/9.9", "G\u0001T / HTTP/1.1", "GET http://[ HTTP/1.1",
                "GET /%zz HTTP/1.1", "GET /\u0080 HTTP/1.1", "GET /api/classes/%ff HTTP/1.1",
                "GET /api/classes/a%2fb HTTP/1.1", "GET /classes/" + id + "/seats/%31%00/sheet HTTP/1.1",
                "GET /classes/" + id + "/seats/99999999999/sheet HTTP/1.1",
                "GET /classes/" + id + "/seats/-1/sheet HTTP/1.1",
                "GET /api/classes/" + id + "/events?after=%ff HTTP/1.1", "GET /" + "x".repeat(20_000) + " HTTP/1.1")) {
            String answer = RawExchange.of(board, line + "\nHost: localhost\nConnection: close\n"
                    + "Authorization: Bearer " + board.instructor() + "\n\n");

            assertThat(RawExchange.status(answer)).as(line).isIn(400, 404, 414, 431, 505);
        }
    }

    /** The guests' page posts a form (WHATWG URL Standard, section 5.1), and needs no pairing. */
    @Test void forms_that_are_none_are_refused_and_never_a_fault() throws IOException {
        String code = board.guestCode(id, 1);
        for (String form : List.of("", "step", "step=", "step=%", "step=%zz", "step=%ff", "=", "&&&", "step=a&step=b",
                "step=juggling", "step=%00", "x=" + "y".repeat(60_000), "{\"step\":\"vessel\"}")) {
            String answer = RawExchange.of(board, "POST /g/" + code + "/done HTTP/1.1\nHost: localhost\n"
                    + "Origin: http://localhost\nConnection: close\n"
                    + "Content-Type: application/x-www-form-urlencoded\n"
                    + "Content-Length: " + form.length() + "\n\n" + form);

            assertThat(RawExchange.status(answer)).as(form).isBetween(300, 499);
        }
        String endless = RawExchange.of(board, "POST /g/" + code + "/done HTTP/1.1\nHost: localhost\n"
                + "Origin: http://localhost\nConnection: close\nContent-Type: application/x-www-form-urlencoded\n"
                + "Transfer-Encoding: chunked\n\n" + ("2000\n" + "x".repeat(8192) + "\n").repeat(40) + "0\n\n");

        assertThat(RawExchange.status(endless)).isEqualTo(413);
    }

    /** RFC 9112, 9.6: a server that will close says so, lest the next request be sent into the void. */
    @Test void after_a_request_that_cannot_be_understood_the_board_says_that_it_closes() throws IOException {
        String answer = RawExchange.of(board, "GET /g/%00 HTTP/1.1\nHost: localhost\n\n");

        assertThat(RawExchange.status(answer)).isEqualTo(400);
        assertThat(answer).containsIgnoringCase("Connection: close");
    }

    @Test void a_refusal_is_heard_although_the_body_was_not_wanted() throws IOException {
        String answer = RawExchange.of(board, "POST /api/classes/none/commands HTTP/1.1\nHost: localhost\n"
                + "Connection: close\nContent-Length: 300000\n\n" + "x".repeat(300_000));

        assertThat(RawExchange.status(answer)).isEqualTo(413);
    }

    @Test void text_that_is_no_utf_8_is_a_400() throws IOException {
        byte[] head = ("POST /api/pair HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: 12\r\n\r\n"
                + "{\"pin\":\"").getBytes(StandardCharsets.US_ASCII);
        byte[] request = java.util.Arrays.copyOf(head, head.length + 4);
        request[head.length] = (byte) 0xC3;
        request[head.length + 1] = (byte) 0x28;
        request[head.length + 2] = '"';
        request[head.length + 3] = '}';

        String answer = RawExchange.bytes(board, request);

        assertThat(RawExchange.status(answer)).isEqualTo(400);
        assertThat(answer).contains("UTF-8");
    }

    @Test void a_body_that_breaks_off_is_no_fault_of_the_board() throws IOException {
        try (java.net.Socket socket = new java.net.Socket("127.0.0.1", board.port())) {
            socket.getOutputStream().write(("POST " + commands + " HTTP/1.1\r\nHost: localhost\r\n"
                    + "Authorization: Bearer " + board.instructor() + "\r\nContent-Length: 50\r\n\r\n{\"commandId\"")
                    .getBytes(StandardCharsets.US_ASCII));
            socket.shutdownOutput();
            socket.setSoTimeout(10_000);
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

            assertThat(RawExchange.status(answer)).isIn(0, 400);
        }
    }
}

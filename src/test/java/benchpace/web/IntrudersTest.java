package benchpace.web;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import benchpace.web.entrance.BadInputTest;
import benchpace.web.entrance.RawExchange;
import benchpace.web.pairing.GuessingTest;
import benchpace.web.pairing.RightsTest;
import benchpace.web.request.GuardTest;
import benchpace.web.stream.ListeningScreen;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What a guest on the shop's network may try who knows the web well; beside {@link GuardTest}, {@link RightsTest},
 * {@link EveryAddressTest}, {@link GuessingTest} and {@link BadInputTest}. {@code src/docs/security.md} says which of
 * them answers which requirement of OWASP ASVS 5.0.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class IntrudersTest extends OneEvening {
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final List<String> MARKUP = List.of("<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>",
            "</script><script>alert(2)</script>", "'-alert(3)-'", "${7*7}{{7*7}}", "&lt;b&gt;<b>", "]]><!--");

    private String own;

    @BeforeEach void open() {
        own = "http://127.0.0.1:" + board.port();
    }

    private Reply send(HttpRequest.Builder request, String method, String body) {
        return board.send(request.method(method, HttpRequest.BodyPublishers.ofString(body)));
    }

    private HttpRequest.Builder withCookie(String path, String token) {
        return board.request(path).header("Cookie", "benchpace=" + token);
    }

    private void assertNothingWasRecorded() {
        assertThat(board.state(id).seq()).isEqualTo(1);
    }

    // ---- pages of other sites

    @Test void a_form_of_another_site_does_nothing_whatever_it_says_its_content_is() {
        String tap = Json.text(command("close"));
        for (String type : List.of("text/plain", FORM, "multipart/form-data; boundary=x", "application/json")) {
            for (String origin : List.of("http://evil.example", "null", own + ".evil.example", own + "@evil.example")) {
                send(withCookie("/api/classes/" + id + "/commands", board.instructor()).header("Content-Type", type)
                        .header("Origin", origin), "POST", tap).problem(403, "foreign-origin");
            }
        }
        assertNothingWasRecorded();
    }

    @Test void no_header_and_no_field_turns_a_harmless_method_into_another() {
        String mark = board.get("/api/devices", board.instructor()).json().get(0).get("mark").textValue();
        for (String header : List.of("X-HTTP-Method-Override", "X-HTTP-Method", "X-Method-Override")) {
            for (String path : List.of("/api/devices/" + mark, "/api/devices/" + mark + "?_method=DELETE")) {
                assertThat(send(withCookie(path, board.instructor()).header(header, "DELETE").header("Origin", own),
                        "GET", "").status()).as(header).isIn(400, 404, 405);
            }
            assertThat(send(withCookie("/api/devices/sign-out", board.instructor()).header(header, "GET"), "POST",
                    "{\"who\":\"all\"}").status()).as(header).isIn(400, 403);
        }
        assertThat(board.get("/api/classes", board.instructor()).status()).isEqualTo(200);
    }

    // ---- tokens

    @Test void a_token_that_somebody_else_chose_is_never_given_rights() {
        String chosen = "A".repeat(27);

        Reply paired = send(withCookie("/api/pair", chosen).header("Origin", own), "POST",
                "{\"pin\":\"" + TestBoard.PIN + "\"}").ok();

        assertThat(paired.text("token")).isNotEqualTo(chosen);
        board.get("/api/classes", chosen).problem(401, "not-paired");
    }

    @Test void a_cookie_tossed_beside_the_right_one_gains_nothing() {
        Reply reply = board.send(board.request("/devices")
                .header("Cookie", "benchpace=" + board.helper() + "; benchpace=nonsense; BENCHPACE=x"));

        assertThat(reply.status()).isIn(401, 403);
    }

    @Test void a_token_or_key_in_an_address_opens_nothing() {
        for (String name : List.of("token", "benchpace", "access_token", "key", "pin", "Authorization")) {
            board.get("/api/classes?" + name + "=" + board.instructor(), "").problem(401, "not-paired");
        }
        assertThat(board.get("/?key=" + board.access().keys().newInstructorKey(), "").header("Set-Cookie")).isEmpty();
    }

    @Test void of_many_that_come_with_one_key_at_once_one_gets_in() throws Exception {
        String body = "{\"key\":\"" + board.access().keys().newInstructorKey() + "\"}";
        ExecutorService crowd = Executors.newFixedThreadPool(12);
        try {
            List<Callable<Integer>> tries = Collections.nCopies(24,
                    () -> board.post("/api/pair", body, "").status());
            List<Integer> answers = new ArrayList<>();
            for (Future<Integer> answer : crowd.invokeAll(tries)) {
                answers.add(answer.get());
            }
            assertThat(answers).containsOnlyOnce(200).containsOnly(200, 401);
        } finally {
            crowd.shutdownNow();
        }
    }

    @Test void initials_are_three_letters_whatever_trick_is_in_them() {
        for (String typed : List.of("ßßß", "ﬃﬃ", "\u202Eabc", "a\u200Bb\u200Bc\u200Bd", "ＡＢＣＤ", "🕯🕯", "İiıI", "<b>",
                "' --")) {
            String token = board.pair(Json.object().put("pin", TestBoard.HELPER_PIN).put("initials", typed));
            long seq = board.tap(id, command("note").put("text", "x"), token).seq();
            String by = board.get("/api/classes/" + id + "/events?after=" + (seq - 1), token).json().get("by")
                    .textValue();
            assertThat(by.codePoints().toArray()).as(typed).hasSizeBetween(1, 3);
            assertThat(by.codePoints()).as(typed).allMatch(Character::isLetterOrDigit);
        }
    }

    // ---- what people type

    private String withMarkupEverywhere() {
        String plan = "{\"planId\":\"evening-pour\",\"seats\":7,\"name\":" + Json.text(Json.mapper().valueToTree(
                "N" + MARKUP.get(0) + MARKUP.get(1))) + ",\"names\":" + Json.text(Json.mapper().valueToTree(MARKUP))
                + "}";
        String marked = board.create(plan);
        board.tap(marked, opening("wicks")).ok();
        for (int seat = 1; seat <= 7; seat++) {
            board.tap(marked, finish(seat, "vessel")).ok();
            board.tap(marked, command("note").put("seat", seat).put("text", MARKUP.get(seat - 1))).ok();
        }
        board.tap(marked, command("note").put("text", MARKUP.get(2))).ok();
        return marked;
    }

    private static void assertInert(String where, String page) {
        assertThat(page).as(where).doesNotContain("<script>alert", "<img src=x", "\"><img", "]]><!--");
    }

    @Test void what_people_type_is_never_markup_on_any_page_or_stream() throws Exception {
        String marked = withMarkupEverywhere();
        for (String path : EveryPage.of(board, marked, 2)) {
            Reply reply = board.send(board.request(path).header("Authorization", "Bearer " + board.instructor())
                    .header("Accept", "text/html"));
            if (reply.header("Content-Type").orElse("").startsWith("text/html")) {
                assertInert(path, reply.body());
            } else {
                assertThat(reply.header("Content-Type")).as(path).get().asString()
                        .matches("(application/(json|x-ndjson|problem\\+json)|text/calendar).*");
            }
        }
        for (String screen : List.of("instructor", "helper", "wait", "wall")) {
            try (ListeningScreen stream = ListeningScreen.at(board, "/classes/" + marked + "/" + screen + "/stream",
                    board.instructor())) {
                await().until(() -> stream.seq() > 0);
                stream.events().forEach(event -> assertInert(screen + " " + event.type(), event.data()));
            }
        }
    }

    @Test void a_line_break_in_what_people_type_forges_no_header_and_no_event() {
        for (String bad : List.of("x\r\nSet-Cookie: benchpace=y", "x\n\nevent: state\ndata: {}", "x\u0000y")) {
            board.post("/api/classes", Json.text(Json.object().put("planId", "table-of-six").put("name", bad)),
                    board.instructor()).problem(422, "bad-value");
        }
        String quoted = board.create("{\"planId\":\"table-of-six\",\"name\":\"a\\\"; filename=evil.exe; x=\\\"b\"}");
        assertThat(board.get("/classes/" + quoted + "/calendar.ics", board.instructor()).header("Content-Disposition")
                .orElse("")).doesNotContain("evil.exe\"", "; filename=evil");
    }

    // ---- addresses

    @Test void no_address_leads_off_the_board() throws IOException {
        for (String path : List.of("//evil.example/", "//evil.example/%2f..", "/\\evil.example", "/%5cevil.example",
                "/classes/%2f%2fevil.example", "/classes/" + id, "/?next=//evil.example", "/g/%2f%2fevil.example")) {
            String answer = RawExchange.of(board, "GET " + path + " HTTP/1.1\nHost: localhost\nConnection: close\n\n");
            assertThat(RawExchange.status(answer)).as(path).isLessThan(500);
            assertThat(answer.lines().filter(line -> line.regionMatches(true, 0, "Location:", 0, 9))).as(path)
                    .allMatch(line -> line.matches("(?i)Location: /classes/[a-z0-9-]+/wall"));
        }
    }

    @Test void made_up_classes_seats_and_codes_are_not_there() throws IOException {
        for (String made : List.of("none", "..", "%2e%2e", "..%2f..%2fetc", "%00", "'", "*", "0", id + "%20",
                id + "%2f", id.toUpperCase(java.util.Locale.ROOT) + "x", "x".repeat(2_000))) {
            for (String path : List.of("/api/classes/" + made, "/classes/" + made + "/wall", "/g/" + made,
                    "/classes/" + id + "/seats/" + made + "/sheet")) {
                String answer = RawExchange.of(board, "GET " + path + " HTTP/1.1\nHost: localhost\n"
                        + "Authorization: Bearer " + board.instructor() + "\nConnection: close\n\n");
                assertThat(RawExchange.status(answer)).as(path).isBetween(400, 499);
                assertThat(answer).as(path).doesNotContain("Ida", "at benchpace.", "root:");
            }
        }
    }

    // ---- a guest's code

    private Reply say(String code, String step) {
        return send(board.request("/g/" + code + "/done").header("Content-Type", FORM).header("Origin", own), "POST",
                "step=" + step);
    }

    @Test void a_code_speaks_for_its_own_seat_of_its_own_class_only_and_not_once_it_is_closed() {
        String other = board.evening();
        for (String of : List.of(id, other)) {
            board.tap(of, command("guests-may-tell").put("on", true)).ok();
            board.tap(of, opening("welcome")).ok();
        }
        long before = board.state(other).seq();

        send(board.request("/g/" + board.guestCode(id, 4) + "/done?seat=5&class=" + other).header("Content-Type", FORM)
                .header("Origin", own), "POST", "seat=5&step=vessel&class=" + other);

        for (int seat = 1; seat <= 8; seat++) {
            assertThat(board.state(id).json().get("seats").get(seat - 1).get("guestSaysDone").booleanValue())
                    .isEqualTo(seat == 4);
        }
        assertThat(board.state(other).seq()).isEqualTo(before);
        board.tap(other, command("close")).ok();
        long closed = board.state(other).seq();
        say(board.guestCode(other, 4), "vessel");
        assertThat(board.state(other).seq()).isEqualTo(closed);
    }

    @Test void a_guests_page_opens_no_other_page() {
        String code = board.guestCode(id, 4);
        board.get("/api/classes", code).problem(401, "not-paired");
        board.post("/api/pair", "{\"key\":\"" + code + "\"}", "").problem(401, "wrong-pin");
        assertThat(board.get("/g/" + code, "").ok().body()).doesNotContain("Ida", "Tomasz");
    }

    // ---- the protocol

    private String raw(String request) throws IOException {
        return RawExchange.of(board, request.replace("HOST", "Host: localhost\nConnection: close"));
    }

    /** RFC 9112, 6.1 and 6.3: a message whose end could be read two ways is refused, and nothing after it is read. */
    @Test void a_message_whose_end_can_be_read_in_two_ways_is_refused() throws IOException {
        String smuggled = "GET /health HTTP/1.1\nHost: localhost\n\n";
        for (String headers : List.of("Content-Length: 4\nTransfer-Encoding: chunked",
                "Content-Length: 4\nContent-Length: 5", "Content-Length: 4, 5", "Transfer-Encoding: xchunked",
                "Transfer-Encoding: chunked, identity", "Content-Length: +4", "Content-Length: 0x4",
                "Content-Length : 4", "Content-Length: -4")) {
            String answer = raw("POST /api/pair HTTP/1.1\nHOST\n" + headers + "\n\n0\n\n" + smuggled);

            assertThat(RawExchange.status(answer)).as(headers).isBetween(400, 501);
            assertThat(answer.split("HTTP/1.1 ", -1)).as(headers + ": one answer").hasSize(2);
            assertThat(answer).as(headers).doesNotContain("\"screens\"");
        }
    }

    @Test void methods_that_nobody_needs_are_refused_and_echo_nothing() throws IOException {
        for (String method : List.of("TRACE", "TRACK", "CONNECT", "PROPFIND", "PATCH", "DEBUG", "GET\u00A0")) {
            String answer = raw(method + " /health HTTP/1.1\nHOST\nCookie: benchpace=secret-to-echo\n\n");
            assertThat(RawExchange.status(answer)).as(method).isBetween(400, 501);
            assertThat(answer).as(method).doesNotContain("secret-to-echo");
        }
        assertThat(raw("OPTIONS /api/classes HTTP/1.1\nHOST\nOrigin: http://evil.example\n"
                + "Access-Control-Request-Method: POST\n\n")).doesNotContainIgnoringCase("Access-Control-Allow");
    }

    @Test void there_is_no_other_protocol_to_change_to() throws IOException {
        assertThat(RawExchange.status(raw("GET /api/classes/" + id + "/stream HTTP/1.1\nHost: localhost\n"
                + "Connection: Upgrade\nUpgrade: websocket\nSec-WebSocket-Version: 13\n"
                + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\n\n".replace("stream", "none")))).isNotEqualTo(101);
    }

    @Test void headers_and_cookies_beyond_measure_are_refused() throws IOException {
        for (String header : List.of("Cookie: benchpace=" + "x".repeat(40_000), "X-A: " + "y".repeat(40_000),
                "Cookie: " + "a=b; ".repeat(8_000))) {
            assertThat(RawExchange.status(raw("GET /health HTTP/1.1\nHOST\n" + header + "\n\n"))).isIn(400, 431);
        }
        assertThat(RawExchange.status(raw("GET /" + "z".repeat(40_000) + " HTTP/1.1\nHOST\n\n"))).isIn(400, 414, 431);
    }

    @Test void asking_for_parts_or_for_what_has_changed_tells_a_stranger_nothing() {
        for (String path : List.of("/classes/" + id + "/instructor", "/api/classes/" + id, "/devices")) {
            for (String header : List.of("Range", "If-None-Match", "If-Modified-Since", "If-Range")) {
                Reply reply = board.send(board.request(path)
                        .header(header, header.equals("Range") ? "bytes=0-99" : "*"));
                assertThat(reply.status()).as(path + " " + header).isIn(401, 403);
            }
            assertThat(board.send(withCookie(path, board.instructor()).header("Range", "bytes=0-9,5-3,-1")).status())
                    .as(path).isEqualTo(200);
        }
        for (String range : List.of("bytes=5-3", "bytes=-0", "bytes=99999999999999999999-", "lines=1-2", "bytes=,")) {
            assertThat(board.send(board.request("/static/img/awake.webm").header("Range", range)).status()).as(range)
                    .isIn(200, 206, 416);
        }
    }

    // ---- helpers

    /**
     * Beside taps, which {@link RightsTest} goes through: what else a helper may change. An evening played back is no
     * class, and another's is not moved along.
     */
    @Test void a_helper_changes_nothing_that_is_the_instructors() {
        Set<String> open = new TreeSet<>();
        Set<HandlerType> changing = Set.of(HandlerType.POST, HandlerType.PUT, HandlerType.DELETE, HandlerType.PATCH);
        for (Endpoint endpoint : board.server().endpoints()) {
            if (changing.contains(endpoint.method) && !endpoint.path.equals("/api/unpair")) {
                String path = RouteAddress.of(endpoint.path, id);
                Reply reply = send(board.request(path).header("Authorization", "Bearer " + board.helper()),
                        endpoint.method.name(), "{}");
                if (reply.status() != 403) {
                    open.add(endpoint.method + " " + endpoint.path);
                }
            }
        }
        assertThat(open).containsExactlyInAnyOrder("POST /api/pair", "POST /api/pair/link",
                "POST /api/classes/{id}/commands",
                "POST /api/shelf/collect", "POST /api/shelf/{entry}/collect", "POST /api/shelf/{entry}/move",
                "POST /api/shelf/{entry}/undo", "POST /api/plans/check", "PUT /api/classes/{id}/prep/ticks/{item}",
                "DELETE /api/classes/{id}/prep/ticks/{item}", "POST /api/playbacks", "PUT /api/playbacks/{id}",
                "DELETE /api/playbacks/{id}");
    }
}

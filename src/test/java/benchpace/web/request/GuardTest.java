package benchpace.web.request;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.OneEvening;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.entrance.RawExchange;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What every answer carries and what every request has to satisfy, whoever sends it: OWASP ASVS 5.0, 3.4.3 (content
 * policy), 3.4.4 (nosniff), 3.4.6 (frame ancestors), 3.5.1 (requests from other sites), 3.5.3 (nothing changes by GET).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class GuardTest extends OneEvening {
    private static final Pattern VERSIONS = Pattern.compile("jetty|javalin", Pattern.CASE_INSENSITIVE);

    private String cookie;

    @BeforeEach void open() {
        cookie = "benchpace=" + board.instructor();
    }

    // ---- headers

    @Test void a_file_of_the_program_may_do_nothing_by_itself_and_is_not_sniffed() {
        for (String path : List.of("/static/css/base.css", "/static/js/clock.js", "/static/img/favicon.svg",
                "/static/fonts/young-serif-latin.woff2", "/static/fonts/young-serif-OFL.txt")) {
            Reply reply = board.get(path, "").ok();

            assertThat(reply.headers("Content-Security-Policy")).as(path)
                    .containsExactly("default-src 'none'; frame-ancestors 'none'");
            assertThat(reply.header("X-Content-Type-Options")).as(path).contains("nosniff");
            assertThat(reply.header("Content-Type")).as(path).isPresent();
            assertThat(reply.header("Server")).as(path).isEmpty();
        }
    }

    @Test void every_page_has_a_strict_content_policy_and_is_not_sniffed() {
        for (String path : List.of("/", "/classes/" + id + "/instructor", "/classes/" + id + "/helper",
                "/classes/" + id + "/wall", "/classes/" + id + "/seats/1/sheet", "/sw.js", "/webjars/htmx.js",
                "/static/img/awake.mp4",
                "/health", "/no/such/page", "/api/classes", "/api/classes/none", "/static/none.css")) {
            Reply reply = board.get(path, board.instructor());

            List<String> policies = reply.headers("Content-Security-Policy");
            assertThat(policies).as(path).isNotEmpty().allSatisfy(policy -> assertThat(policy)
                    .contains("default-src 'none'", "base-uri 'none'", "frame-ancestors 'none'", "script-src 'self'",
                            "style-src 'self'")
                    .doesNotContain("unsafe-", "*", "http:", "https:"));
            assertThat(reply.header("X-Content-Type-Options")).as(path).contains("nosniff");
            assertThat(reply.header("Content-Type")).as(path).isPresent();
            assertThat(reply.header("Server")).as(path).isEmpty();
        }
    }

    @Test void pages_hold_no_inline_script_or_style() {
        for (String path : List.of("/", "/classes/" + id + "/instructor", "/classes/" + id + "/helper",
                "/classes/" + id + "/wall", "/classes/" + id + "/seats/1/sheet")) {
            assertThat(board.get(path, board.instructor()).ok().body())
                    .doesNotContain("<style", " style=\"", "javascript:")
                    .doesNotContainPattern("<script(?![^>]*src=)")
                    .doesNotContainPattern("<[^>]*\\son(click|load|error|submit|change|input)=");
        }
    }

    @Test void pages_and_state_are_not_kept_by_browsers() {
        for (String path : List.of("/", "/classes/" + id + "/instructor", "/api/classes/" + id)) {
            assertThat(board.get(path, board.instructor()).header("Cache-Control")).as(path).contains("no-store");
        }
    }

    // ---- other sites

    private HttpRequest.Builder unpairing() {
        return board.request("/api/unpair").header("Cookie", cookie).POST(HttpRequest.BodyPublishers.noBody());
    }

    private void assertStillPaired() {
        assertThat(board.get("/api/classes", board.instructor()).status()).isEqualTo(200);
    }

    @Test void a_page_of_another_site_changes_nothing_here() {
        for (String origin : List.of("http://evil.example", "null", "http://127.0.0.1:1", "https://loft.example.evil",
                "file://", "http://127.0.0.1.evil.example:" + board.port(), "not a url at all \u007f", "")) {
            if (!origin.contains("\u007f")) {
                board.send(unpairing().header("Origin", origin)).problem(403, "foreign-origin");
            }
        }
        assertStillPaired();
    }

    @Test void a_cookie_without_an_origin_is_no_proof_of_our_own_page() {
        board.send(unpairing()).problem(403, "foreign-origin");
        board.send(unpairing().header("Sec-Fetch-Site", "cross-site")).problem(403, "foreign-origin");
        board.send(unpairing().header("Sec-Fetch-Site", "same-site")).problem(403, "foreign-origin");
        assertStillPaired();
    }

    @Test void our_own_page_may() {
        Reply reply = board.send(unpairing().header("Origin", "http://127.0.0.1:" + board.port()));

        assertThat(reply.status()).isEqualTo(204);
        board.get("/api/classes", board.instructor()).problem(401, "not-paired");
    }

    @Test void a_bearer_token_needs_no_origin_and_its_bearer_gains_nothing_from_a_cookie() {
        assertThat(board.post("/api/classes", "{\"planId\":\"table-of-six\"}", board.instructor()).status())
                .isEqualTo(201);
        board.send(board.request("/api/classes").header("Authorization", "Bearer nonsense")
                        .header("Cookie", cookie).header("Origin", "http://evil.example")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"planId\":\"table-of-six\"}")))
                .problem(401, "not-paired");
    }

    @Test void another_sites_page_cannot_even_pair_a_browser() {
        board.send(board.request("/api/pair").header("Origin", "http://evil.example")
                        .POST(HttpRequest.BodyPublishers.ofString("{\"pin\":\"" + TestBoard.PIN + "\"}")))
                .problem(403, "foreign-origin");
    }

    @Test void no_other_site_is_allowed_to_read() {
        Reply reply = board.send(board.request("/api/classes").header("Cookie", cookie)
                .header("Origin", "http://evil.example"));

        assertThat(reply.header("Access-Control-Allow-Origin")).isEmpty();
    }

    @Test void nothing_changes_by_get() {
        for (String path : List.of("/api/pair", "/api/unpair", "/api/instructor-keys",
                "/api/classes/" + id + "/commands")) {
            assertThat(board.get(path, board.instructor()).status()).as(path).isIn(404, 405);
        }
        assertStillPaired();
    }

    // ---- names of this machine

    private String asHost(String host) throws IOException {
        return RawExchange.of(board, "GET /health HTTP/1.1\nHost: " + host + "\nConnection: close\n\n");
    }

    @Test void the_board_answers_to_its_own_names_only() throws IOException {
        for (String host : List.of("localhost", "LOCALHOST:" + board.port(), "127.0.0.1:" + board.port(), "192.168.1.7",
                "loft.example", "[::1]:80")) {
            assertThat(RawExchange.status(asHost(host))).as(host).isEqualTo(200);
        }
        for (String host : List.of("evil.example", "localhost.evil.example", "evil.example:80",
                "127.0.0.1.evil.example",                 "loft.example.")) {
            String answer = asHost(host);

            assertThat(RawExchange.status(answer)).as(host).isEqualTo(421);
            assertThat(answer).contains("application/problem+json").doesNotContain("\"classes\"");
        }
    }

    @Test void a_request_without_a_host_or_with_two_is_refused() throws IOException {
        for (String request : List.of("GET /health HTTP/1.1\nConnection: close\n\n",
                "GET /health HTTP/1.1\nHost: localhost\nHost: evil.example\nConnection: close\n\n",
                "GET /health HTTP/1.1\nHost: local host\nConnection: close\n\n")) {
            String answer = RawExchange.of(board, request);

            assertThat(RawExchange.status(answer)).as(request).isEqualTo(400);
            assertThat(answer).contains("application/problem+json").doesNotContainPattern(VERSIONS);
        }
    }

    // ---- methods and addresses

    @Test void a_wrong_method_is_told_with_the_right_ones() {
        Reply reply = board.send(board.request("/api/classes/" + id).header("Authorization",
                "Bearer " + board.instructor()).PUT(HttpRequest.BodyPublishers.ofString("{}")))
                .problem(405, "wrong-method");

        assertThat(reply.header("Allow")).get().asString().contains("GET").contains("DELETE");
        board.send(board.request("/health").PUT(HttpRequest.BodyPublishers.ofString("{}")))
                .problem(405, "wrong-method");
    }

    @Test void head_answers_like_get_without_a_body() {
        for (String path : List.of("/health", "/", "/classes/" + id + "/wall", "/static/css/base.css")) {
            Reply reply = board.send(board.request(path).method("HEAD", HttpRequest.BodyPublishers.noBody()));

            assertThat(reply.status()).as(path).isEqualTo(200);
            assertThat(reply.body()).as(path).isEmpty();
            assertThat(reply.header("Content-Type")).as(path).isEqualTo(board.get(path, "").header("Content-Type"));
        }
    }

    @Test void head_tells_what_is_not_there_and_opens_no_stream() {
        for (String path : List.of("/classes/none/wall", "/api/classes/none/stream", "/no/such/page")) {
            assertThat(board.send(board.request(path).method("HEAD", HttpRequest.BodyPublishers.noBody())).status())
                    .as(path).isEqualTo(404);
        }
        board.send(board.request("/api/classes/" + id + "/stream").method("HEAD",
                HttpRequest.BodyPublishers.noBody())).ok();
        assertThat(board.get("/health", "").json().get("screens").intValue()).isZero();
    }

    @Test void an_address_that_leads_nowhere_is_a_problem_to_programs_and_a_page_to_people() {
        board.get("/no/such/page", "").problem(404, "not-found");
        board.get("/api/no/such/thing", "").problem(404, "not-found");

        Reply page = board.send(board.request("/no/such/page").header("Accept", "text/html"));

        assertThat(page.status()).isEqualTo(404);
        assertThat(page.header("Content-Type")).get().asString().startsWith("text/html");
        assertThat(page.body()).contains("<h1>", "href=\"/\"");
    }

    @Test void nothing_outside_the_folder_of_static_files_is_served() throws IOException {
        for (String path : List.of("/static/../benchpace/Main.class", "/static/%2e%2e/benchpace/Main.class",
                "/static/..%2fbenchpace/Main.class", "/static/%2e%2e%2f%2e%2e%2fetc/passwd", "/static//etc/passwd",
                "/static/..;/benchpace/Main.class", "/static/%5c..%5cbenchpace%5cMain.class", "/static/js/..\\..\\x",
                "/static/%00", "/static/css%00.css", "/static/css/", "/static/", "/static", "/static/js",
                "/static/../../../../../../etc/passwd", "/webjars/../META-INF/MANIFEST.MF",
                "/static/js/../../META-INF/MANIFEST.MF",
                "/META-INF/MANIFEST.MF",
                "/benchpace/Main.class", "/demo-data/rosters/evening.csv")) {
            String answer = RawExchange.of(board, "GET " + path + " HTTP/1.1\nHost: localhost\nConnection: close\n\n");

            assertThat(RawExchange.status(answer)).as(path).isBetween(400, 499);
            assertThat(answer).as(path).contains("application/problem+json").doesNotContain("root:", "Directory");
        }
    }

    @Test void scripts_and_styles_have_their_media_types() {
        assertThat(board.get("/static/js/clock.js", "").header("Content-Type")).get().asString()
                .startsWith("text/javascript");
        assertThat(board.get("/static/css/base.css", "").header("Content-Type")).get().asString()
                .startsWith("text/css");
        assertThat(board.get("/static/fonts/young-serif-latin.woff2", "").ok().header("Content-Type"))
                .contains("font/woff2");
        assertThat(board.get("/webjars/htmx.js", "").ok().header("Content-Type")).get().asString()
                .startsWith("text/javascript");
        board.get("/webjars/htmx-sse.js", "").ok();
    }
}

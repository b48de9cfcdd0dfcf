package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.entrance.RawExchange;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import java.net.http.HttpRequest;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What holds for each address there is, found by asking the server itself, so that none that is added later is left
 * out: OWASP ASVS 5.0, 14.3.2 (nothing is kept by browsers that should not be), 3.4 (headers), 8.2.1 (rights).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveryAddressTest extends OneEvening {
    /** Parts of the program, and the studio's colour: the same for everybody. */
    private static final Set<String> NO_SECRET = Set.of(ProgramFiles.ADDRESS, "/webjars/htmx.js",
            "/webjars/htmx-sse.js", "/sw.js", "/studio.css",
            "/static/img/awake.webm", "/static/img/awake.mp4");
    /** What a device that nobody has paired may send: to be let in, to forget itself, and a guest's word. */
    private static final Set<String> FOR_ANYBODY = Set.of("/api/pair", "/api/pair/link", "/api/unpair",
            "/g/{code}/done");


    private List<Endpoint> endpoints(HandlerType method) {
        return board.server().endpoints().stream().filter(e -> e.method.equals(method)).toList();
    }

    private String address(Endpoint endpoint) {
        return RouteAddress.of(endpoint.path, id);
    }

    /** A stream is asked for its headers only. */
    private Reply read(Endpoint endpoint, String token) {
        HttpRequest.Builder request = board.request(address(endpoint)).header("Authorization", "Bearer " + token);
        return board.send(endpoint.path.endsWith("/stream")
                ? request.method("HEAD", HttpRequest.BodyPublishers.noBody()) : request);
    }

    @Test void nothing_is_kept_by_browsers_but_the_program_itself() {
        for (Endpoint endpoint : endpoints(HandlerType.GET)) {
            for (String token : List.of(board.instructor(), board.helper(), "nobody")) {
                Reply reply = read(endpoint, token);
                assertThat(reply.status()).as(endpoint.path).isLessThan(500);
                if (NO_SECRET.contains(endpoint.path)) {
                    assertThat(reply.body()).doesNotContain("Ida", token);
                } else {
                    assertThat(reply.headers("Cache-Control")).as(endpoint.path).containsExactly("no-store");
                }
            }
        }
    }

    @Test void refusals_and_what_is_malformed_are_not_kept_either() throws Exception {
        for (String path : List.of("/no/such/page", "/api/classes/none", "/static/none.css", "/g/none")) {
            assertThat(board.get(path, "").header("Cache-Control")).as(path).contains("no-store");
        }
        assertThat(RawExchange.of(board, "GET /% HTTP/1.1\nHost: localhost\nConnection: close\n\n"))
                .contains("Cache-Control: no-store");
    }

    @Test void files_of_the_program_are_asked_for_anew_and_no_page_is_framed_or_sniffed() {
        assertThat(board.get("/static/css/base.css", "").headers("Cache-Control")).containsExactly("no-cache");
        for (Endpoint endpoint : endpoints(HandlerType.GET)) {
            Reply reply = read(endpoint, board.instructor());
            assertThat(reply.headers("Content-Security-Policy")).as(endpoint.path).isNotEmpty()
                    .allMatch(policy -> policy.contains("frame-ancestors 'none'"));
            assertThat(reply.header("X-Content-Type-Options")).as(endpoint.path).contains("nosniff");
            List<String> ofPages = List.of("Cross-Origin-Resource-Policy", "Referrer-Policy",
                    "Cross-Origin-Opener-Policy");
            for (String policy : endpoint.path.equals(ProgramFiles.ADDRESS) ? List.<String>of() : ofPages) {
                assertThat(reply.header(policy)).as(endpoint.path + " " + policy).contains("same-origin");
            }
        }
    }

    @Test void a_device_that_nobody_has_paired_changes_nothing() {
        Set<String> refused = new TreeSet<>();
        for (HandlerType method : List.of(HandlerType.POST, HandlerType.PUT, HandlerType.PATCH, HandlerType.DELETE)) {
            for (Endpoint endpoint : endpoints(method)) {
                if (!FOR_ANYBODY.contains(endpoint.path)) {
                    Reply reply = board.send(board.request(address(endpoint)).header("Content-Type", "application/json")
                            .method(method.name(), HttpRequest.BodyPublishers.ofString("{}")));
                    assertThat(reply.status()).as(method + " " + endpoint.path).isEqualTo(401);
                    refused.add(endpoint.path);
                }
            }
        }
        assertThat(refused).hasSizeGreaterThan(5);
    }

    /** Whatever can be read by everybody: the way in, the wall, a seat's own page, and the program itself. */
    @Test void a_device_that_nobody_has_paired_reads_no_more_than_the_wall_shows() {
        Set<String> open = new TreeSet<>();
        for (Endpoint endpoint : endpoints(HandlerType.GET)) {
            Reply reply = read(endpoint, "nobody");
            if (reply.status() < 400) {
                open.add(endpoint.path);
                assertThat(reply.body()).as(endpoint.path).doesNotContain("Ida", "Tomasz");
            }
        }
        open.removeAll(NO_SECRET);
        assertThat(open).containsExactlyInAnyOrder("/", "/health", "/wall", "/api/shown",
                "/api/shown/stream", "/classes/{id}", "/classes/{id}/wall",
                "/classes/{id}/wall/stream", "/api/classes/{id}/stream");
    }
}

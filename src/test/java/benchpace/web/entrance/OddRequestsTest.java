package benchpace.web.entrance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import benchpace.files.Json;
import benchpace.files.OddInput;
import benchpace.files.ShelfJson;
import benchpace.files.log.EventJson;
import benchpace.shelf.ShelfArrangement;
import benchpace.web.cure.CureBoard;
import benchpace.web.request.Problem;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.ThreadMXBean;
import io.javalin.router.Endpoint;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nearly sound requests for every address the server says it has: each is answered, below 500, in words about the
 * request and not about the machine, and a refusal takes no more than its share of memory.
 * {@code -Dbad-inputs=1000000 -Dseed=1} tries more.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OddRequestsTest {
    private static final long SEED = Long.getLong("seed", 20270304L);
    private static final int CASES = Integer.getInteger("bad-inputs", 1_500);
    /** Of the whole run: something that hangs is told, something that is slow today is not. */
    private static final Duration LONGEST = Duration.ofMinutes(5).plusMillis(CASES * 100L);
    private static final long MOST_BYTES = 64L * 1024 * 1024;
    private static final int CASES_A_CLASS = 500;
    /** Sound bodies of every address that takes one; others are sent all of them. */
    private static final Map<String, List<String>> BODIES = Map.of(
            "/api/pair", List.of("{\"pin\":\"135790\",\"initials\":\"ab\"}", "{\"pin\":\"x\"}", "{\"key\":\"x\"}"),
            "/api/classes", List.of("{\"planId\":\"evening-pour\",\"seats\":4,\"name\":\"A\",\"startsAt\":"
                    + "\"2027-03-04T18:30:00Z\",\"names\":[\"Ida\",\"\"]}", "{\"plan\":PLAN,\"seats\":3}"),
            "/api/classes/{id}/seats/{seat}/leave", List.of("{\"commandId\":\"ID\",\"shelf\":\"Upper\",\"place\":5,"
                    + "\"claim\":\"maple 42\",\"name\":\"Io\",\"collectBy\":\"2027-03-18\"}"),
            "/api/shelf/settings", List.of("ARRANGEMENT"),
            "/api/plans", List.of("PLAN"), "/api/plans/check", List.of("PLAN"), "/api/plans/{id}", List.of("OWN"),
            "/api/plans/new", List.of("{\"name\":\"Odd\",\"seats\":4,\"candle\":\"Soy in an amber glass\","
                    + "\"minutes\":90,\"venue\":\"own-shop\",\"pouring\":\"guests\",\"atOnce\":2}"),
            "/api/rooms/reset", List.of("{\"room\":\"The Tallow Loft\",\"place\":\"x\"}"));
    private static final List<String> ACTS = List.of(
            "{\"commandId\":\"ID\",\"claim\":\"maple 42\",\"handTested\":true}",
            "{\"commandId\":\"ID\",\"shelf\":\"Upper\",\"place\":7}", "{}");
    /** A legal value for each field some command has. */
    private static final String FIELDS = "{\"commandId\":\"ID\",\"at\":\"2027-03-04T18:00:00Z\",\"seat\":2,"
            + "\"step\":\"wicks\",\"seq\":2,\"to\":3,\"with\":1,\"name\":\"Io\",\"helper\":\"MO\",\"text\":\"x\","
            + "\"candle\":\"amber-soy\",\"celsius\":21.5,\"activity\":\"labels\",\"minutes\":5,\"on\":true}";

    @TempDir Path data;
    private CureBoard board;
    private String id;
    private int ids;

    @BeforeEach void open() {
        board = new CureBoard(data);
        id = board.poured(1, 1, 2, 3);
        board.post("/api/plans", sound("OWN"), board.instructor());
    }

    @AfterEach void close() {
        board.close();
    }

    private JsonNode sound(String text) {
        try {
            ids++;
            return Json.read(text.replace("ID", "odd-" + ids)
                    .replace("PLAN", Files.readString(Path.of("demo-data/plans/table-of-six.json")))
                    .replace("OWN", Files.readString(Path.of("demo-data/plans/table-of-six.json"))
                            .replace("\"table-of-six\"", "\"own\""))
                    .replace("ARRANGEMENT", Json.text(ShelfJson.arrangement(ShelfArrangement.STANDARD))));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private JsonNode body(Endpoint endpoint, Random random) {
        if (endpoint.path.endsWith("/commands")) {
            List<String> types = List.copyOf(EventJson.types());
            return ((ObjectNode) sound(FIELDS)).put("type", types.get(random.nextInt(types.size())));
        }
        List<String> texts = new ArrayList<>(BODIES.getOrDefault(endpoint.path, ACTS));
        if (!BODIES.containsKey(endpoint.path)) {
            BODIES.values().forEach(texts::addAll);
        }
        return sound(texts.get(random.nextInt(texts.size())));
    }

    /**
     * Requests that would let the sender go, as pairing anew also does, are sent by strangers only, so that the others
     * go on being let in.
     */
    private List<String> tokens(Endpoint endpoint) {
        return endpoint.path.contains("pair") || endpoint.path.contains("device") ? List.of("", "no-such-token")
                : List.of(board.instructor(), board.instructor(), board.instructor(), "", "no-such-token");
    }

    @Test void whatever_is_sent_to_whichever_address_it_is_answered_in_words_about_it() {
        assertTimeoutPreemptively(LONGEST, this::tryAll);
    }

    private void tryAll() throws IOException {
        List<Endpoint> endpoints = board.server().endpoints().stream().filter(e -> e.method.isHttpMethod()).toList();
        assertThat(endpoints).hasSizeGreaterThan(60);
        for (int i = 0; i < CASES; i++) {
            if (i % CASES_A_CLASS == CASES_A_CLASS - 1) {
                id = board.poured(1, 1, 2, 3);
            }
            Random random = new Random(SEED * 1_000_003 + i);
            Endpoint endpoint = endpoints.get(i % endpoints.size());
            String code = board.guestCode(id, 2);
            OddRequest odd = new OddRequest(random, Map.of("id", named(endpoint, random), "number", "1", "code", code,
                    "seat", "2", "entry", "1"));
            send(i, odd.bytes(endpoint, body(endpoint, random), tokens(endpoint)));
        }
        assertThat(board.get("/health").statusCode()).isEqualTo(200);
        board.restart();
        assertThat(board.unreadable()).as("classes that were accepted and cannot be read back").isZero();
    }

    /** Addresses of plans name one, a starter plan or the organiser's own; all others name the class. */
    private String named(Endpoint endpoint, Random random) {
        return !endpoint.path.contains("/plans/") ? id : random.nextInt(3) == 0 ? "table-of-six" : "own";
    }

    private void send(int number, byte[] request) throws IOException {
        long before = allocated();
        String answer = RawExchange.bytes(board.server().port(), request);
        long taken = allocated() - before;
        String sent = shown(new String(request, StandardCharsets.UTF_8));
        String of = "case " + number + " of seed " + SEED + ":\n" + sent + "\nanswered:\n" + shown(answer);
        int status = RawExchange.status(answer);
        assertThat(status).as(of).isBetween(200, 499);
        assertThat(OddInput.LEAKS.matcher(answer).find()).as(of).isFalse();
        if (status >= 400) {
            assertThat(taken).as("bytes for " + of).isLessThan(MOST_BYTES);
            refusal(answer, status, of, sent);
        }
    }

    /** RFC 9457, 3.1: all members are there, and the status is that of the answer; a person is shown a page. */
    private static void refusal(String answer, int status, String of, String sent) {
        if (answer.contains("text/html") && !sent.matches("(?s)\\w+ /api/.*")) {
            return;
        }
        assertThat(answer).as(of).containsIgnoringCase("Content-Type: " + Problem.MEDIA_TYPE);
        if (sent.startsWith("HEAD")) {
            return;
        }
        try {
            JsonNode problem = Json.read(RawExchange.body(answer));
            assertThat(problem.path("type").asText()).as(of).startsWith("urn:benchpace:");
            assertThat(problem.path("title").asText()).as(of).isNotBlank();
            assertThat(problem.path("detail").asText()).as(of).isNotBlank();
            assertThat(problem.path("status").intValue()).as(of).isEqualTo(status);
        } catch (JsonProcessingException e) {
            throw new AssertionError(of, e);
        }
    }

    private static long allocated() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadAllocatedBytes(threads.getAllThreadIds())).sum();
    }

    private static String shown(String text) {
        return text.substring(0, Math.min(1_500, text.length()));
    }
}

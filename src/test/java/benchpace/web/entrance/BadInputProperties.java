package benchpace.web.entrance;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.request.Problem;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** Whatever is posted, to whatever address: never an answer of 500 or above, and a sound problem when refused. */
class BadInputProperties {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> FIELDS = List.of("commandId", "type", "seat", "step", "seq", "helper", "activity",
            "text", "celsius", "with", "to", "at", "name", "names", "seats", "plan", "planId", "startsAt", "pin", "key",
            "initials", "minutes", "other");

    private static Path data;
    private static TestBoard board;
    private static String id;

    @BeforeContainer static void open() throws IOException {
        data = Files.createTempDirectory("board");
        board = TestBoard.open(data);
        id = board.evening();
    }

    @AfterContainer static void close() throws IOException {
        board.close();
        try (Stream<Path> files = Files.walk(data)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }

    private static void assertAnswered(String address, String body) {
        Reply reply = board.post(address, body, board.instructor());

        assertThat(reply.status()).as(body).isLessThan(500);
        if (reply.status() >= 400) {
            assertThat(reply.json().get("status").intValue()).isEqualTo(reply.status());
            assertThat(reply.header("Content-Type")).contains(Problem.MEDIA_TYPE);
        }
    }

    @Property(tries = 400)
    void any_json_to_any_address(@ForAll("addresses") String address, @ForAll("json") JsonNode body) {
        assertAnswered(address, Json.text(body));
    }

    @Property(tries = 400)
    void nearly_right_commands(@ForAll("commands") ObjectNode command) {
        assertAnswered("/api/classes/" + id + "/commands", Json.text(command));
    }

    @Property(tries = 200)
    void any_text_to_any_address(@ForAll("addresses") String address, @ForAll String body) {
        assertAnswered(address, body);
    }

    @Property(tries = 200)
    void sound_json_cut_off_anywhere(@ForAll("commands") ObjectNode command, @ForAll double where) {
        String text = Json.text(command);
        double share = Double.isFinite(where) ? Math.abs(where % 1) : 0;
        assertAnswered("/api/classes/" + id + "/commands", text.substring(0, (int) (share * text.length())));
    }

    @Provide Arbitrary<String> addresses() {
        return Arbitraries.of("/api/pair", "/api/classes", "/api/instructor-keys",
                "/api/classes/" + id + "/commands", "/api/classes/none/commands");
    }

    @Provide Arbitrary<ObjectNode> commands() {
        Arbitrary<Map<String, JsonNode>> fields = Arbitraries.maps(Arbitraries.of(FIELDS), values()).ofMaxSize(5);
        return fields.flatMap(some -> Arbitraries.of(EventJson.types()).flatMap(type ->
                Arbitraries.integers().between(0, 9).map(seat -> {
                    ObjectNode command = TestBoard.command(type).put("seat", seat);
                    some.forEach(command::set);
                    return command;
                })));
    }

    /** Values that some field would take, and values that none would. */
    private static Arbitrary<JsonNode> values() {
        return Arbitraries.oneOf(
                Arbitraries.of("vessel", "wicks", "pour", "cure", "labels", "AB", "", "2027-03-04T18:30:00Z",
                        "2027-03-04T18:30:60Z", "+999999999-12-31T23:59:59Z", "table-of-six", "\u202e\u0000", "\ud83d")
                        .map(NODES::textNode),
                Arbitraries.strings().ofMaxLength(70).map(NODES::textNode),
                Arbitraries.integers().between(-2, 70).map(NODES::numberNode),
                Arbitraries.longs().map(NODES::numberNode),
                Arbitraries.doubles().map(NODES::numberNode),
                Arbitraries.bigIntegers().map(NODES::numberNode),
                Arbitraries.of(true, false).map(NODES::booleanNode),
                Arbitraries.just(NODES.nullNode()),
                Arbitraries.just(NODES.arrayNode()),
                Arbitraries.just(NODES.objectNode()));
    }

    @Provide Arbitrary<JsonNode> json() {
        return json(3);
    }

    private static Arbitrary<JsonNode> json(int depth) {
        if (depth == 0) {
            return values();
        }
        Arbitrary<JsonNode> inner = json(depth - 1);
        Arbitrary<JsonNode> objects = Arbitraries.maps(Arbitraries.of(FIELDS), inner).ofMaxSize(6).map(map -> {
            ObjectNode object = NODES.objectNode();
            map.forEach(object::set);
            return object;
        });
        Arbitrary<JsonNode> arrays = inner.list().ofMaxSize(3).map(list -> {
            ArrayNode array = NODES.arrayNode();
            list.forEach(array::add);
            return array;
        });
        return Arbitraries.frequencyOf(Tuple.of(1, inner), Tuple.of(1, arrays), Tuple.of(4, objects));
    }
}

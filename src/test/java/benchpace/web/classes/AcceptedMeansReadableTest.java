package benchpace.web.classes;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.plan.PlanCheck;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.StarterPlans;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.web.Reply;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the board accepts is there after a restart, the same; what could not be is refused in a sentence, and
 * {@code check} says so beforehand. {@code -Daccepted=N} asks for more random plans and commands.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AcceptedMeansReadableTest {
    private static final int TRIES = Integer.getInteger("accepted", 200);
    private static final long SEED = 20270304;
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    /** Half characters cannot be sent but as escapes. */
    private static final ObjectWriter ESCAPED = Json.mapper().writer().with(JsonWriteFeature.ESCAPE_NON_ASCII);
    private static final List<JsonNode> ODDITIES = List.of(
            text(""), text(" "), text("\n"), text("two\nlines"), text("\u2028"), text("\u0085"), text("\u0000"),
            text("tab\there"), text("\ud83d"), text("\udd6f\ud83d"), text("\ud83d\udd6f"), text("\u202e"),
            text("\ufeff"), text("x".repeat(40)), text("x".repeat(41)), text("x".repeat(80)), text("x".repeat(81)),
            text("é".repeat(400)), text("x".repeat(401)), text("a-b"), text("A"), text("led"), text("hands-on"),
            NODES.numberNode(0), NODES.numberNode(-0.0), NODES.numberNode(-1), NODES.numberNode(1),
            NODES.numberNode(60), NODES.numberNode(61), NODES.numberNode(480), NODES.numberNode(480.000001),
            NODES.numberNode(120.01), NODES.numberNode(0.1 + 0.2), NODES.numberNode(1e-9), NODES.numberNode(1e308),
            NODES.numberNode(Long.MAX_VALUE), NODES.numberNode(33.333333333333336), NODES.numberNode(7.7000000001),
            NODES.booleanNode(true), NODES.nullNode(), NODES.arrayNode(), NODES.objectNode());

    @TempDir Path data;
    private TestBoard board;
    private final Random random = new Random(SEED);

    @AfterEach void close() {
        if (board != null) {
            board.close();
        }
    }

    private static JsonNode text(String text) {
        return NODES.textNode(text);
    }

    private static String escaped(JsonNode node) {
        try {
            return ESCAPED.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static String check(String plan) throws IOException {
        StringBuilder err = new StringBuilder();
        int code = PlanCheck.run("-", new ByteArrayInputStream(plan.getBytes(StandardCharsets.UTF_8)), err, err);
        assertThat(code == PlanCheck.SOUND).as(err.toString()).isEqualTo(err.isEmpty());
        return err.toString();
    }

    private Reply post(JsonNode plan) {
        ObjectNode body = Json.object();
        body.set("plan", plan);
        return board.post("/api/classes", escaped(body), board.instructor());
    }

    /** What a class is, and everything it came from. */
    private Map<String, String> classes() {
        Map<String, String> classes = new LinkedHashMap<>();
        board.get("/api/classes", board.instructor()).ok().json().forEach(c -> {
            String id = c.get("id").textValue();
            classes.put(id, c + board.get("/api/classes/" + id + "/events", board.instructor()).ok().body());
        });
        return classes;
    }

    private void assertTheSameAfterARestart() {
        Map<String, String> before = classes();
        board.restart();
        assertThat(classes()).isEqualTo(before);
        assertThat(board.get("/health", "").json().get("unreadable").intValue()).isZero();
    }

    // ---- classes

    @Test void a_plan_whose_name_holds_a_line_break_is_refused_by_check_and_board_alike() throws IOException {
        board = TestBoard.open(data);
        ObjectNode plan = PlanFile.write(Demo.eveningPlan()).put("name", "Evening\npour");

        assertThat(check(Json.text(plan))).isEqualTo("standard input: /name: the name of the plan must stand on one "
                + "line\n");
        post(plan).problem(422, "bad-value").detail("must stand on one line");
        assertTheSameAfterARestart();
    }

    @Test void a_class_that_an_older_board_kept_under_such_a_name_is_read_on_one_line() throws Exception {
        board = TestBoard.open(data);
        String id = board.evening();
        board.goAway();
        try (var connection = java.sql.DriverManager.getConnection("jdbc:sqlite:" + data.resolve("benchpace.db"));
                var statement = connection.createStatement()) {
            statement.executeUpdate("drop trigger event_is_only_changed_to_forget");
            assertThat(statement.executeUpdate("update event set payload = json_set(payload, '$.name', 'Evening' || "
                    + "char(10) || 'pour', '$.plan.name', 'Evening' || char(10) || 'pour', '$.plan.place', 'The' || "
                    + "char(10) || 'loft', '$.plan.steps[0].name', 'A' || char(10) || 'B')")).isEqualTo(1);
        }
        board.comeBack();

        Plan plan = board.boards().find(id).orElseThrow().live().plan();
        assertThat(board.boards().find(id).orElseThrow().live().name()).isEqualTo("Evening pour");
        assertThat(plan.name() + plan.place() + plan.steps().get(0).name()).isEqualTo("Evening pourThe loftA B");
        assertThat(board.boards().unreadable()).isEmpty();
    }

    @Test void a_class_set_up_while_the_clock_says_1999_is_refused_and_nothing_is_left_of_it() {
        InstantSource wrong = () -> Instant.parse("1999-12-31T22:00:00Z");
        board = new TestBoard(data, wrong, StreamLimits.USUAL);

        board.post("/api/classes", "{\"planId\":\"evening-pour\"}", board.instructor())
                .problem(503, "impossible-clock").detail("1999");

        assertThat(board.boards().all()).isEmpty();
        assertTheSameAfterARestart();
    }

    @Test void whatever_plan_check_is_silent_about_makes_a_class_and_no_other_does() throws IOException {
        board = TestBoard.open(data);
        List<Plan> plans = StarterPlans.all();
        int accepted = 0;
        for (int i = 0; i < TRIES; i++) {
            ObjectNode plan = PlanFile.write(plans.get(random.nextInt(plans.size())));
            for (int changes = random.nextInt(2); changes >= 0; changes--) {
                change(plan);
            }
            String said = check(escaped(plan));
            Reply reply = post(plan);

            assertThat(reply.status()).as("try %d of seed %d: %s", i, SEED, plan).isEqualTo(said.isEmpty() ? 201 : 422);
            accepted += said.isEmpty() ? 1 : 0;
        }
        assertThat(accepted).as("plans of both kinds").isBetween(TRIES / 20, TRIES * 19 / 20);
        assertTheSameAfterARestart();
    }

    /** Puts something odd in the place of one value, anywhere in the tree. */
    private void change(JsonNode tree) {
        List<JsonNode> holders = new ArrayList<>();
        holders(tree, holders);
        JsonNode holder = holders.get(random.nextInt(holders.size()));
        if (holder instanceof ObjectNode object) {
            List<String> names = object.properties().stream().map(Map.Entry::getKey).toList();
            String name = names.get(random.nextInt(names.size()));
            if (random.nextInt(10) == 0) {
                object.remove(name);
            } else {
                object.set(name, odd(object.get(name)));
            }
        } else if (holder instanceof ArrayNode array) {
            int place = random.nextInt(array.size());
            array.set(place, odd(array.get(place)));
        }
    }

    /** Mostly of the sort that stood there, as most of the others are refused at once. */
    private JsonNode odd(JsonNode before) {
        List<JsonNode> alike = ODDITIES.stream().filter(o -> o.getNodeType() == before.getNodeType()).toList();
        List<JsonNode> choice = alike.isEmpty() || random.nextInt(10) == 0 ? ODDITIES : alike;
        return choice.get(random.nextInt(choice.size()));
    }

    private static void holders(JsonNode node, List<JsonNode> holders) {
        if (node.isContainerNode() && !node.isEmpty()) {
            holders.add(node);
            node.forEach(child -> holders(child, holders));
        }
    }

    // ---- commands

    @Test void whatever_is_tapped_is_there_after_a_restart_as_it_was() {
        board = TestBoard.open(data);
        String id = board.evening();
        List<String> types = List.copyOf(EventJson.types());
        List<String> steps = Demo.eveningPlan().steps().stream().map(s -> s.id().value()).toList();
        List<String> activities = Demo.eveningPlan().activities().stream().map(a -> a.id().value()).toList();
        for (int i = 0; i < TRIES; i++) {
            ObjectNode command = TestBoard.command(types.get(random.nextInt(types.size())))
                    .put("seat", 1 + random.nextInt(8)).put("seq", 1 + random.nextInt(i + 1))
                    .put("step", steps.get(random.nextInt(steps.size())))
                    .put("activity", activities.get(random.nextInt(activities.size())))
                    .put("helper", "AB").put("text", "a note").put("celsius", 40 + random.nextInt(40))
                    .put("minutes", 5).put("with", 1 + random.nextInt(8)).put("candle", "ginger-tin").put("on", true)
                    .put("name", "Ada").put("to", board.clock.instant().plusSeconds(60).toString());
            if (!command.get("type").textValue().equals("close")) {
                if (random.nextBoolean()) {
                    change(command);
                }
                Reply reply = board.post("/api/classes/" + id + "/commands", escaped(command), board.instructor());
                assertThat(reply.status()).as("try %d of seed %d: %s", i, SEED, command).isLessThan(500);
            }
            board.testClock().advance(Duration.ofSeconds(7));
        }
        JsonNode before = board.state(id).json();
        assertThat(before.get("seq").longValue()).isGreaterThan(TRIES / 20);
        assertTheSameAfterARestart();
        assertThat(board.state(id).json().get("seats")).isEqualTo(before.get("seats"));
    }

    // ---- the shelf

    @Test void whatever_is_put_on_the_shelf_or_arranged_there_is_there_after_a_restart() {
        board = TestBoard.open(data);
        String id = board.evening();
        for (String step : new String[] {"welcome", "wicks", "fragrance", "before-wax", "mix", "pour"}) {
            board.tap(id, TestBoard.opening(step));
        }
        for (int seat = 1; seat <= 8; seat++) {
            board.tap(id, TestBoard.finish(seat, "pour")).ok();
        }
        for (int i = 0; i < TRIES / 4; i++) {
            ObjectNode wish = Json.object().put("commandId", TestBoard.freshId()).put("shelf", "Upper")
                    .put("place", 1 + random.nextInt(8)).put("name", "Io").put("claim", "maple " + (10 + i % 90))
                    .put("collectBy", "2027-03-18");
            change(wish);
            String path = switch (random.nextInt(4)) {
                case 0 -> "/api/classes/" + id + "/seats/" + (1 + random.nextInt(8)) + "/leave";
                case 1 -> "/api/shelf/1/move";
                case 2 -> "/api/shelf/1/take-back";
                default -> "/api/shelf/1/undo";
            };
            assertThat(board.post(path, escaped(wish), board.instructor()).status()).as("%s %s", path, wish)
                    .isLessThan(500);
            if (i % 8 != 0) {
                continue;
            }
            ObjectNode arranged = board.get("/api/shelf/settings", board.instructor()).ok().json().deepCopy();
            change(arranged);
            assertThat(board.send(board.request("/api/shelf/settings")
                    .header("Authorization", "Bearer " + board.instructor())
                    .PUT(java.net.http.HttpRequest.BodyPublishers.ofString(escaped(arranged)))).status())
                    .as(arranged.toString()).isLessThan(500);
        }
        String before = shelf();
        assertThat(before).contains("\"claim\":\"");
        board.restart();
        assertThat(shelf()).isEqualTo(before);
    }

    private String shelf() {
        return board.get("/api/shelf", board.instructor()).ok().body()
                + board.get("/api/shelf/settings", board.instructor()).ok().body();
    }
}

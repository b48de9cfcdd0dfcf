package benchpace.files.log;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.live.ClassEvent;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every event, and of everything that is none. */
class EventJsonProperties {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final Instant NOW = Instant.parse("2027-03-04T18:30:00Z");

    @Provide Arbitrary<ClassEvent> events() {
        return AnyEvent.event();
    }

    @Provide Arbitrary<Plan> plans() {
        return AnyEvent.plan();
    }

    @Example void every_event_is_among_those_tried() {
        List<Object> tried = AnyEvent.kinds().stream().<Object>map(kind -> kind.sample().getClass()).toList();

        assertThat(tried).containsExactlyInAnyOrderElementsOf(Arrays.stream(ClassEvent.class.getDeclaredClasses())
                .filter(type -> type.isRecord() && ClassEvent.class.isAssignableFrom(type))
                .<Object>map(type -> type).toList());
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void an_event_reads_back_equal(@ForAll("events") ClassEvent event)
            throws JsonProcessingException {
        String stored = Json.text(EventJson.fields(event));

        assertThat(EventJson.read(EventJson.type(event), Json.read(stored))).isEqualTo(event);
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_plan_reads_back_equal(@ForAll("plans") Plan plan) throws JsonProcessingException {
        assertThat(PlanFile.read(Json.read(Json.pretty(PlanFile.write(plan))))).isEqualTo(new PlanReading.Sound(plan));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_line_for_clients_keeps_its_own_number_type_and_time(
            @ForAll("events") ClassEvent event) {
        ObjectNode line = EventJson.line(new Recorded(7, "c", "instructor", NOW, NOW, event));

        assertThat(line.get("seq").longValue()).isEqualTo(7);
        assertThat(line.get("type").textValue()).isEqualTo(EventJson.type(event));
        assertThat(line.get("at").textValue()).isEqualTo("2027-03-04T18:30:00Z");
        assertThat(line.size()).isEqualTo(5 + EventJson.fields(event).size());
    }

    /** Trees made of the names and values that readers ask for, each wherever it does not belong. */
    @Provide Arbitrary<JsonNode> trees() {
        return Arbitraries.randomValue(random -> tree(random, 4));
    }

    private static JsonNode tree(Random random, int deepest) {
        int sort = random.nextInt(deepest > 0 ? 10 : 6);
        if (sort < 6) {
            return leaf(random);
        }
        int size = random.nextInt(5);
        if (sort < 8) {
            return JSON.arrayNode().addAll(IntStream.range(0, size).mapToObj(i -> within(random, deepest)).toList());
        }
        ObjectNode object = JSON.objectNode();
        IntStream.range(0, size).forEach(i -> object.set(pick(random, NAMES), within(random, deepest)));
        return object;
    }

    /** Nothing at all cannot stand within a list or an object: no text of JSON says so. */
    private static JsonNode within(Random random, int deepest) {
        JsonNode child = tree(random, deepest - 1);
        return child.isMissingNode() ? JSON.nullNode() : child;
    }

    private static final List<String> NAMES = List.of("seat", "step", "seq", "to", "name", "text", "with", "helper",
            "activity", "minutes", "celsius", "plan", "startsAt", "seats", "id", "kind", "steps", "activities", "table",
            "opening", "needs", "places", "typicalMinutes", "commandId", "type", "at", "", "/", "~");
    private static final List<String> TEXTS = List.of("wicks", "pour", "hands-on", "led", "horseshoe", "note", "close",
            "2027-03-04T18:30:00Z", "-999999999-01-01T00:00:00Z", "\uD83D", "\0", "", "4", "x".repeat(600));
    private static final List<JsonNode> ODDITIES = List.of(JSON.nullNode(), JSON.missingNode(),
            JSON.booleanNode(true), JSON.numberNode(Double.NaN), JSON.numberNode(Double.NEGATIVE_INFINITY),
            JSON.numberNode(1e99), JSON.numberNode(-0.0), JSON.numberNode(Long.MIN_VALUE),
            JSON.numberNode(BigInteger.TEN.pow(60)), JSON.numberNode(new BigDecimal("1e-40")));

    private static JsonNode leaf(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> JSON.numberNode(random.nextInt(65) - 2);
            case 1 -> JSON.numberNode(random.nextGaussian() * 100);
            case 2 -> JSON.textNode(pick(random, TEXTS));
            default -> pick(random, ODDITIES);
        };
    }

    private static <T> T pick(Random random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    @Provide Arbitrary<String> types() {
        return Arbitraries.oneOf(Arbitraries.of(EventJson.types()), Arbitraries.strings().ofMaxLength(5));
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void whatever_is_no_event_is_told_as_a_bad_field(@ForAll("types") String type, @ForAll("trees") JsonNode tree) {
        assertReadOrTold(() -> EventJson.read(type, tree));
        assertReadOrTold(() -> CommandJson.read(tree, "instructor", NOW));
        assertThat(PlanFile.read(tree)).isNotNull();
    }

    /** One field of a sound event is replaced: far more of these come close. */
    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void an_event_with_one_field_exchanged_is_read_or_told_as_a_bad_field(
            @ForAll("events") ClassEvent event, @ForAll("trees") JsonNode tree, @ForAll("fieldOf") int which) {
        ObjectNode fields = EventJson.fields(event);
        List<String> names = fields.properties().stream().map(Map.Entry::getKey).toList();
        if (!names.isEmpty()) {
            fields.set(names.get(which % names.size()), tree);
        }

        assertReadOrTold(() -> EventJson.read(EventJson.type(event), fields));
    }

    @Provide Arbitrary<Integer> fieldOf() {
        return Arbitraries.integers().between(0, 59);
    }

    /** As above, one level down: within the plan of a creation. */
    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void a_plan_with_one_field_exchanged_is_read_or_told_problem_by_problem(
            @ForAll("plans") Plan plan, @ForAll("trees") JsonNode tree, @ForAll("fieldOf") int which) {
        ObjectNode written = PlanFile.write(plan);
        ObjectNode part = which % 2 == 0 ? written : (ObjectNode) written.at("/steps/0");
        List<String> names = part.properties().stream().map(Map.Entry::getKey).toList();
        part.set(names.get(which % names.size()), tree);

        PlanReading reading = PlanFile.read(written);

        assertThat(reading.ifSound().isPresent()).isEqualTo(reading.problems().isEmpty());
        assertThat(reading.problems()).allSatisfy(p ->
                assertThat(written.at(p.place()).isMissingNode() && !p.sentence().startsWith("is missing")
                        && !tree.isMissingNode()).as(p.toString()).isFalse());
    }

    private static void assertReadOrTold(Runnable reading) {
        try {
            reading.run();
        } catch (BadField told) {
            assertThat(told.sentence()).isNotBlank();
        }
    }
}

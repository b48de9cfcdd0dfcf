package benchpace.board.export;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Formulae;
import benchpace.files.Json;
import benchpace.files.export.ClassTable;
import benchpace.files.export.RowKind;
import benchpace.files.log.StoredEvent;
import benchpace.live.TestClass;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The JSON of a class against its schema (JSON Schema 2020-12), its table, and what is written of both. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClassJsonTest {
    private static final Path SCHEMA = Path.of("src/docs/export.schema.json");
    private static final Path PAGE = Path.of("src/docs/export.md");

    private static Set<ValidationMessage> faults(JsonNode json) throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Json.read(Files.readString(SCHEMA)));
        return schema.validate(json);
    }

    private static JsonNode json(ExportedClass exported) throws IOException {
        return Json.read(Exported.json(exported));
    }

    private static List<ExportedClass> classes() {
        List<ExportedClass> classes = new ArrayList<>(List.of(Exported.evening(), Exported.evening().withoutGuests(),
                Exported.of("new", TestClass.evening(4).live().log())));
        TestClass poured = TestClass.atThePour(6).minute(25).finish(1, "pour").minute(27).pourAgain(1).minute(60)
                .judgeSet(1).note(3, "slow").leave(2);
        classes.add(Exported.of("poured", poured.live().log()));
        classes.add(unsound());
        return classes;
    }

    /** Its third event cannot be read. */
    private static ExportedClass unsound() {
        List<StoredEvent> events = new ArrayList<>();
        TestClass.evening(2).open("welcome").live().log().forEach(r -> events.add(new StoredEvent.Sound(r)));
        Instant at = TestClass.START;
        events.add(new StoredEvent.Unreadable(3, "juggle", at, at, "helper", "", "{\"torches\":3"));
        return ExportedClass.eventsOnly("unsound", events);
    }

    @Test void every_class_holds_to_the_schema() throws IOException {
        for (ExportedClass exported : classes()) {
            assertThat(faults(json(exported))).as(exported.id()).isEmpty();
        }
    }

    @Test void the_schema_is_not_content_with_anything() throws IOException {
        JsonNode json = json(Exported.evening());
        ((ObjectNode) json.get("report").get("steps").get(0)).put("medianMin", 3);
        assertThat(faults(json)).isNotEmpty();
    }

    @Test void what_the_table_has_in_rows_the_json_has_in_objects_under_the_same_names() throws IOException {
        for (ExportedClass exported : classes()) {
            JsonNode json = json(exported);
            List<Map<String, String>> rows = Exported.rows(Exported.table(exported));
            for (RowKind kind : RowKind.values()) {
                List<Map<String, String>> table = rows.stream().filter(r -> r.get("row").equals(kind.word())).toList();
                if (kind == RowKind.EVENT || kind.ofReport() && json.get("report").isNull()) {
                    continue; // an event's line is compared with its row elsewhere
                }
                JsonNode told = kind.ofReport() ? json.get("report").get(kind.key()) : json.get(kind.key());
                List<JsonNode> objects = new ArrayList<>();
                if (told.isArray()) {
                    told.forEach(objects::add);
                } else {
                    objects.add(told);
                }
                assertThat(objects).as(exported.id() + " " + kind).hasSameSizeAs(table);
                for (int i = 0; i < objects.size(); i++) {
                    assertThat(cells(objects.get(i))).isEqualTo(unquoted(table.get(i)));
                }
            }
        }
    }

    private static Map<String, Object> cells(JsonNode object) {
        Map<String, Object> cells = new TreeMap<>();
        object.properties().forEach(e -> cells.put(e.getKey(),
                e.getValue().isNumber() ? e.getValue().doubleValue() : e.getValue().asText()));
        return cells;
    }

    private static Map<String, Object> unquoted(Map<String, String> row) {
        Map<String, Object> cells = new TreeMap<>();
        row.forEach((column, cell) -> {
            if (!column.equals("row")) {
                boolean number = column.endsWith("Minutes") || Set.of("seat", "seats", "tappedSeats", "mostSeat")
                        .contains(column);
                cells.put(column, number ? (Object) Double.parseDouble(cell) : Formulae.asMeant(cell));
            }
        });
        return cells;
    }

    @Test void events_that_make_no_class_are_written_all_the_same_and_the_report_is_not() throws IOException {
        JsonNode json = json(unsound());
        assertThat(json.get("report").isNull()).isTrue();
        assertThat(json.get("events")).hasSize(3);
        assertThat(json.get("events").get(2).get("unreadable").asText()).isEqualTo("{\"torches\":3");
        assertThat(json(unsound().withoutGuests()).get("events").get(2).get("unreadable").asText())
                .doesNotContain("torches");
        assertThat(Exported.rows(Exported.table(unsound()), RowKind.MISSING)).singleElement()
                .extracting(r -> r.get("missing")).isEqualTo("report");
    }

    // ---- what is written of it

    private static List<String> first(String heading) throws IOException {
        String page = Files.readString(PAGE);
        String part = page.substring(page.indexOf(heading)).split("\n#", 2)[0];
        Matcher row = Pattern.compile("(?m)^\\| `([A-Za-z]+)` \\| ").matcher(part);
        List<String> cells = new ArrayList<>();
        while (row.find()) {
            cells.add(row.group(1));
        }
        return cells;
    }

    @Test void the_page_tells_of_every_column_and_row_in_their_order_and_of_no_other() throws IOException {
        assertThat(first("### Columns")).isEqualTo(ClassTable.header());
        assertThat(first("### Rows")).containsExactly(
                Arrays.stream(RowKind.values()).map(RowKind::word).toArray(String[]::new));
    }

    @Test void the_schema_knows_every_column_and_no_other() throws IOException {
        Set<String> keys = new TreeSet<>();
        JsonNode schema = Json.read(Files.readString(SCHEMA));
        schema.at("/properties/class/properties").fieldNames().forEachRemaining(keys::add);
        schema.at("/properties/events/items/properties").fieldNames().forEachRemaining(keys::add);
        schema.at("/properties/report/properties").forEach(list ->
                list.at("/items/properties").fieldNames().forEachRemaining(keys::add));
        Set<String> columns = new TreeSet<>(ClassTable.header());
        columns.removeAll(Set.of("row", "fields"));
        columns.add("unreadable");
        assertThat(keys).isEqualTo(columns);
    }
}

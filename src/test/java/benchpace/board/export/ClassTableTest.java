package benchpace.board.export;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Formulae;
import benchpace.files.Json;
import benchpace.files.export.ClassTable;
import benchpace.files.export.RowKind;
import benchpace.files.log.EventJson;
import benchpace.files.log.StoredEvent;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * RFC 4180 (with its erratum 5714: no space before a line's end) and OWASP ASVS 5.0, 1.2.10, on exported classes, read
 * back by FastCSV.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClassTableTest {
    private static TestClass noted(String... notes) {
        TestClass c = TestClass.evening(3);
        for (String note : notes) {
            c.note(2, note);
        }
        return c;
    }

    private static List<String> texts(String... notes) {
        String table = Exported.table(Exported.of("noted", noted(notes).live().log()));
        return Exported.rows(table, RowKind.NOTE).stream().map(row -> row.get("text")).toList();
    }

    @Test void every_line_ends_in_cr_lf_and_has_a_cell_for_each_column() {
        String table = Exported.table(Exported.evening());
        assertThat(table).startsWith(String.join(",", ClassTable.header()) + "\r\n").endsWith("\r\n");
        assertThat(table.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(table).doesNotContain(" \r\n");
        assertThat(table.lines()).hasSizeGreaterThan(60);
    }

    /** RFC 4180, section 2, rules 5 to 7. */
    @Test void quotes_commas_and_line_ends_within_a_cell_are_kept() {
        String[] notes = {"aaa", "b\"bb", "a, b", "two\nlines", "x\"", ",", "\"", "Zo\u00eb \ud83d\udd6f"};
        assertThat(texts(notes)).containsExactly(notes);
    }

    /** By its ABNF a carriage return alone is no TEXTDATA. */
    @Test void a_lone_carriage_return_is_quoted() {
        ExportedClass odd = ExportedClass.eventsOnly("odd", List.of(new StoredEvent.Unreadable(1, "a\rb",
                TestClass.START, TestClass.START, "c\nd", "\"", "e\r")));
        assertThat(Exported.table(odd)).contains("\"a\rb\"", "\"c\nd\"", "\"\"\"\"");
        assertThat(Exported.rows(Exported.table(odd), RowKind.EVENT).get(0)).containsEntry("type", "a\rb")
                .containsEntry("by", "c\nd").containsEntry("device", "\"");
    }

    @Test void what_a_spreadsheet_takes_for_a_formula_is_text_and_comes_back_as_it_was() {
        String[] notes = {"=HYPERLINK(\"http://x\")", "+49 30", "-5 g", "@x", "'=1", "'quoted'", "''-", "\uFF1Dwide"};
        List<String> cells = texts(notes);
        assertThat(cells).allSatisfy(cell -> assertThat(cell).doesNotMatch("(?s)[=+\\-@\t\r\n\0\uFF1D].*"));
        assertThat(cells.stream().map(Formulae::asMeant)).containsExactly(notes);
        assertThat(cells).contains("'quoted'", "'=HYPERLINK(\"http://x\")", "'-5 g");
    }

    @Test void a_number_below_0_stays_a_number() {
        TestClass c = TestClass.atThePour(3).minute(25).finish(1, "pour").minute(27).judgeSet(1);
        Map<String, String> cure = Exported.rows(Exported.table(Exported.of("early", c.live().log())), RowKind.CURE)
                .get(0);
        assertThat(cure.get("laterMinutes")).startsWith("-");
        assertThat(Double.parseDouble(cure.get("laterMinutes"))).isNegative();
        assertThat(cure.get("withinRange")).isEqualTo("false");
    }

    @Test void every_event_is_its_line_again() throws JsonProcessingException {
        LiveClass live = Exported.evening().told().orElseThrow().live();
        List<Map<String, String>> rows = Exported.rows(Exported.table(Exported.evening()), RowKind.EVENT);
        assertThat(rows).hasSameSizeAs(live.log());
        for (int i = 0; i < rows.size(); i++) {
            assertThat(line(rows.get(i))).isEqualTo(Json.read(Json.text(EventJson.line(live.log().get(i)))));
        }
    }

    /** As the documentation says: what has a column, and all else from {@code fields}. */
    private static ObjectNode line(Map<String, String> row) throws JsonProcessingException {
        ObjectNode line = Json.object();
        for (String column : List.of("seq", "type", "at", "recordedAt", "by", "device", "seat", "step")) {
            String cell = row.get(column);
            if (cell != null && (column.equals("seq") || column.equals("seat"))) {
                line.set(column, Json.read(cell));
            } else if (cell != null) {
                line.put(column, Formulae.asMeant(cell));
            }
        }
        if (row.containsKey("fields")) {
            line.setAll((ObjectNode) Json.read(row.get("fields")));
        }
        return line;
    }

    @Test void without_the_guests_nobody_is_named_and_every_figure_stays() {
        TestClass c = noted("Ida asked for lavender").arrive(1, "Wilhelmina")
                .wish(new ClassEvent.GuestCorrected(new SeatNumber(2), "Bartolomeo", "Cousins", "nuts"));
        ExportedClass named = Exported.of("named", c.live().log());
        assertThat(Exported.table(named)).contains("Wilhelmina", "Bartolomeo", "Cousins", "nuts", "lavender");

        String table = Exported.table(named.withoutGuests());
        assertThat(table + Exported.json(named.withoutGuests()))
                .doesNotContain("Wilhelmina", "Bartolomeo", "Cousins", "nuts", "lavender", "Mina");
        assertThat(Exported.rows(table, RowKind.SEAT)).hasSize(3).allSatisfy(seat ->
                assertThat(seat).doesNotContainKeys("guest", "party"));
        assertThat(Exported.rows(table, RowKind.EVENT)).as("what was said stays said").hasSize(4);
        List<RowKind> figures = List.of(RowKind.CAUSE, RowKind.WAY, RowKind.CANDLE, RowKind.CURE, RowKind.STEP,
                RowKind.FLAG, RowKind.WAIT, RowKind.SHELF);
        ExportedClass evening = Exported.evening();
        for (RowKind kind : figures) {
            assertThat(Exported.rows(Exported.table(evening.withoutGuests()), kind)).as(kind.word())
                    .isEqualTo(Exported.rows(Exported.table(evening), kind)).isNotEmpty();
        }
    }

    @Test void only_the_class_s_own_candles_on_the_shelf_are_in_it() {
        List<Map<String, String>> shelf = Exported.rows(Exported.table(Exported.evening()), RowKind.SHELF);
        assertThat(shelf).hasSize(1);
        assertThat(shelf.get(0)).containsEntry("seat", "4").containsEntry("shelfPlace", "'=Window 3")
                .containsEntry("shelfStatus", "ready").doesNotContainKey("collectedAt");
    }
}

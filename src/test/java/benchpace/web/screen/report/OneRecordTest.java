package benchpace.web.screen.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.export.ExportedClass;
import benchpace.board.view.ClassReport;
import benchpace.files.Formulae;
import benchpace.files.Json;
import benchpace.files.export.ClassFile;
import benchpace.files.export.ClassJson;
import benchpace.files.export.ClassTable;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.PastEvenings;
import benchpace.web.screen.learned.LessonPanel;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.StringWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Page, JSON and table of made-up classes, figure by figure: one record, told three times. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OneRecordTest {
    private static final int CLASSES = 12;
    private static final Times TIMES = new Times(Evening.ZONE);

    /** One class told three times. */
    private static final class Told {
        private final ReportPage page;
        private final JsonNode json;
        private final List<Map<String, String>> table = new ArrayList<>();

        Told(Evening evening, double minute) throws IOException {
            ClassReport report = evening.report(minute);
            page = ReportPage.of(report, LessonPanel.of(Optional.empty(), evening.live().plan(), TIMES),
                    new Viewer(Role.INSTRUCTOR, ""), TIMES);
            ClassFile file = ExportedClass.of(evening.live(), report).file();
            StringWriter written = new StringWriter();
            ClassJson.write(file, written);
            json = Json.read(written.toString()).get("report");
            StringWriter rows = new StringWriter();
            ClassTable.write(file, rows);
            try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(rows.toString())) {
                reader.forEach(r -> table.add(r.getFieldsAsMap()));
            }
        }

        List<JsonNode> json(String key) {
            return StreamSupport.stream(json.get(key).spliterator(), false).toList();
        }

        List<Map<String, String>> rows(String kind) {
            return table.stream().filter(r -> r.get("row").equals(kind)).toList();
        }
    }

    /** As the page says minutes. */
    private static String minutes(double minutes) {
        return Math.round(minutes) + " min";
    }

    private static String clock(String instant) {
        return TIMES.clock(Instant.parse(instant));
    }

    private static List<String> json(JsonNode thing, String... keys) {
        List<String> said = new ArrayList<>();
        for (String key : keys) {
            JsonNode value = thing.get(key);
            said.add(value == null ? "" : key.endsWith("Minutes") ? minutes(value.doubleValue())
                    : key.endsWith("At") ? clock(value.textValue()) : value.asText());
        }
        return said;
    }

    private static List<String> row(Map<String, String> row, String... keys) {
        List<String> said = new ArrayList<>();
        for (String key : keys) {
            String value = row.get(key);
            said.add(value.isEmpty() ? "" : key.endsWith("Minutes") ? minutes(Double.parseDouble(value))
                    : key.endsWith("At") ? clock(value) : Formulae.asMeant(value));
        }
        return said;
    }

    private static void same(Told told, String kind, String list, List<List<String>> page, String... keys) {
        assertThat(told.json(list).stream().map(t -> json(t, keys))).as(list).containsExactlyElementsOf(page);
        assertThat(told.rows(kind).stream().map(r -> row(r, keys))).as(kind).containsExactlyElementsOf(page);
    }

    private static void compare(Told told) {
        ReportPage page = told.page;
        same(told, "step", "steps", page.steps().stream().map(s -> List.of(s.step(), s.planned(), s.median(),
                s.seats())).toList(), "stepName", "plannedMinutes", "medianMinutes", "tappedSeats");
        same(told, "flag", "flags", page.flags().stream().map(f -> List.of(f.at(), f.seat(), f.step(), f.level(),
                f.lasted())).toList(), "fromAt", "seat", "stepName", "level", "tookMinutes");
        assertThat(told.json("flags").stream().map(f -> f.get("verdict").asText()))
                .containsExactlyElementsOf(page.flags().stream().map(f -> f.lookedBack().split(":")[0]).toList());
        same(told, "wait", "waits", page.waited().rows().stream().map(w -> List.of(w.seat(), w.length(), w.tapped(),
                w.assumed(), w.idle())).toList(), "seat", "waitMinutes", "tappedMinutes", "assumedMinutes",
                "idleMinutes");
        same(told, "cure", "cures", page.cured().rows().stream().map(c -> List.of(c.seat(), c.poured(),
                c.said().split(" to ")[0], c.said().split(" to ")[1], c.judged())).toList(), "seat", "pouredAt",
                "readyFromAt", "readyUntilAt", "judgedSetAt");
        same(told, "candle", "candles", page.candles().stream().map(c -> List.of(c.seat(), c.poured())).toList(),
                "seat", "pouredAt");
        assertThat(told.json("candles").stream().map(c -> c.get("last").asBoolean() ? "the last"
                : minutes(c.get("spareMinutes").doubleValue())))
                .containsExactlyElementsOf(page.candles().stream().map(ReportPage.CandleRow::spare).toList());
        assertThat(told.json("way").stream().filter(w -> w.get("tookMinutes").doubleValue() >= 0.75)
                .map(w -> json(w, "fromAt", "tookMinutes", "plannedMinutes"))).containsExactlyElementsOf(
                page.way().stream().map(w -> List.of(w.from(), w.minutes(), w.planned())).toList());
        assertThat(told.json("causes").stream().map(c -> c.get("heldMinutes").doubleValue()).filter(m -> m >= 0.5)
                .map(OneRecordTest::minutes)).containsExactlyInAnyOrderElementsOf(page.causes().stream()
                .flatMap(g -> g.causes().stream()).map(ReportPage.Cause::minutes).toList());
        assertThat(told.json("notes").stream().map(n -> n.get("text").asText())).containsExactlyInAnyOrderElementsOf(
                page.notes().stream().map(n -> n.text()).toList());
    }

    @Test void page_json_and_table_tell_the_same_figures_of_made_up_classes() throws IOException {
        int flags = 0;
        int cures = 0;
        for (long seed = 0; seed < CLASSES; seed++) {
            Told told = new Told(PastEvenings.of(seed), 200);
            compare(told);
            flags += told.page.flags().size();
            cures += told.page.cured().rows().size();
        }
        assertThat(flags).as("there is something to compare").isPositive();
        assertThat(cures).isGreaterThan(CLASSES);
    }

    @Test void and_of_a_class_that_goes_on() throws IOException {
        compare(new Told(Evenings.read(), 62));
        compare(new Told(Evenings.over(), 111));
    }
}

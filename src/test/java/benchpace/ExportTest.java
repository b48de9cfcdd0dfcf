package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.roster.Demo;
import benchpace.live.Recorded;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code export CLASS_ID --data DIR}: what it writes, what it leaves as it was, and one sentence when it cannot. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ExportTest {
    private static final String ID = "evening-tallow";
    private static final List<Recorded> LOG = Demo.recordedEvening();

    @TempDir Path data;

    /** What a run came to. */
    private record Ran(int code, String out, String err) { }

    @BeforeEach void keep() {
        try (Database database = Database.open(data)) {
            SqliteEventLog log = new SqliteEventLog(database);
            LOG.forEach(event -> log.append(ID, event));
        }
    }

    private static Ran run(String... arguments) throws Exception {
        // in a locale without accents, where what is written must be UTF-8 all the same
        try (Program program = Program.with(List.of("-Dfile.encoding=US-ASCII"), arguments)) {
            return new Ran(program.exitCode(), program.out(), program.err());
        }
    }

    private Ran export(String... options) throws Exception {
        return run(Stream.concat(Stream.of("export", ID, "--data", data.toString()), Stream.of(options))
                .toArray(String[]::new));
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(data)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                // SQLite puts an empty log beside what it reads, and an index of it
                if (!file.toString().endsWith("-shm") && Files.size(file) > 0) {
                    files.put(file.getFileName().toString(), Files.size(file) + " " + Files.getLastModifiedTime(file));
                }
            }
        }
        return files;
    }

    private static List<Map<String, String>> rows(String table) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(table)) {
            reader.forEach(r -> rows.add(new HashMap<>(r.getFieldsAsMap())));
        }
        return rows;
    }

    @Test void a_class_is_written_with_its_report_and_the_folder_stays_as_it_was() throws Exception {
        Map<String, String> before = files();
        Ran json = export();
        assertThat(json.err()).isEmpty();
        assertThat(json.code()).isZero();
        JsonNode whole = Json.read(json.out());
        assertThat(whole.get("events")).hasSameSizeAs(LOG);
        for (int i = 0; i < LOG.size(); i++) {
            assertThat(whole.get("events").get(i)).isEqualTo(Json.read(Json.text(EventJson.line(LOG.get(i)))));
        }
        assertThat(whole.at("/report/candles")).isNotEmpty();
        assertThat(whole.at("/report/waits")).isNotEmpty();
        assertThat(whole.at("/report/missing")).isEmpty();
        assertThat(export("--json").out()).isEqualTo(json.out());
        assertThat(files()).isEqualTo(before);
    }

    @Test void the_table_has_as_many_rows_as_the_json_has_things() throws Exception {
        List<Map<String, String>> rows = rows(export("--csv").out());
        JsonNode whole = Json.read(export().out());
        assertThat(rows.stream().filter(r -> r.get("row").equals("event"))).hasSameSizeAs(whole.get("events"));
        assertThat(rows.stream().filter(r -> r.get("row").equals("flag")))
                .hasSameSizeAs(whole.at("/report/flags"));
        assertThat(rows.get(0)).containsEntry("row", "class").containsEntry("classId", ID);
    }

    @Test void without_the_guests_nobody_is_named() throws Exception {
        assertThat(export().out()).contains("Tomasz");
        for (String form : List.of("--csv", "--json")) {
            Ran nameless = export(form, "--without-guests");
            assertThat(nameless.code()).isZero();
            assertThat(nameless.out()).isNotEmpty().doesNotContain("Tomasz", "Linnea", "Marisol", "Noor");
        }
    }

    @Test void it_is_read_beside_a_board_that_runs() throws Exception {
        try (Program board = Program.serve(data, 0, "2468")) {
            assertThat(board.port()).isPositive();
            Ran beside = export();
            assertThat(beside.err()).isEmpty();
            assertThat(Json.read(beside.out()).get("events")).hasSameSizeAs(LOG);
        }
    }

    // ---- what cannot be

    private static void assertFails(int code, String sentence, Ran ran) {
        assertThat(ran.code()).as(ran.err()).isEqualTo(code);
        assertThat(ran.err().lines()).as(ran.err()).hasSize(1);
        assertThat(ran.err()).contains(sentence).doesNotContain("Exception", "\tat ", "SQL");
        assertThat(ran.out()).isEmpty();
    }

    @Test void what_is_not_there_is_told_in_a_sentence() throws Exception {
        assertFails(2, "There is no class no-such in " + data, run("export", "no-such", "--data", data.toString()));
        Path other = Files.createDirectory(data.resolve("other"));
        assertFails(2, "There are no data of a board in " + other, run("export", ID, "--data", other.toString()));
        assertFails(2, "no-folder", run("export", ID, "--data", data.resolve("no-folder").toString()));
        assertFails(2, "--csv", run("export", ID, "--data", data.toString(), "--csv", "--json"));
        assertFails(2, "CLASS_ID", run("export", "--data", data.toString()));
    }

    @Test void a_file_that_is_no_database_is_told_in_a_sentence_and_traced_only_on_demand() throws Exception {
        Path broken = Files.createDirectory(data.resolve("broken"));
        Files.writeString(broken.resolve(Database.FILE), "x".repeat(8192));
        assertFails(1, "is damaged or no database", run("export", ID, "--data", broken.toString()));
        assertThat(run("export", ID, "--data", broken.toString(), "--debug").err()).contains("\tat ");
    }

    @Test void a_class_that_cannot_be_added_up_is_written_without_a_report() throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Database.FILE));
                Statement statement = connection.createStatement()) {
            statement.execute("insert into event (class_id, seq, command_id, type, by_whom, at_ms, recorded_ms, "
                    + "payload, device) values ('" + ID + "', " + (LOG.size() + 1) + ", 'x', 'juggle', 'helper', 0, 0, "
                    + "'{\"torches\":3}', '')");
        }
        Ran ran = export();
        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines()).hasSize(1);
        assertThat(ran.err()).contains("no report");
        JsonNode whole = Json.read(ran.out());
        assertThat(whole.get("report").isNull()).isTrue();
        assertThat(whole.get("events")).hasSize(LOG.size() + 1);
        assertThat(whole.get("events").get(LOG.size()).get("unreadable").asText()).contains("torches");
    }
}

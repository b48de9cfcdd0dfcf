package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ProblemFacts;
import benchpace.cure.room.RoomFit;
import benchpace.files.TextZip;
import benchpace.files.log.RecordedClass;
import benchpace.files.roster.Demo;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.live.WordyClass;
import benchpace.pace.StepPrior;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import benchpace.store.Rooms;
import benchpace.store.SavedPlans;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import benchpace.store.sqlite.StoreException;
import benchpace.words.ProblemWords;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may be sent along with a question: it helps, and it names nobody. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProblemReportsTest {
    private static final Instant NOW = Instant.parse("2027-03-05T09:00:00Z");
    private static final String MARK = WordyClass.MARK;
    private static final List<String> NOTED = List.of(
            "18:02:11 ERROR class plan-quillon-x7k2: model PACE cannot be computed (seat 4, Evaluation.java:88)",
            "18:02:12 WARNING the guest \"Ada Quillon\" cannot be read, at seat 3",
            "18:02:13 WARNING M" + MARK + " claimed; Ada " + MARK + " waits",
            "18:02:14 ERROR the file /home/quillon/Quillon loft/benchpace.db is damaged",
            "18:02:15 WARNING 192.168.1.37 and fe80::1c2a:9 and quillon-tablet.local hung up",
            "18:02:16 WARNING PIN 135790 was wrong; key Zq3kd81mmXw0Pl44aa did not open, quillon@loft.example");

    @TempDir private Path folder;
    private Database database;

    @BeforeEach void open() {
        database = Database.open(folder);
    }

    @AfterEach void close() {
        database.close();
    }

    private void append(String id, List<Recorded> log) {
        log.forEach(event -> new SqliteEventLog(database).append(id, event));
    }

    private ProblemReports running(Supplier<List<String>> lines) {
        return ProblemReports.running(database, () -> ProblemReports.readable(new SqliteEventLog(database)),
                "Benchpace", lines);
    }

    private ProblemReports problems() {
        return running(() -> NOTED);
    }

    private static Map<String, String> unzipped(ProblemFacts facts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        TextZip.write(ProblemWords.files(facts), NOW, bytes);
        Map<String, String> files = new LinkedHashMap<>();
        ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes.toByteArray()));
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
            files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
        return files;
    }

    @Test void a_plan_that_no_class_has_is_named_in_no_line_either() {
        Plan plan = TestPlans.evening().as(new PlanId("quillons-gala"), "Gala");
        new SavedPlans(database).add(plan, NOW, SavedPlans.By.FOLDER);
        ProblemReports problems = running(() -> List.of(
                "18:02:11 WARNING the file quillons-gala.json of the plans cannot be written"));

        assertThat(ProblemWords.files(problems.facts(List.of(), List.of())).get("log.txt"))
                .contains("of the plans cannot be written").doesNotContain("gala");
    }

    @Test void guests_of_a_class_that_was_deleted_and_can_be_had_back_are_named_in_no_line() {
        append("evening-pour-demo", Demo.recordedEvening());
        new SqliteEventLog(database).delete("evening-pour-demo", NOW);
        ProblemReports problems = running(() -> List.of("18:02:11 WARNING Tomasz has two seats"));

        assertThat(ProblemWords.files(problems.facts(List.of("evening-pour-demo"), List.of())))
                .doesNotContainKey("classes/class-1.jsonl")
                .hasEntrySatisfying("log.txt", text -> assertThat(text)
                        .isEqualTo("18:02:11 WARNING … has two seats\n"));
    }

    @Test void whatever_anybody_wrote_is_in_no_byte_of_any_file() throws IOException {
        append("plan-quillon-x7k2", WordyClass.tapped(WordyClass.wordy().log()));
        new Sessions(database).create("token-of-" + MARK, "helper", "M" + MARK, NOW);
        new Settings(database).put("helper-key", "key-of-" + MARK);
        new Rooms(database).prior("plan-quillon-x7k2", "Loft of " + MARK);
        new StepBeliefs(database).accept("plan-" + MARK, "Loft of " + MARK, new StepBeliefs.Accepted(
                Map.of("wicks-" + MARK, new StepPrior(0.2, 0.1, Double.NaN)), 1, NOW));
        new StepBeliefs(database).startedFrom("plan-quillon-x7k2", "plan-" + MARK, "Loft of " + MARK);

        Map<String, String> files = unzipped(problems().facts(List.of("plan-quillon-x7k2"),
                List.of("Class plan-quillon-x7k2: everybody's pace cannot be computed just now.")));

        assertThat(files.keySet()).containsExactly("README.txt", "board.txt", "log.txt", "classes/class-1.jsonl",
                "classes/class-1-started-from.json");
        files.forEach((name, text) -> assertThat((name + text).toLowerCase(Locale.ROOT)).as(name)
                .doesNotContain(MARK, "quillon", "ada", "135790", "zq3kd81m", "192.168", "fe80", "eve ", "choir",
                        "draught", "hen night"));
        assertThat(files.get("classes/class-1-started-from.json")).contains("step-2", "logLossMean");
    }

    @Test void what_helps_is_left_of_what_was_noted() throws IOException {
        append("plan-quillon-x7k2", WordyClass.tapped(WordyClass.wordy().log()));

        Map<String, String> files = unzipped(problems().facts(List.of(), List.of()));

        assertThat(files.get("log.txt")).contains("18:02:11 ERROR class …: model PACE cannot be computed (seat 4, "
                + "Evaluation.java:88)", "is damaged", "PIN … was wrong", "cannot be read, at seat 3");
        assertThat(files.get("board.txt")).contains("Program: Benchpace", "Java: ", "SQLite: 3.", "Store: ",
                "Check of the store: ok", "event: ", "Board: running");
        assertThat(files.get("README.txt")).contains("sends this to nobody", "No names: guests are \"guest 3\"",
                "No class was chosen");
    }

    @Test void the_class_in_the_file_raises_the_flags_and_forecasts_that_it_raised() throws IOException {
        List<Recorded> log = Demo.recordedEvening();
        append("evening-pour-demo", log);

        String lines = unzipped(problems().facts(List.of("evening-pour-demo"), List.of())).get("classes/class-1.jsonl");
        List<Recorded> nameless = RecordedClass.read("class-1.jsonl", new StringReader(lines));

        assertThat(nameless).hasSameSizeAs(log);
        assertThat(Nameless.ofEverybody().all(nameless)).extracting(Recorded::event)
                .isEqualTo(nameless.stream().map(Recorded::event).toList());
        List<Object> told = paced(log);
        assertThat(told.toString()).as("somebody was flagged").contains("BEHIND");
        assertThat(paced(nameless)).isEqualTo(told);
    }

    /** Everybody's flag, the home time and when each candle is ready, every minute of the evening. */
    private static List<Object> paced(List<Recorded> log) {
        PosteriorPaceWatch watch = new PosteriorPaceWatch();
        RoomCureClock cure = new RoomCureClock((classId, room) -> RoomFit.untaught());
        List<Object> told = new ArrayList<>();
        Instant end = log.get(log.size() - 1).recordedAt();
        for (Instant now = log.get(0).recordedAt(); now.isBefore(end); now = now.plus(Duration.ofMinutes(1))) {
            Instant until = now;
            LiveClass live = LiveClass.of(log.stream().filter(e -> !e.recordedAt().isAfter(until)).toList());
            Pace pace = watch.watch("class", live, cure.clocks(live, now), now);
            told.add(List.of(pace.home(), levels(pace)));
        }
        return told;
    }

    private static Map<SeatNumber, Object> levels(Pace pace) {
        Map<SeatNumber, Object> levels = new LinkedHashMap<>();
        pace.flags().forEach((seat, flag) -> levels.put(seat,
                List.of(flag.level(), flag.minutesOver(), flag.priceMinutes())));
        return levels;
    }

    @Test void the_latest_classes_that_have_begun_are_taken_and_one_that_cannot_be_read_is_told() throws IOException {
        append("evening-pour-demo", Demo.recordedEvening());
        append("planned", Demo.recordedEvening().subList(0, 1));
        database.write(connection -> Statements.change(connection, "insert into event (class_id, seq, command_id, "
                + "type, by_whom, at_ms, recorded_ms, payload) select 'broken', seq, command_id, 'dance', by_whom, "
                + "at_ms, recorded_ms, payload from event where class_id = 'planned'"));

        assertThat(ProblemReports.usual(problems().choices())).containsExactly("evening-pour-demo");
        assertThat(unzipped(problems().facts(List.of("broken"), List.of())).get("board.txt"))
                .contains("Classes that cannot be read back: 1");
    }

    @Test void of_data_that_cannot_be_opened_it_is_said_why_without_saying_where() throws IOException {
        StoreException fault = new StoreException("The file /home/quillon/my loft/benchpace.db is damaged or no "
                + "database: please put back a copy of it, or move it away to start anew.");

        Map<String, String> files = unzipped(ProblemReports.unopened("Benchpace", fault, "/home/quillon/my loft"));

        assertThat(files.get("board.txt")).contains("The store cannot be opened: The file …", "is damaged")
                .doesNotContain("quillon", "my loft");
        assertThat(Optional.ofNullable(files.get("log.txt"))).hasValueSatisfying(text ->
                assertThat(text).contains("The board is stopped"));
    }
}

package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.DataFolder.Start;
import java.net.HttpURLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Data folders as disks, power cuts, and people leave them. The board starts with all that can be read and says in a
 * sentence what cannot, or says in one sentence why it does not start: never a trace, a hang, or a loss without a word.
 * {@code -Dflips=N} asks for more folders with bytes flipped at random.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DamagedFoldersTest {
    private static final Duration NO_HANG = Duration.ofSeconds(30);
    private static final int PAGE = 4096;
    private static final int FLIPS = Integer.getInteger("flips", 24);

    @TempDir static Path templates;
    private static DataFolder closed;
    private static DataFolder killed;
    private static Start sound;

    @BeforeAll static void fill() throws Exception {
        closed = DataFolder.filled(templates.resolve("closed"), false);
        killed = DataFolder.filled(templates.resolve("killed"), true);
        sound = closed.copy(templates.resolve("sound")).start();
        assertThat(sound.classes()).hasSize(2);
        assertThat(sound.told()).isEmpty();
        assertThat(sound.candles()).hasSize(3);
        Start again = killed.copy(templates.resolve("again")).start();
        assertThat(again.told()).isEmpty();
        assertThat(again.classes().values()).containsExactlyElementsOf(sound.classes().values());
    }

    /** Damages a folder; what it then comes to. */
    private record Case(String damage, DataFolder of, Harm harm, Outcome outcome) {
        DynamicTest in(Path folder) {
            return DynamicTest.dynamicTest(damage, () -> {
                DataFolder data = of.copy(folder);
                harm.to(data);
                Start start = Assertions.assertTimeoutPreemptively(NO_HANG, data::start);
                outcome.check(start);
            });
        }
    }

    private interface Harm {
        void to(DataFolder data) throws Exception;
    }

    private interface Outcome {
        void check(Start start);
    }

    private static Outcome refused(String sentence) {
        return start -> assertThat(start.refusal()).hasValueSatisfying(said -> assertThat(said).contains(sentence)
                .hasLineCount(1).endsWith(".").doesNotContain("Exception", "null", "SQLITE"));
    }

    private static Outcome told(int classes, String sentence) {
        return start -> {
            assertThat(start.refusal()).isEmpty();
            assertThat(start.classes()).hasSize(classes);
            assertThat(start.told()).anySatisfy(said -> assertThat(said).contains(sentence));
            assertThat(start.told()).allSatisfy(said -> assertThat(said).hasLineCount(1)
                    .doesNotContain("Exception", "null", "SQLITE"));
        };
    }

    /** Told, whatever is left. */
    private static Outcome some(String sentence) {
        return start -> told(start.classes().size(), sentence).check(start);
    }

    private static Outcome nothingLost() {
        return start -> assertThat(start).isEqualTo(sound);
    }

    private static Stream<DynamicTest> each(String folder, List<Case> cases) {
        List<DynamicTest> tests = new ArrayList<>();
        for (Case one : cases) {
            tests.add(one.in(templates.resolve(folder + tests.size())));
        }
        return tests.stream();
    }

    // ---- the file itself

    @TestFactory Stream<DynamicTest> the_database_file() {
        return each("file", List.of(
                new Case("cut to half", closed, d -> d.cut(d.file(), d.size() / 2 / PAGE * PAGE),
                        refused("is damaged")),
                new Case("cut within a page", closed, d -> d.cut(d.file(), 100), refused("is damaged")),
                new Case("cut to nothing", closed, d -> d.cut(d.file(), 0), told(0, "is empty: if classes were kept")),
                new Case("cut to nothing beside its records", killed, d -> d.cut(d.file(), 0),
                        told(0, "is empty, so the records beside it in benchpace.db-wal cannot be read")),
                new Case("gone from beside its records", killed, d -> Files.delete(d.file()),
                        told(0, "is missing, so the records beside it in benchpace.db-wal cannot be read")),
                new Case("begins with other bytes", closed, d -> d.flip(d.file(), 3), refused("is damaged")),
                new Case("another page size", closed, d -> d.flip(d.file(), 16), refused("is damaged")),
                new Case("another format", closed, d -> d.flip(d.file(), 18), refused("cannot be opened")),
                new Case("a shopping list", closed, d -> Files.writeString(d.file(), "candles, wicks\n".repeat(999)),
                        refused("is damaged or no database")),
                new Case("all its pages but the first are zeros", closed, d -> {
                    for (long page = PAGE; page < d.size(); page += PAGE) {
                        d.write(d.file(), page, new byte[PAGE]);
                    }
                }, refused("is damaged")),
                new Case("a folder", closed, d -> {
                    Files.delete(d.file());
                    Files.createDirectory(d.file());
                }, refused("cannot be opened")),
                new Case("a link to itself", closed, d -> d.link(d.file(), d.file()), refused("leads nowhere")),
                new Case("a link to nothing", closed, d -> d.link(d.file(), d.folder().resolve("unplugged/x.db")),
                        refused("leads nowhere")),
                new Case("a device without end", closed, d -> d.link(d.file(), Path.of("/dev/zero")),
                        refused("no file"))));
    }

    @Test void bytes_flipped_anywhere_are_told_or_take_one_class_at_most_and_never_raise_a_trace() throws Exception {
        Random random = new Random(20270304);
        int refused = 0;
        for (int round = 0; round < FLIPS; round++) {
            DataFolder data = (round % 2 == 0 ? closed : killed).copy(templates.resolve("flip" + round));
            Path file = round % 2 == 0 ? data.file() : data.log();
            for (int flips = 0; flips < 1 + round % 10; flips++) {
                data.flip(file, random.nextLong(Files.size(file)));
            }

            Start start = Assertions.assertTimeoutPreemptively(NO_HANG, data::start);

            refused += start.refusal().isPresent() ? 1 : 0;
            boolean told = start.refusal().isPresent() || !start.told().isEmpty();
            assertThat(told || start.events() == sound.events()).as("round %d: %s", round, start).isTrue();
        }
        assertThat(refused).as("flips that were found").isBetween(1, FLIPS - 1);
    }

    // ---- what SQLite keeps beside it

    @TestFactory Stream<DynamicTest> the_write_ahead_log() {
        Outcome newest = told(2, "the newest taps may be missing");
        return each("log", List.of(
                new Case("none beside a closed board's", closed, d -> Files.deleteIfExists(d.log()), nothingLost()),
                new Case("random bytes", closed, d -> Files.write(d.log(), d.noise(50_000)), newest),
                new Case("some random bytes", closed, d -> Files.write(d.log(), d.noise(7)), newest),
                new Case("its header is damaged", killed, d -> d.flip(d.log(), 10), told(0, "newest taps may be")),
                new Case("its first record is damaged", killed, d -> d.flip(d.log(), 700), told(0, "newest taps may")),
                new Case("a record in the middle is damaged", killed, d -> d.flip(d.log(), Files.size(d.log()) / 2),
                        some("newest taps may be missing")),
                new Case("its last record is damaged", killed, d -> d.flip(d.log(), Files.size(d.log()) - 9),
                        some("may be missing")),
                new Case("cut within its last record", killed, d -> d.cut(d.log(), Files.size(d.log()) - 9),
                        some("may be missing")),
                new Case("cut between two records", killed, d -> d.cut(d.log(), 32 + 24 + PAGE),
                        some("may be missing")),
                new Case("a folder", killed, d -> {
                    Files.delete(d.log());
                    Files.createDirectory(d.log());
                }, refused("benchpace.db")),
                new Case("a link to itself", closed, d -> d.link(d.log(), d.log()), refused("benchpace.db")),
                new Case("its index is gone", killed, d -> Files.delete(d.index()), start -> assertThat(start.classes())
                        .hasSize(2)),
                new Case("its index is noise", killed, d -> Files.write(d.index(), d.noise(32_768)),
                        start -> assertThat(start.events()).isEqualTo(sound.events())),
                new Case("its index is empty", killed, d -> d.cut(d.index(), 0),
                        start -> assertThat(start.events()).isEqualTo(sound.events()))));
    }

    @Test void what_was_passed_over_is_kept_aside_under_a_name_and_told_once() throws Exception {
        DataFolder data = killed.copy(templates.resolve("aside"));
        data.flip(data.log(), Files.size(data.log()) / 2);
        byte[] file = Files.readAllBytes(data.file());
        byte[] log = Files.readAllBytes(data.log());

        assertThat(data.start().told()).singleElement().asString().contains(data.folder().resolve("kept-1").toString());

        assertThat(data.folder().resolve("kept-1/benchpace.db")).hasBinaryContent(file);
        assertThat(data.folder().resolve("kept-1/benchpace.db-wal")).hasBinaryContent(log);
        assertThat(data.start().told()).isEmpty();
        Files.write(data.log(), data.noise(100));
        assertThat(data.start().told()).singleElement().asString().contains("kept-2");
    }

    // ---- the tables

    @TestFactory Stream<DynamicTest> the_tables() {
        List<Case> cases = new ArrayList<>(List.of(
                sql("pragma user_version = 99", refused("newer Benchpace")),
                sql("pragma user_version = -1", refused("says it is of version -1")),
                sql("pragma user_version = -2147483648", refused("says it is of version")),
                sql("pragma user_version = 0", refused("another program")),
                sql("alter table session drop column label", refused("lacks the column \"label\" of its table")),
                sql("create table bread (loaf text); create view v as select 1", nothingLost())));
        for (String table : List.of("event", "session", "setting", "room_lesson", "class_prior", "shelf_event",
                "step_lesson", "step_belief", "class_belief", "room_decision", "pairing_key", "seat_code")) {
            cases.add(sql("drop table " + table, refused("of its table \"" + table + "\"")));
        }
        return each("tables", cases);
    }

    private static Case sql(String sql, Outcome outcome) {
        return new Case(sql.substring(0, Math.min(70, sql.length())), closed, d -> d.sql(sql), outcome);
    }

    // ---- rows

    @TestFactory Stream<DynamicTest> a_row_of_a_class_takes_that_class_alone() {
        Outcome one = told(1, "cannot be read back and is left out");
        String first = "where class_id = (select min(class_id) from event) and seq = ";
        return each("event", List.of(
                sql("update event set payload = '{' " + first + 2, one),
                sql("update event set payload = '[]' " + first + 2, one),
                sql("update event set payload = '{}' " + first + 1, one),
                sql("update event set payload = '' " + first + 3, one),
                sql("update event set payload = cast(x'fffe7b' as text) " + first + 3, one),
                sql("update event set payload = '" + "[".repeat(5000) + "' " + first + 3, one),
                sql("update event set payload = json_set(payload, '$.seats[0].seat', 99) " + first + 1, one),
                sql("update event set payload = json_set(payload, '$.plan.steps', json('[]')) " + first + 1, one),
                sql("update event set payload = '{\"text\":\"' || hex(zeroblob(5000000)) || '\"}', type = 'note' "
                        + first + 3, one),
                sql("update event set type = 'juggle' " + first + 2, one),
                sql("update event set type = 'create' " + first + 2, one),
                sql("update event set type = 'note', payload = '{\"text\":\"x\"}' " + first + 1, one),
                sql("delete from event " + first + 3, one),
                sql("delete from event " + first + 1, one),
                sql("update event set at_ms = -9223372036854775807, recorded_ms = -5 " + first + 3, one),
                sql("update event set at_ms = 9223372036854775807 " + first + 3, one)));
    }

    @TestFactory Stream<DynamicTest> a_row_of_the_shelf_takes_that_candle_alone() {
        Outcome left = start -> {
            told(2, "on the pickup shelf").check(start);
            assertThat(start.candles()).as("the others").hasSize(2);
            assertThat(start.freePlaces()).as("not given away").isEqualTo(sound.freePlaces());
        };
        Outcome standing = start -> {
            told(2, "candle 3 on the pickup shelf").check(start);
            assertThat(start.candles()).hasSize(3);
        };
        return each("shelf", List.of(
                sql("update shelf_event set payload = json_set(payload, '$.seat', 'four') where seq = 1", left),
                sql("update shelf_event set payload = json_set(payload, '$.claim', 'no word') where seq = 2", left),
                sql("update shelf_event set payload = json_set(payload, '$.readyFrom', 'soon') where seq = 1", left),
                sql("update shelf_event set payload = json_set(payload, '$.collectBy', '2001-01-01T00:00:00Z') "
                        + "where seq = 2", left),
                sql("update shelf_event set payload = '{' where seq = 1", start -> {
                    told(2, "candle 1 on the pickup shelf").check(start);
                    assertThat(start.candles()).hasSize(2);
                }),
                sql("update shelf_event set type = 'juggle' where seq = 4", standing),
                sql("update shelf_event set payload = '' where seq = 4", standing),
                sql("update setting set value = '{\"shelves\":7}' where key = 'shelf'",
                        told(2, "the standard one is used until it is arranged anew"))));
    }

    @TestFactory Stream<DynamicTest> what_past_classes_taught_takes_no_class_with_it() {
        return each("taught", List.of(
                sql("update room_lesson set log_loss_sd = -1", nothingLost()),
                sql("update room_lesson set log_loss_mean = 9e999, observations = -7", nothingLost()),
                sql("update class_prior set ready_sd = 0", start -> assertThat(start.classes()).hasSize(2)),
                sql("insert into step_lesson values ('evening-pour', '', 3, 0); insert into step_belief values "
                        + "('evening-pour', '', 'wicks', 9e999, -1, null)", nothingLost())));
    }

    // ---- the folder and the plans in it

    @TestFactory Stream<DynamicTest> the_folder() {
        return each("folder", List.of(
                new Case("its lock is a folder", closed, d -> {
                    Files.deleteIfExists(d.folder().resolve("benchpace.lock"));
                    Files.createDirectory(d.folder().resolve("benchpace.lock"));
                }, refused("cannot be written")),
                new Case("a link to itself", closed, d -> d.replaceBy(d.folder()), refused("cannot be created")),
                new Case("a link to where nobody may write", closed, d -> d.replaceBy(Path.of("/proc/self")),
                        refused("cannot be written")),
                new Case("a link to a file", closed, d -> d.replaceBy(Path.of("/etc/hostname")),
                        refused("is not a folder"))));
    }

    @TestFactory Stream<DynamicTest> the_plans() {
        return each("plans", List.of(
                new Case("noise", closed, d -> d.plan(d.noise(5000)), refused("is not text in UTF-8")),
                new Case("zeros", closed, d -> d.plan(new byte[5000]), refused("is not sound JSON")),
                new Case("nothing", closed, d -> d.plan(new byte[0]), refused("own.json")),
                new Case("far too much", closed, d -> d.plan("[0],".repeat(400_000).getBytes()),
                        refused("is larger than 1 MiB, the most that is read of a plan")),
                new Case("far too deep", closed, d -> d.plan("[".repeat(400_000).getBytes()), refused("own.json")),
                new Case("a folder", closed, d -> Files.createDirectories(d.planFile()), refused("no file")),
                new Case("a device without end", closed, d -> d.link(d.planFile(), Path.of("/dev/zero")),
                        refused("no file")),
                new Case("a link to itself", closed, d -> d.link(d.planFile(), d.planFile()), refused("no file")),
                new Case("a pipe that nobody writes into", closed, d -> {
                    Files.createDirectories(d.planFile().getParent());
                    assertThat(new ProcessBuilder("mkfifo", d.planFile().toString()).start().waitFor()).isZero();
                }, refused("no file")),
                new Case("in a folder that is a link to itself", closed, d -> d.link(d.planFile().getParent(),
                        d.planFile().getParent()), nothingLost())));
    }

    @TestFactory Stream<DynamicTest> the_saved_plans() {
        String kept = "insert into saved_plan values ('own', 1, 0, 'instructor', '', '%s')";
        return each("saved-plans", List.of(
                new Case("a version that is no JSON", closed, d -> d.sql(kept.formatted("{")),
                        told(2, "Version 1 of plan \"own\" cannot be read back")),
                new Case("a version of no sound plan", closed, d -> d.sql(kept.formatted("{\"id\":\"own\"}")),
                        told(2, "no other version can be, so it is left out")),
                new Case("a mark of a plan that never was", closed, d -> d.sql("insert into deleted_plan values "
                        + "('nobody', 0)"), nothingLost()),
                new Case("a mark of a file that never was", closed, d -> d.sql("insert into plan_file values "
                        + "('../own.json', 'Own!', 'no hash')"), nothingLost())));
    }

    // ---- on the console

    @Test void a_folder_with_many_faults_starts_and_says_each_on_a_line_of_its_own() throws Exception {
        DataFolder data = closed.copy(templates.resolve("console"));
        data.sql("update event set payload = '{' where class_id = (select min(class_id) from event) and seq = 2");
        data.sql("update shelf_event set payload = '{' where seq = 1");
        data.sql("update session set role = 'juggler'");
        Files.write(data.log(), data.noise(5000));

        try (Program program = Program.serve(data.folder(), 0, "2468")) {
            assertThat(program.err().lines()).hasSize(3)
                    .anySatisfy(l -> assertThat(l).contains("the newest taps may be missing"))
                    .anySatisfy(l -> assertThat(l).contains("cannot be read and is left out", "--debug shows more"))
                    .anySatisfy(l -> assertThat(l).contains("candle 1 on the pickup shelf"));
            assertThat(program.health().get("unreadable").intValue()).isEqualTo(1);
            assertThat(program.health().get("degraded")).hasSize(2);
            HttpURLConnection juggler = (HttpURLConnection) program.uri("/api/classes").toURL().openConnection();
            juggler.setRequestProperty("Authorization", "Bearer token");
            assertThat(juggler.getResponseCode()).as("a device of no known role").isEqualTo(401);
        }
    }
}

package benchpace.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import benchpace.files.cure.CureCaseFile;
import benchpace.files.cure.CureCommand;
import benchpace.files.log.ClassLogReader;
import benchpace.files.log.CommandJson;
import benchpace.files.log.EventJson;
import benchpace.files.log.RecordedClass;
import benchpace.files.log.ReplayCommand;
import benchpace.files.plan.PlanCheck;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.WaxFile;
import benchpace.files.roster.GuestList;
import benchpace.files.roster.Roster;
import benchpace.files.roster.RosterText;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.management.ThreadMXBean;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Nearly sound files for every reader there is: each is read or refused in words about the file, and takes no more than
 * its share of memory. {@code -Dbad-inputs=1000000 -Dseed=1} tries more.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OddFilesTest {
    private static final long SEED = Long.getLong("seed", 20270304L);
    private static final int CASES = Integer.getInteger("bad-inputs", 3_000);
    /** Of the whole run: something that hangs is told, something that is slow today is not. */
    private static final Duration LONGEST = Duration.ofMinutes(5).plusMillis(CASES * 100L);
    private static final long MOST_BYTES = 64L * 1024 * 1024;
    private static final Path PLAN = Path.of("demo-data/plans/class-of-forty.json");
    private static final Path LOG = Path.of("src/test/resources/benchpace/pace/open-01.jsonl");
    private static final Path CASE_FILE = Path.of("src/test/resources/benchpace/cure/open-cases.json");
    private static final Path EVENTS = Path.of("src/test/resources/benchpace/files/log/events-v1.jsonl");

    /** Reads input, and says what it tells the user if it refuses; empty if it takes it. */
    private interface Reader {
        String refusal(byte[] input) throws IOException;
    }

    /** A way in and something sound to begin with. */
    private record Way(String sound, boolean json, Reader reader) { }

    private final Map<String, Way> ways = ways();

    private static Map<String, Way> ways() {
        try {
            Map<String, Way> ways = new LinkedHashMap<>();
            String plan = everyField();
            ways.put("PlanFile.read", new Way(plan, true, in -> PlanFile.read(stream(in)).problems().toString()));
            ways.put("PlanCheck.read", new Way(plan, true,
                    in -> PlanCheck.read("-", stream(in)).problems().toString()));
            ways.put("PlanCheck.run", new Way(plan, true, OddFilesTest::check));
            ways.put("Json.read", new Way(plan, true, in -> {
                Json.read(in);
                Json.read(stream(in));
                return "";
            }));
            ways.put("Roster.read", new Way(Files.readString(Path.of("demo-data/rosters/evening.csv")), false,
                    in -> Roster.read(new String(in, StandardCharsets.UTF_8)).problems().toString()));
            String log = String.join("\n", Files.readAllLines(LOG).subList(0, 12));
            ways.put("GuestList.read", new Way(
                    "seat,name,party,candle,note\n1,Ida,A,,nuts\n2,\"Old, Tom\",A,,\n", false,
                    in -> RosterText.of(in).map(text -> GuestList.read(text).problems().toString()).orElse("no text")));
            ways.put("ClassLogReader.read", new Way(log, false, in -> {
                ClassLogReader.read("a.jsonl", new InputStreamReader(stream(in), StandardCharsets.UTF_8));
                return "";
            }));
            List<String> evening = Files.readAllLines(Path.of("demo-data/evenings/tallow-loft.jsonl"));
            ways.put("RecordedClass.read", new Way(String.join("\n", evening.subList(0, 40)), false, in -> {
                RecordedClass.read("a.jsonl", new InputStreamReader(stream(in), StandardCharsets.UTF_8));
                return "";
            }));
            ways.put("RecordedClass.read a line", new Way(evening.get(30), true, in -> {
                RecordedClass.read("a.jsonl", new StringReader(String.join("\n", evening.subList(0, 30)) + "\n"
                        + new String(in, StandardCharsets.UTF_8)));
                return "";
            }));
            ways.put("ReplayCommand.run", new Way(log, false, OddFilesTest::replay));
            String cases = Json.text(Json.mapper().createArrayNode()
                    .add(Json.read(Files.readString(CASE_FILE)).get(0)));
            ways.put("CureCaseFile.read", new Way(cases, true, in -> {
                CureCaseFile.read("a.json", stream(in));
                return "";
            }));
            ways.put("CureCommand.run", new Way(cases, true, OddFilesTest::cure));
            try (InputStream waxes = WaxFile.class.getResourceAsStream("/benchpace/cure/waxes.json")) {
                ways.put("WaxFile.read", new Way(new String(waxes.readAllBytes(), StandardCharsets.UTF_8), true, in -> {
                    WaxFile.read("waxes.json", stream(in));
                    return "";
                }));
            }
            Files.readAllLines(EVENTS).forEach(line -> event(ways, line));
            ways.put("ShelfJson.readArrangement", new Way(
                    Json.text(ShelfJson.arrangement(benchpace.shelf.ShelfArrangement.STANDARD)), true, in -> {
                        ShelfJson.readArrangement(Json.read(in));
                        return "";
                    }));
            ways.put("StudioJson.read", new Way("{\"name\":\"Wicks\",\"place\":\"Quay\",\"colour\":\"#1f4d43\"}", true,
                    in -> {
                        StudioJson.read(Json.read(in));
                        return "";
                    }));
            ways.put("ShelfJson.read", new Way("{\"place\":\"Upper 5\",\"classId\":\"a\",\"seat\":3,\"readyFrom\":"
                    + "\"2027-03-04T18:30:00Z\",\"collectBy\":\"2027-03-14T18:30:00Z\",\"claim\":\"maple 42\","
                    + "\"name\":\"Io\",\"shelf\":\"Upper\"}", true, in -> {
                        for (String type : List.of("put", "move", "collect", "no such")) {
                            ShelfJson.read(type, 1, Instant.EPOCH, Json.read(in));
                        }
                        return "";
                    }));
            return ways;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A plan with a day before and stations, and with what no plan of ours says: brims, and figures as typed. */
    private static String everyField() throws IOException {
        JsonNode plan = Json.read(Files.readString(PLAN));
        ObjectNode candle = (ObjectNode) plan.at("/candles/0");
        candle.remove(List.of("fillGrams", "fragrancePercentOfWax"));
        candle.put("brimMillilitres", 236.588).put("fillFraction", 0.5).put("fragrancePercentOfTotal", 8)
                .putObject("asTyped").put("brimMillilitres", "8 US fl oz").put("pourCelsius", "143.6 °F");
        ((ObjectNode) plan.at("/candles/1")).putObject("asTyped").put("fillGrams", "95 g");
        ((ObjectNode) plan.get("prep")).putObject("asTyped").put("roomCelsius", "69.8 F");
        ((ObjectNode) plan.at("/prep/loads")).putObject("asTyped").put("flashPointCelsius", "93 °C");
        ((ObjectNode) plan.at("/prep/melters/0")).putObject("asTyped").put("heelGrams", "900").put("watts", "1 kW");
        assertThat(PlanFile.read(plan).problems()).isEmpty();
        return Json.text(plan);
    }

    private static void event(Map<String, Way> ways, String line) {
        try {
            JsonNode event = Json.read(line);
            String type = event.get("type").textValue();
            ObjectNode command = event.get("fields").deepCopy();
            command.put("commandId", "a").put("type", type).put("at", "2027-03-04T18:30:00Z");
            ways.put("EventJson.read " + type, new Way(Json.text(event.get("fields")), true, in -> {
                EventJson.read(type, Json.read(in));
                return "";
            }));
            ways.put("CommandJson.read " + type, new Way(Json.text(command), true, in -> {
                CommandJson.read(Json.read(in), "instructor", Instant.EPOCH);
                return "";
            }));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static InputStream stream(byte[] in) {
        return new ByteArrayInputStream(in);
    }

    private static String check(byte[] in) throws IOException {
        StringBuilder err = new StringBuilder();
        assertThat(PlanCheck.run("-", stream(in), new StringBuilder(), err)).isEqualTo(err.isEmpty() ? 0 : 2);
        return err.toString();
    }

    private static String cure(byte[] in) throws IOException {
        StringBuilder err = new StringBuilder();
        StringBuilder out = new StringBuilder();
        assertThat(new CureCommand().run("-", stream(in), out, err)).isEqualTo(err.isEmpty() ? 0 : 2);
        assertThat(err.isEmpty()).isNotEqualTo(out.isEmpty());
        return err.toString();
    }

    private static String replay(byte[] in) throws IOException {
        StringBuilder err = new StringBuilder();
        assertThat(new ReplayCommand().run(List.of("-"), "-", "-", Optional.empty(), stream(in), new StringBuilder(),
                err)).isEqualTo(err.isEmpty() ? 0 : 2);
        return err.toString();
    }

    // ---- what must hold

    @Test void whatever_a_file_holds_it_is_read_or_refused_in_words_about_it() {
        assertTimeoutPreemptively(LONGEST, this::tryAll);
    }

    private void tryAll() {
        List<String> names = List.copyOf(ways.keySet());
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (int i = 0; i < CASES; i++) {
            String name = names.get(i % names.size());
            byte[] input = input(ways.get(name), new OddInput(new Random(SEED * 1_000_003 + i)));
            long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
            String refusal = refusal(name, i, input);
            long taken = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
            assertThat(OddInput.LEAKS.matcher(refusal.replace("a.json", "")).find())
                    .as("%s, case %d of seed %d says: %s\nof: %s", name, i, SEED, refusal, shown(input)).isFalse();
            assertThat(taken).as("%s, case %d of seed %d, bytes for %s", name, i, SEED, shown(input))
                    .isLessThan(MOST_BYTES);
        }
    }

    private static byte[] input(Way way, OddInput odd) {
        try {
            return way.json ? odd.json(Json.read(way.sound)) : odd.broken(way.sound);
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private String refusal(String name, int number, byte[] input) {
        try {
            return ways.get(name).reader.refusal(input);
        } catch (BadField | BadFile refused) {
            return refused.getMessage();
        } catch (JsonProcessingException refused) {
            return Json.problem(refused).toString();
        } catch (IOException refused) {
            return ""; // the stream is no text: said by who opened it
        } catch (RuntimeException | StackOverflowError fault) {
            throw new AssertionError(name + ", case " + number + " of seed " + SEED + ", of: " + shown(input), fault);
        }
    }

    private static String shown(byte[] input) {
        String text = new String(input, StandardCharsets.UTF_8);
        return text.substring(0, Math.min(1_500, text.length()));
    }

    @Test void every_public_reader_of_files_is_tried() throws IOException {
        TreeSet<String> readers = new TreeSet<>();
        Path house = Path.of("src/main/java");
        try (Stream<Path> sources = Files.walk(house.resolve("benchpace/files"))) {
            for (Path source : sources.filter(f -> f.toString().endsWith(".java"))
                    .filter(f -> !f.endsWith("package-info.java")).toList()) {
                Class<?> type = type(house.relativize(source).toString().replace(".java", "").replace('/', '.'));
                String simple = type.getSimpleName();
                Arrays.stream(type.getDeclaredMethods()).filter(OddFilesTest::reads)
                        .forEach(m -> readers.add(simple + "." + m.getName()));
            }
        }
        readers.remove("PlanFolder.read"); // the same plans, found in a folder
        readers.remove("PlanReader.read"); // what PlanFile and EventJson go through, shown between rooms
        readers.remove("SizedText.read"); // what every reader of a file goes through
        TreeSet<String> tried = new TreeSet<>();
        ways.keySet().forEach(name -> tried.add(name.replaceFirst(" .*", "")));
        assertThat(tried).containsAll(readers);
    }

    private static Class<?> type(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    private static boolean reads(Method method) {
        return Modifier.isPublic(method.getModifiers()) && Modifier.isPublic(method.getDeclaringClass().getModifiers())
                && method.getName().matches("read.*|run");
    }
}

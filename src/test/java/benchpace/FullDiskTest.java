package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.plan.TestPlans;
import benchpace.store.Remnants;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk that takes no more in the middle of a class: the system refuses the real program's writes (RLIMIT_FSIZE, POSIX
 * {@code setrlimit}), and takes them again later. {@code SqliteEventLogTest} has the same for SQLite's own limit.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FullDiskTest {
    private static final String PIN = "97531";
    /** Blocks of 512 bytes: enough to unpack SQLite, and for some hundred taps in its log. */
    private static final int BLOCKS = 2_400;
    /** Bytes: for the pages of a short class, and for no copy of the whole file. */
    private static final long ROOM_FOR_ONE_CLASS = 160_000;

    @TempDir Path data;
    private final PairedDevice device = new PairedDevice();

    private HttpResponse<String> note(Program program, String id, int number) throws Exception {
        return device.ask(program, "/api/classes/" + id + "/commands", "{\"commandId\":\"n-" + number
                + "\",\"type\":\"note\",\"text\":\"" + "x".repeat(400) + "\"}");
    }

    private HttpResponse<String> plan(Program program) throws Exception {
        return device.ask(program, "/api/plans", Json.text(PlanFile.write(TestPlans.evening())));
    }

    private List<String> ownPlans(Program program) throws Exception {
        List<String> own = new ArrayList<>();
        for (JsonNode plan : Json.read(device.ask(program, "/api/plans", "").body())) {
            if (!plan.get("starter").booleanValue()) {
                own.add(plan.get("name").textValue());
            }
        }
        return own;
    }

    private static List<String> commands(String lines) throws IOException {
        List<String> notes = new ArrayList<>();
        for (String line : lines.lines().toList()) {
            notes.add(Json.read(line).get("seq").asText());
        }
        return notes;
    }

    @Test void acknowledged_taps_survive_refused_ones_say_so_and_the_board_goes_on_by_itself() throws Exception {
        String id;
        int acknowledged = 0;
        try (Program program = Program.within("ulimit -S -f " + BLOCKS, List.of(), "serve", "--host", "127.0.0.1",
                "--port", "0", "--data", data.toString(), "--no-demo", "--pin", PIN)) {
            device.pair(program, PIN);
            id = device.create(program);
            HttpResponse<String> reply = note(program, id, acknowledged);
            while (reply.statusCode() == 200 && acknowledged < 5_000) {
                acknowledged++;
                reply = note(program, id, acknowledged);
            }

            assertThat(reply.statusCode()).as(reply.body()).isEqualTo(503);
            JsonNode problem = Json.read(reply.body());
            assertThat(problem.get("type").textValue()).isEqualTo("urn:benchpace:not-written");
            assertThat(problem.get("detail").textValue()).contains("disk").contains("full").contains("nothing was "
                    + "written").doesNotContain("SQLITE", "Exception");
            assertThat(note(program, id, acknowledged).statusCode()).as("still").isEqualTo(503);
            assertThat(plan(program).statusCode()).as("a plan that is not kept").isEqualTo(503);
            assertThat(ownPlans(program)).isEmpty();
            assertThat(device.ask(program, "/api/classes/" + id, "").statusCode()).as("it can be looked at")
                    .isEqualTo(200);
            assertThat(commands(device.ask(program, "/api/classes/" + id + "/events", "").body()))
                    .hasSize(acknowledged + 1);

            assertThat(new ProcessBuilder("prlimit", "--pid", "" + program.pid(), "--fsize=unlimited").start()
                    .waitFor()).isZero();

            assertThat(note(program, id, acknowledged).statusCode()).as("there is room again").isEqualTo(200);
            assertThat(plan(program).statusCode()).isEqualTo(201);
            assertThat(program.err()).doesNotContain("\tat ");
            program.kill();
        }
        try (Program program = Program.serve(data, 0, PIN)) {
            assertThat(commands(device.ask(program, "/api/classes/" + id + "/events", "").body()))
                    .hasSize(acknowledged + 2)
                    .doesNotHaveDuplicates();
            assertThat(ownPlans(program)).containsExactly("Test evening");
            assertThat(program.err()).isEmpty();
        }
    }

    @Test void guests_are_forgotten_once_there_is_room_and_until_then_nobody_is_told_that_they_are() throws Exception {
        List<String> words = List.of("Quillonia", "Velvetscarfe");
        String id;
        try (Program program = Program.within("ulimit -S -f " + BLOCKS, List.of(), "serve", "--host", "127.0.0.1",
                "--port", "0", "--data", data.toString(), "--no-demo", "--pin", PIN)) {
            device.pair(program, PIN);
            id = device.create(program);
            for (String command : List.of("\"arrive\",\"seat\":1,\"name\":\"" + words.get(0) + "\"",
                    "\"note\",\"text\":\"" + words.get(1) + "\"", "\"close\"")) {
                assertThat(device.ask(program, "/api/classes/" + id + "/commands", "{\"commandId\":\"c"
                        + command.length() + "\",\"type\":" + command + "}").statusCode()).as(command).isEqualTo(200);
            }
            String other = device.create(program);
            int notes = 0;
            while (note(program, other, notes).statusCode() == 200 && notes < 5_000) {
                notes++;
            }

            HttpResponse<String> full = forget(program, id);
            assertThat(full.statusCode()).as(full.body()).isEqualTo(503);
            assertThat(Json.read(full.body()).get("detail").textValue()).contains("disk", "full")
                    .doesNotContain("SQLITE", "Exception");
            assertThat(device.ask(program, "/api/classes/" + id, "").body()).as("nothing is half forgotten")
                    .contains(words.get(0));

            limit(program, Long.toString(Files.size(data.resolve("benchpace.db-wal")) + ROOM_FOR_ONE_CLASS));
            HttpResponse<String> owed = forget(program, id);
            assertThat(owed.statusCode()).as(owed.body()).isEqualTo(200);
            assertThat(Json.read(owed.body()).get("cleared").booleanValue()).as("a second file has no room").isFalse();
            assertThat(device.ask(program, "/api/classes/" + id, "").body()).doesNotContain(words);
            assertThat(device.ask(program, "/data", "").body()).contains("Copies of erased words may still stand");

            limit(program, "unlimited");
            assertThat(Json.read(forget(program, id).body()).get("cleared").booleanValue()).isTrue();
            assertThat(Remnants.of(data, words)).isEmpty();
            assertThat(commands(device.ask(program, "/api/classes/" + other + "/events", "").body()))
                    .as("nothing of another class is lost").hasSize(notes + 1);
            program.kill();
        }
        assertThat(Remnants.of(data, words)).isEmpty();
    }

    private HttpResponse<String> forget(Program program, String id) throws Exception {
        return device.ask(program, "/api/classes/" + id + "/forget-guests", "{}");
    }

    private static void limit(Program program, String bytes) throws Exception {
        assertThat(new ProcessBuilder("prlimit", "--pid", "" + program.pid(), "--fsize=" + bytes + ":").start()
                .waitFor()).isZero();
    }
}

package benchpace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.Boards;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.files.Json;
import benchpace.files.roster.Demo;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real program, killed in the middle of an evening: the class is where the last acknowledged tap left it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestartTest {
    private static final String PIN = "97531";
    private static final List<String> STEPS = List.of("tin", "wicks", "blend", "weigh", "mix", "pour");

    @TempDir Path data;
    private final PairedDevice device = new PairedDevice();
    private int taps;

    private ObjectNode tap(String type) {
        return Json.object().put("commandId", "tap-" + ++taps).put("type", type);
    }

    private HttpResponse<String> tap(Program program, String id, ObjectNode command)
            throws IOException, InterruptedException {
        return device.ask(program, "/api/classes/" + id + "/commands", Json.text(command));
    }

    private JsonNode state(Program program, String id) throws IOException, InterruptedException {
        return Json.read(device.ask(program, "/api/classes/" + id, "").body());
    }

    /** What must not change by a restart: everything but the time it is. */
    private static JsonNode lasting(JsonNode state) {
        ObjectNode lasting = state.deepCopy();
        lasting.remove(List.of("now", "forecast", "flags", "silenceMinutes"));
        lasting.get("seats").forEach(seat -> ((ObjectNode) seat).remove(List.of("countFrom", "flag")));
        return lasting;
    }

    private void pourAll(Program program, String id) throws IOException, InterruptedException {
        for (String step : STEPS) {
            tap(program, id, tap("open-step").put("step", step));
            for (int seat = 1; seat <= 6; seat++) {
                assertThat(tap(program, id, tap("finish-step").put("seat", seat).put("step", step)).statusCode())
                        .isEqualTo(200);
            }
        }
    }

    @Test void a_poured_class_is_the_same_after_the_plug_was_pulled_countdowns_included() throws Exception {
        String id;
        JsonNode before;
        try (Program program = Program.serve(data, 0, PIN)) {
            device.pair(program, PIN);
            id = device.create(program);
            tap(program, id, tap("open-step").put("step", "hello"));
            pourAll(program, id);
            tap(program, id, tap("pause").put("seat", 2));
            before = state(program, id);
            program.kill();
        }
        JsonNode after = afterRestart(id);
        while (!minute(after).equals(minute(before))) { // the wait is planned anew with each: no fair comparison
            before = after;
            after = afterRestart(id);
        }
        assertThat(lasting(after)).isEqualTo(lasting(before));
        assertThat(after.get("seats")).allMatch(seat -> seat.get("readyAt").isTextual());
        assertThat(after.get("seats")).extracting(s -> s.get("since").textValue())
                .isEqualTo(StreamSupport.stream(before.get("seats").spliterator(), false)
                        .map(s -> s.get("since").textValue()).toList());
    }

    private JsonNode afterRestart(String id) throws Exception {
        try (Program program = Program.serve(data, 0, PIN)) {
            JsonNode state = state(program, id);
            assertThat(program.err()).isEmpty();
            program.kill();
            return state;
        }
    }

    private static Instant minute(JsonNode state) {
        return Instant.parse(state.get("now").textValue()).truncatedTo(ChronoUnit.MINUTES);
    }

    @Test void killed_in_the_middle_of_taps_no_acknowledged_one_is_lost_and_none_counts_twice() throws Exception {
        List<String> acknowledged = new CopyOnWriteArrayList<>();
        List<String> sent = new ArrayList<>();
        String id;
        try (Program program = Program.serve(data, 0, PIN)) {
            device.pair(program, PIN);
            id = device.create(program);
            Thread tapping = new Thread(() -> tapUntilItIsGone(program, id, sent, acknowledged), "tapping");
            tapping.start();
            await().atMost(Duration.ofSeconds(30)).until(() -> acknowledged.size() >= 20);
            program.kill();
            tapping.join(30_000);
        }
        try (Program program = Program.serve(data, 0, PIN)) {
            for (String last : sent.subList(Math.max(0, sent.size() - 3), sent.size())) {
                assertThat(tap(program, id, note(last)).statusCode()).as("sent again, as the page does").isEqualTo(200);
            }
            List<String> kept = notes(device.ask(program, "/api/classes/" + id + "/events", "").body());

            assertThat(kept).isEqualTo(sent).containsAll(acknowledged).doesNotHaveDuplicates();
        }
    }

    private static ObjectNode note(String text) {
        return Json.object().put("commandId", text).put("type", "note").put("text", text);
    }

    private void tapUntilItIsGone(Program program, String id, List<String> sent, List<String> acknowledged) {
        try {
            for (int i = 0; i < 100_000; i++) {
                String text = "note-" + i;
                sent.add(text);
                if (tap(program, id, note(text)).statusCode() == 200) {
                    acknowledged.add(text);
                }
            }
        } catch (IOException | InterruptedException gone) {
            // killed, as it should be
        }
    }

    private static List<String> notes(String lines) throws IOException {
        List<String> notes = new ArrayList<>();
        for (String line : lines.lines().toList()) {
            JsonNode event = Json.read(line);
            if (event.get("type").textValue().equals("note")) {
                notes.add(event.get("text").textValue());
            }
        }
        return notes;
    }

    @Test void a_device_and_the_helpers_link_outlive_a_restart() throws Exception {
        String helpers;
        try (Program program = Program.serve(data, 0, PIN)) {
            device.pair(program, PIN);
            helpers = program.out().lines().filter(l -> l.contains("#helper=")).findFirst().orElseThrow()
                    .replaceFirst(".*#helper=", "");
            program.kill();
        }
        try (Program program = Program.serve(data, 0, PIN)) {
            assertThat(device.ask(program, "/api/classes", "").statusCode()).isEqualTo(200);
            assertThat(program.out()).as("another link stands on the console").doesNotContain(helpers);
            device.forget();
            HttpResponse<String> paired = device.ask(program, "/api/pair", "{\"key\":\"" + helpers + "\"}");
            assertThat(paired.statusCode()).as("what was printed of the former opens").isEqualTo(200);
            assertThat(paired.body()).contains("\"helper\"");
        }
    }

    @Test void a_class_with_times_from_the_future_is_told_on_the_console() throws Exception {
        Instant ahead = Instant.now().plus(Duration.ofHours(2));
        try (Database database = Database.open(data)) {
            Boards boards = new Boards(new SqliteEventLog(database), () -> ahead,
                    new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC), () -> "late");
            boards.create(Demo.eveningPlan(), "Thursday", ahead, Demo.eveningRoster().places(), "instructor");
            boards.close();
        }
        try (Program program = Program.serve(data, 0, PIN)) {
            await().untilAsserted(() -> assertThat(program.out())
                    .contains("\"Thursday\" has times up to ", "Its page asks which is right."));
            assertThat(program.err()).isEmpty();
        }
    }
}

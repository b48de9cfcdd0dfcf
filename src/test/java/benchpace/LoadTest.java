package benchpace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.LongStream;
import org.HdrHistogram.ConcurrentHistogram;
import org.HdrHistogram.Histogram;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The board as a process of its own under more than any class brings: six devices that tap fifty times a second, forty
 * seats and forty screens, {@code -Dload=5m} long, once as it is and once with screens among them that have stopped
 * reading. Prints how long a tap took to be acknowledged, reckoned from when it was due, and how long until the screens
 * knew of it; asserts that nothing is lost or counted twice, and no time.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LoadTest {
    private static final Duration LASTS = Duration.parse("PT" + System.getProperty("load", "3s"));
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int DEVICES = 6;
    private static final int TAPS_A_SECOND = 50;
    private static final int SEATS = 40;
    private static final int SCREENS = 40;
    private static final int STALLED = 4;
    private static final String PIN = "2468";

    @TempDir Path data;
    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private Program program;

    private JsonNode ask(String path, String token, ObjectNode body) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(program.uri(path)).timeout(PATIENCE)
                .POST(HttpRequest.BodyPublishers.ofString(Json.text(body)));
        if (!token.isEmpty()) {
            request.header("Authorization", "Bearer " + token);
        }
        HttpResponse<String> reply = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        assertThat(reply.statusCode()).as(reply.body()).isBetween(200, 299);
        return Json.read(reply.body());
    }

    private String paired() throws IOException, InterruptedException {
        return ask("/api/pair", "", Json.object().put("pin", PIN)).get("token").textValue();
    }

    /** One device's taps on the seats that are its own, in turn, each accepted: done, taken back, paused, resumed. */
    private final class Tapping implements Callable<Integer> {
        private final int device;
        private final String classId;
        private final String token;
        private final Run run;
        private long lastSeq;

        Tapping(int device, String classId, String token, Run run) {
            this.device = device;
            this.classId = classId;
            this.token = token;
            this.run = run;
        }

        @Override public Integer call() throws Exception {
            long every = DEVICES * 1_000_000_000L / TAPS_A_SECOND;
            long begin = System.nanoTime() + device * every / DEVICES;
            int taps = 0;
            for (long due = begin; due - begin < LASTS.toNanos(); due += every) {
                LockSupport.parkNanos(due - System.nanoTime());
                tap(taps++, due);
            }
            return taps;
        }

        private void tap(int number, long dueNanos) throws IOException, InterruptedException {
            int seat = 1 + device + number / 5 % (SEATS / DEVICES) * DEVICES;
            ObjectNode command = Json.object().put("commandId", "t-" + device + "-" + number);
            switch (number % 5) {
                case 0 -> command.put("type", "finish-step").put("seat", seat).put("step", "welcome");
                case 1 -> command.put("type", "undo").put("seq", lastSeq);
                case 2 -> command.put("type", "pause").put("seat", seat);
                case 3 -> command.put("type", "resume").put("seat", seat);
                default -> command.put("type", "note").put("text", run.name + " " + device + " " + number);
            }
            lastSeq = ask("/api/classes/" + classId + "/commands", token, command).get("seq").longValue();
            long now = System.nanoTime();
            run.acknowledged.recordValue((now - dueNanos) / 1000);
            assertThat(run.acknowledgedNanos.put(lastSeq, now)).as("acknowledged before: " + lastSeq).isNull();
        }
    }

    /** What one run under load showed. Microseconds. */
    private static final class Run {
        private final String name;
        private final Histogram acknowledged = new ConcurrentHistogram(3);
        private final Histogram shown = new Histogram(3);
        private final Map<Long, Long> acknowledgedNanos = new ConcurrentHashMap<>();

        Run(String name) {
            this.name = name;
        }

        void heardBy(LoadScreen screen) {
            acknowledgedNanos.forEach((seq, at) ->
                    shown.recordValue(Math.max(0, screen.heardNanos(seq) - at) / 1000));
        }

        @Override public String toString() {
            return String.format(Locale.ROOT, "%s: %d taps, acknowledged p50 %.1f ms, p99 %.1f ms, longest %.1f ms; "
                    + "shown p50 %.1f ms, p99 %.1f ms after", name, acknowledged.getTotalCount(),
                    ms(acknowledged, 50), ms(acknowledged, 99), ms(acknowledged, 100), ms(shown, 50), ms(shown, 99));
        }

        private static double ms(Histogram histogram, double percentile) {
            return histogram.getValueAtPercentile(percentile) / 1000.0;
        }
    }

    private Run run(String name, int stalled) throws Exception {
        List<String> tokens = new ArrayList<>();
        for (int i = 0; i < DEVICES; i++) {
            tokens.add(paired());
        }
        String token = tokens.get(0);
        String id = ask("/api/classes", token, Json.object().put("planId", "big-table").put("seats", SEATS))
                .get("id").textValue();
        ask("/api/classes/" + id + "/commands", token, Json.object().put("commandId", "begin")
                .put("type", "open-step").put("step", "welcome"));
        List<LoadScreen> screens = new ArrayList<>();
        List<LoadScreen> asleep = new ArrayList<>();
        for (int i = 0; i < SCREENS; i++) {
            String path = "/classes/" + id + (i % 4 == 0 ? "/wall/stream" : i % 4 == 1 ? "/helper/stream"
                    : "/instructor/stream");
            screens.add(LoadScreen.reading(program.port(), path, token));
        }
        for (int i = 0; i < stalled; i++) {
            asleep.add(LoadScreen.stalled(program.port(), "/classes/" + id + "/instructor/stream", token));
        }
        await().atMost(PATIENCE).until(() -> screens.stream().allMatch(s -> s.seq() == 2));
        Footprint before = Footprint.of(program.pid());

        Run run = new Run(name);
        int taps = tapping(id, tokens, run);

        long last = 2 + taps;
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(screens)
                .allMatch(s -> s.seq() == last && s.whole() == last));
        assertThat(run.acknowledgedNanos.keySet()).as("acknowledged, each with a number of its own")
                .containsExactlyInAnyOrderElementsOf(LongStream.rangeClosed(3, last).boxed().toList());
        assertThat(recorded(id, token)).as("recorded, in order, nothing twice")
                .containsExactlyElementsOf(LongStream.rangeClosed(1, last).boxed().toList());
        screens.forEach(run::heardBy);
        System.out.println(run);
        Footprint after = Footprint.of(program.pid());
        System.out.printf("  before: %s; after: %s; processor %d ms a tap, for all screens together%n", before, after,
                (after.busyMillis() - before.busyMillis()) / taps);
        for (LoadScreen screen : screens) {
            screen.close();
        }
        for (LoadScreen screen : asleep) {
            screen.close();
        }
        return run;
    }

    private int tapping(String id, List<String> tokens, Run run) throws Exception {
        ExecutorService devices = Executors.newFixedThreadPool(DEVICES);
        try {
            List<Tapping> all = new ArrayList<>();
            for (int i = 0; i < DEVICES; i++) {
                all.add(new Tapping(i, id, tokens.get(i), run));
            }
            int taps = 0;
            for (Future<Integer> device : devices.invokeAll(all)) {
                taps += device.get();
            }
            return taps;
        } finally {
            devices.shutdownNow();
        }
    }

    private List<Long> recorded(String id, String token) throws IOException, InterruptedException {
        HttpResponse<String> events = client.send(HttpRequest.newBuilder(
                program.uri("/api/classes/" + id + "/events?after=0")).header("Authorization", "Bearer " + token)
                .build(), HttpResponse.BodyHandlers.ofString());
        List<Long> numbers = new ArrayList<>();
        for (String line : events.body().lines().filter(l -> !l.isBlank()).toList()) {
            numbers.add(Json.read(line).get("seq").longValue());
        }
        return numbers;
    }

    @Test void nothing_is_lost_or_counted_twice_and_every_screen_ends_at_the_last_tap() throws Exception {
        try (Program served = Program.serve(data, 0, PIN)) {
            program = served;
            Run awake = run("forty screens that read", 0);
            Run asleep = run("and " + STALLED + " that do not", STALLED);
            System.out.printf(Locale.ROOT, "p99 until a screen that reads knows of a tap, with screens that do not "
                    + "over without: %.2f%n", Run.ms(asleep.shown, 99) / Run.ms(awake.shown, 99));
        }
    }
}

package benchpace.web;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Days of classes on a clock that runs as fast as the taps do: {@code -Drounds=N} rounds of three whole classes, one a
 * room; else one round of one. What the board takes after the last is what it took after the first, but for the record
 * of the classes themselves.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DayOfClassesTest {
    private static final int ROUNDS = Integer.getInteger("rounds", 1);
    private static final int ROOMS = System.getProperty("rounds") == null ? 1 : 3;
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    /** The events of a class, its fold and its last view: far below what a leaked screen or thread would hold. */
    private static final long BYTES_OF_A_CLASS = 3 * 1024 * 1024;

    @TempDir Path data;

    private record Taken(long heapBytes, int threads, long handles) {
        static Taken now() throws IOException {
            System.gc();
            try (Stream<Path> handles = open()) {
                return new Taken(ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed(),
                        (int) Thread.getAllStackTraces().keySet().stream()
                                .filter(t -> t.getName().startsWith("screen-")).count(), handles.count());
            }
        }

        private static Stream<Path> open() throws IOException {
            Path own = Path.of("/proc/self/fd");
            return Files.exists(own) ? Files.list(own) : Stream.empty();
        }
    }

    /** From the first step to the last, with two screens of each kind open all the while. */
    private static void classesInEveryRoom(TestBoard board) throws IOException {
        List<String> ids = new ArrayList<>();
        List<Stranger> screens = new ArrayList<>();
        for (int room = 0; room < ROOMS; room++) {
            String id = board.evening();
            ids.add(id);
            for (String kind : List.of("instructor", "helper", "wall", "instructor", "helper", "wall")) {
                Stranger screen = new Stranger(board, "127.0.0.1").says("GET /classes/" + id + "/" + kind
                        + "/stream HTTP/1.1\nHost: localhost\nAuthorization: Bearer " + board.instructor() + "\n\n");
                screen.hearsUntil("event: state");
                screens.add(screen);
            }
        }
        for (JsonNode step : board.state(ids.get(0)).json().get("steps")) {
            for (String id : ids) {
                through(board, id, step);
            }
        }
        for (String id : ids) {
            assertThat(board.state(id).json().get("seats").get(0).get("finished").size()).isGreaterThan(6);
            board.tap(id, command("close")).ok();
        }
        for (Stranger screen : screens) {
            screen.close();
        }
        await().atMost(PATIENCE).until(() -> board.get("/health", "").json().get("screens").intValue() == 0);
    }

    private static void through(TestBoard board, String id, JsonNode step) {
        String name = step.get("id").textValue();
        if (step.get("opening").textValue().equals("led")) {
            board.tap(id, opening(name)).ok();
        }
        for (int seat = 1; seat <= 8; seat++) {
            board.testClock().advance(Duration.ofSeconds(20));
            board.tap(id, finish(seat, name));
        }
        board.testClock().advanceMinutes(name.equals("centre") ? 60 : 2);
    }

    @Test void what_the_board_takes_stays_the_same_over_days_of_classes() throws IOException {
        try (TestBoard board = TestBoard.open(data)) {
            classesInEveryRoom(board);
            Taken first = Taken.now();
            for (int round = 0; round < ROUNDS; round++) {
                classesInEveryRoom(board);
            }
            Taken last = Taken.now();

            System.out.println("after " + ROOMS + ": " + first + "; after " + ROOMS * (1 + ROUNDS) + ": " + last);
            assertThat(last.threads()).as("screens' threads").isEqualTo(first.threads()).isZero();
            assertThat(last.handles()).isLessThan(first.handles() + 10);
            assertThat(last.heapBytes() - first.heapBytes()).isLessThan(ROUNDS * ROOMS * BYTES_OF_A_CLASS);
        }
    }
}

package benchpace.web.stream;

import static benchpace.web.TestBoard.command;
import static benchpace.web.TestBoard.finish;
import static benchpace.web.TestBoard.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.web.TestBoard;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a wall that nobody does anything on costs a network in an hour: every byte that comes by its one connection,
 * with the headers of the answer and the lengths of its chunks, as browsers ask for it. An hour is played on a board
 * whose clock is moved and which never beats; the usual beats are added as they come unpacked.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class IdleWallTest {
    private static final long MOST_AN_HOUR = 100_000;
    /** With the length of its chunk, and a time of the board to the nanosecond. */
    private static final long BEAT = 70;
    private static final StreamLimits SILENT = new StreamLimits(Duration.ofHours(2), Duration.ofHours(3), 60, 40, 40);
    private static final Duration HOUR = Duration.ofHours(1);
    /** Longer than views are held together. */
    private static final Duration A_MOMENT = Duration.ofMillis(200);

    @TempDir Path data;
    private TestBoard board;

    @BeforeEach void open() {
        board = TestBoard.open(data, SILENT);
    }

    @AfterEach void close() {
        board.close();
    }

    @Test void before_the_class() throws Exception {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":24,\"startsAt\":\""
                + board.testClock().instant().plus(Duration.ofMinutes(90)) + "\"}");

        assertThat(hourOf("/classes/" + id + "/wall/stream", () -> board.tap(id, opening("welcome")).ok()))
                .isLessThan(MOST_AN_HOUR);
    }

    @Test void while_candles_set() throws Exception {
        String id = poured(24);

        assertThat(hourOf("/classes/" + id + "/wall/stream", () -> board.tap(id, command("close")).ok()))
                .isLessThan(MOST_AN_HOUR);
    }

    @Test void after_the_class() throws Exception {
        String id = poured(8);
        board.tap(id, command("close")).ok();

        assertThat(hourOf("/classes/" + id + "/wall/stream",
                () -> board.tap(id, command("judge-set").put("seat", 1)).ok())).isLessThan(MOST_AN_HOUR);
    }

    /** Here a stream looks with each beat which class is meant: each is heard, and as many counted as in an hour. */
    @Test void between_two_classes() throws Exception {
        board.close();
        board = TestBoard.open(data, new StreamLimits(A_MOMENT, Duration.ofSeconds(20), 60, 40, 40));
        try (Heard wall = new Heard(board, "/api/shown/stream", "identity")) {
            await().until(() -> wall.beats() > 0);
            int from = wall.beats();
            long before = wall.bytes();
            for (int minute = 1; minute <= 20; minute++) {
                int heard = wall.beats();
                board.testClock().advanceMinutes(1);
                await().until(() -> wall.beats() > heard);
            }
            long each = (wall.bytes() - before) / (wall.beats() - from - 1);
            assertThat(before + each * HOUR.dividedBy(StreamLimits.USUAL.beat())).isLessThan(MOST_AN_HOUR);

            assertThat(wall.text().split("event: (?!beat)", -1)).as("told what is meant, once").hasSize(2);
            board.create("{\"planId\":\"evening-pour\",\"seats\":3}");
            await().until(() -> wall.text().split("event: (?!beat)", -1).length > 2);
        }
    }

    private String poured(int seats) {
        String id = board.create("{\"planId\":\"evening-pour\",\"seats\":" + seats + "}");
        for (String step : new String[] {"wicks", "fragrance", "mix", "pour"}) {
            board.tap(id, opening(step)).ok();
            board.testClock().advanceMinutes(10);
        }
        for (int seat = 1; seat <= seats; seat++) {
            board.tap(id, finish(seat, "pour")).ok();
        }
        return id;
    }

    @Test void a_beat_is_short() throws Exception {
        board.close();
        board = TestBoard.open(data, new StreamLimits(A_MOMENT, Duration.ofSeconds(20), 60, 40, 40));
        try (Heard wall = new Heard(board, "/api/shown/stream", "identity")) {
            await().until(() -> wall.beats() > 2);
            String[] beats = wall.text().split("(?=\r\n[0-9A-Fa-f]+\r\nevent: beat\n)");
            long nanoseconds = 10;
            assertThat(beats[2].length() + nanoseconds).isLessThanOrEqualTo(BEAT);
        }
    }

    /**
     * An hour in which nobody taps.
     *
     * @param after what the wall has to be told of next, so that an hour in which nothing is counted is no small one
     * @return its bytes
     */
    private long hourOf(String stream, Runnable after) throws IOException {
        try (Heard wall = new Heard(board, stream, "gzip, deflate")) {
            await().until(() -> wall.bytes() > 500);
            for (Duration passed = Duration.ZERO; passed.compareTo(HOUR) < 0; passed = passed.plusMinutes(1)) {
                board.testClock().advanceMinutes(1);
                long before = -1;
                while (before != wall.bytes()) { // what changes with the minute is told in a few parts
                    before = wall.bytes();
                    board.boards().all().forEach(each -> each.subscribe().close()); // it looks at its clock
                    await().pollDelay(A_MOMENT).until(() -> true);
                }
            }
            long told = wall.bytes();
            after.run();
            await().until(() -> wall.bytes() > told);
            long beats = HOUR.dividedBy(StreamLimits.USUAL.beat()) * BEAT;
            System.out.printf("an hour of %-28s %6d bytes: told %6d, beats %d%n",
                    stream.replaceAll("/classes/[^/]+", "/classes/..."), told + beats, told, beats);
            return told + beats;
        }
    }

    /** Whatever comes by a connection that asked for one stream. */
    private static final class Heard implements AutoCloseable {
        private final Socket socket;
        private final ByteArrayOutputStream all = new ByteArrayOutputStream();

        Heard(TestBoard board, String path, String codings) throws IOException {
            socket = new Socket("127.0.0.1", board.port());
            socket.getOutputStream().write(("GET " + path + " HTTP/1.1\r\nHost: localhost\r\n"
                    + "Accept: text/event-stream\r\nAccept-Encoding: " + codings + "\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            Thread reader = new Thread(this::read, "idle-wall");
            reader.setDaemon(true);
            reader.start();
        }

        private void read() {
            byte[] buffer = new byte[8192];
            try {
                InputStream in = socket.getInputStream();
                for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                    synchronized (all) {
                        all.write(buffer, 0, n);
                    }
                }
            } catch (IOException closed) {
                // by the test
            }
        }

        int beats() {
            return text().split("event: beat\n", -1).length - 1;
        }

        String text() {
            synchronized (all) {
                return all.toString(StandardCharsets.UTF_8);
            }
        }

        long bytes() {
            synchronized (all) {
                return all.size();
            }
        }

        @Override public void close() throws IOException {
            socket.close();
        }
    }
}

package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A board is killed in the middle of its work, again and again, by a signal it cannot catch (POSIX SIGKILL). What it
 * had acknowledged is there afterwards, once, and the class goes on from it. {@code -Dkills=N} asks for more rounds.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 50);

    @TempDir Path folder;
    private final Map<String, Long> acknowledged = new HashMap<>();

    @Test void no_acknowledged_tap_is_lost_or_doubled_by_kill_nine() throws Exception {
        Random random = new Random(20270304);
        int resent = 0;
        for (int round = 1; round <= KILLS; round++) {
            resent += runAndKill(2 + random.nextInt(7), random.nextInt(3_000_000));
            checkStore("after kill " + round);
        }
        assertThat(acknowledged).hasSizeGreaterThan(KILLS);
        assertThat(resent).as("rounds that began with a command sent before").isEqualTo(KILLS - 1);
    }

    /**
     * Lets a board acknowledge some commands, then kills it a random moment later.
     *
     * @return 1 if it began by sending again what the last one had sent without being told what became of it
     */
    private int runAndKill(int acknowledgements, int thenNanos) throws Exception {
        Process board = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-cp", System.getProperty("java.class.path"), TappingBoard.class.getName(), folder.toString())
                .redirectError(folder.resolve("errors.txt").toFile()).start();
        int resent = 0;
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(board.getInputStream(), StandardCharsets.UTF_8))) {
            for (int acks = 0; acks < acknowledgements; ) {
                String line = lines.readLine();
                assertThat(line).as(() -> "the board stopped by itself: " + errors()).isNotNull();
                resent += line.startsWith("again ") ? 1 : 0;
                acks += hear(line) ? 1 : 0;
            }
            spin(thenNanos);
            board.toHandle().destroyForcibly();   // unlike that of Process, leaves its output open
            // whatever it said before it died was said
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                hear(line);
            }
        } finally {
            board.destroyForcibly().waitFor();
        }
        assertThat(errors()).isEmpty();
        return resent;
    }

    private String errors() {
        try {
            return Files.readString(folder.resolve("errors.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** Moves the kill to any point of the board's next append; nothing is judged by it. */
    private static void spin(int nanos) {
        long end = System.nanoTime() + nanos;
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    /** @return whether a whole acknowledgement was heard */
    private boolean hear(String line) {
        String[] words = line.split(" ");
        if (!words[0].equals("ack") || words.length != 4) {
            return false;   // the last line may have been cut by the kill: its closing word is then missing
        }
        Long before = acknowledged.put(words[1], Long.valueOf(words[2]));
        assertThat(before).as("an earlier number of " + words[1]).isIn(null, Long.valueOf(words[2]));
        return true;
    }

    private void checkStore(String when) {
        try (Database database = Database.open(folder)) {
            List<Recorded> events = new SqliteEventLog(database).read(TappingBoard.CLASS_ID);

            assertThat(events).as(when).extracting(Recorded::seq)
                    .containsExactlyElementsOf(LongStream.rangeClosed(1, events.size()).boxed().toList());
            // clients number their taps, and send one again until they are told: each must count, once, in order
            assertThat(events).as(when).extracting(Recorded::commandId)
                    .containsExactlyElementsOf(LongStream.range(0, events.size())
                            .mapToObj(n -> n == 0 ? "command-1" : "tap-" + n).toList());
            Map<String, Long> stored = events.stream()
                    .collect(Collectors.toMap(Recorded::commandId, Recorded::seq));
            assertThat(stored).as(when).containsAllEntriesOf(acknowledged);
            assertThat(LiveClass.of(events).seq()).as(when).isEqualTo(events.size());
            assertThat(events.size() - acknowledged.size()).as("events nobody was told of, " + when)
                    .isBetween(0, 1);
        }
    }
}

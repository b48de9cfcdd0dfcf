package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.LiveClass;
import benchpace.shelf.Shelf;
import benchpace.store.sqlite.Database;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A board is killed in the middle of its work, again and again, by a signal it cannot catch (POSIX SIGKILL). What it
 * had acknowledged is there afterwards, once, and the board goes on from it. {@code -Dkills=N} asks for more rounds.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class KillTest {
    private static final int KILLS = Integer.getInteger("kills", 50);

    @TempDir Path folder;
    @TempDir Path elsewhere;
    /** The number of the last deed that the board said was done; -1 before the first. */
    private int acknowledged = -1;
    /** How many deeds were done where nobody kills. */
    private int done;

    /** The same deeds where nobody kills: row by row the killed store holds what was acknowledged, or one deed more. */
    @Test void nothing_that_was_acknowledged_is_lost_or_doubled_by_kill_nine() throws Exception {
        Random random = new Random(20270304);
        int resent = 0;
        int unacknowledged = 0;
        try (Database model = Database.open(elsewhere)) {
            Deeds deeds = new Deeds(model);
            for (int round = 1; round <= KILLS; round++) {
                resent += runAndKill(2 + random.nextInt(9), random.nextInt(3_000_000));
                unacknowledged += checkStore(model, deeds, "after kill " + round) ? 1 : 0;
            }
        }
        assertThat(acknowledged).isGreaterThan(KILLS);
        assertThat(resent).as("rounds that began with a deed tried before").isEqualTo(KILLS - 1);
        System.out.printf("%d kills, %d deeds, %d of them done and not told before a kill%n", KILLS, acknowledged + 1,
                unacknowledged);
    }

    /**
     * Lets a board acknowledge some deeds, then kills it a random moment later.
     *
     * @return 1 if it began by doing again what the last one had tried without saying what became of it
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

    /** Moves the kill to any point of the board's next deed; nothing is judged by it. */
    private static void spin(int nanos) {
        long end = System.nanoTime() + nanos;
        while (System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    /** @return whether a whole acknowledgement was heard */
    private boolean hear(String line) {
        String[] words = line.split(" ");
        if (!words[0].equals("ack") || words.length != 3) {
            return false;   // the last line may have been cut by the kill: its closing word is then missing
        }
        assertThat(Integer.parseInt(words[1])).isIn(acknowledged, acknowledged + 1);
        acknowledged = Integer.parseInt(words[1]);
        return true;
    }

    /** @return whether the store holds one deed that nobody was told of */
    private boolean checkStore(Database model, Deeds deeds, String when) {
        while (done <= acknowledged) {
            deeds.doThe(done++);
        }
        try (Database database = Database.open(folder)) {
            // a record cut off by the kill was not acknowledged; it may be told, and nothing else may
            assertThat(database.told()).as(when).allSatisfy(t -> assertThat(t).contains("last record", "is left out"));
            assertReadable(database, when);
            List<String> rows = Deeds.rows(database);
            boolean more = !rows.equals(Deeds.rows(model)) && done == acknowledged + 1;
            if (more) {
                deeds.doThe(done++);
            }
            assertThat(rows).as(when).isEqualTo(Deeds.rows(model));
            return more;
        }
    }

    private static void assertReadable(Database database, String when) {
        SqliteEventLog log = new SqliteEventLog(database);
        for (String id : log.classIds()) {
            assertThat(LiveClass.of(log.read(id)).seq()).as(when).isPositive();
        }
        ShelfLog.Content shelf = new ShelfLog(database).read();
        assertThat(shelf.unreadable()).as(when).isEmpty();
        assertThat(Shelf.of(shelf.events()).entries()).as(when).hasSize((int) shelf.events().stream()
                .map(e -> e.entry().value()).distinct().count());
    }
}

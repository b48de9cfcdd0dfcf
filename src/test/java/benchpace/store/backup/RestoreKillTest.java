package benchpace.store.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A restoring is killed in the middle, again and again, by a signal it cannot catch (POSIX SIGKILL): the folder holds
 * the old data or the new, whole, and what was replaced is kept whole. {@code -Dkills=N} asks for more rounds.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RestoreKillTest {
    private static final int KILLS = Integer.getInteger("kills", 12);

    @TempDir Path temp;
    private int begun;
    private int done;

    @Test void a_kill_leaves_the_old_or_the_new_and_never_half_of_one() throws Exception {
        Path folder = StoredFolder.filled(temp.resolve("data"), 40);
        List<List<String>> states = List.of(StoredFolder.rows(folder), backupOf("one", 60), backupOf("two", 80));
        Random random = new Random(20270306);
        int between = 0;
        for (int round = 1; round <= KILLS; round++) {
            begun = done;
            runAndKill(folder, 1 + random.nextInt(4), random.nextInt(60_000_000));
            between += Files.exists(folder.resolve("restored.db")) || Files.exists(folder.resolve("replacing")) ? 1 : 0;

            int there = states.indexOf(StoredFolder.rows(folder));

            assertThat(there).as("kill %d, after %d was begun and %d done", round, begun, done).isIn(begun, done);
            assertThat(StoredFolder.names(folder)).as("kill %d", round)
                    .allMatch(name -> name.matches("benchpace\\.(db|lock)|replaced-\\d+"));
            assertKeptWhole(folder, states);
            done = there;
        }
        System.out.printf("%d kills, %d of them between the moves%n", KILLS, between);
    }

    private List<String> backupOf(String name, int deeds) {
        Path data = StoredFolder.filled(temp.resolve(name), deeds);
        new Backup(data, "0.1.0").make(temp.resolve(name + ".backup"), false, Instant.parse("2027-03-05T09:00:00Z"),
                Progress.UNHEARD);
        return StoredFolder.rows(data);
    }

    /** Lets it restore so often, then kills it a random moment later. */
    private void runAndKill(Path folder, int times, int thenNanos) throws Exception {
        Process board = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), RestoringBoard.class.getName(), folder.toString(),
                temp.resolve("one.backup").toString(), temp.resolve("two.backup").toString())
                .redirectError(temp.resolve("errors.txt").toFile()).start();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(board.getInputStream(), StandardCharsets.US_ASCII))) {
            for (int heard = 0; heard < times;) {
                String line = lines.readLine();
                assertThat(line).as(() -> "it stopped by itself: " + errors()).isNotNull();
                heard += hear(line) ? 1 : 0;
            }
            long end = System.nanoTime() + thenNanos;
            while (System.nanoTime() < end) {
                Thread.onSpinWait();
            }
            board.toHandle().destroyForcibly(); // unlike that of Process, leaves its output open
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                hear(line);
            }
        } finally {
            board.destroyForcibly().waitFor();
        }
        assertThat(errors()).isEmpty();
    }

    private String errors() {
        try {
            return Files.readString(temp.resolve("errors.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** @return whether one was done; the last line may have been cut by the kill */
    private boolean hear(String line) {
        String[] words = line.split(" ");
        if (words.length != 3) {
            return false;
        }
        int which = Integer.parseInt(words[1]);
        if (words[0].equals("begin")) {
            begun = which;
            return false;
        }
        done = which;
        return true;
    }

    private static void assertKeptWhole(Path folder, List<List<String>> states) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path kept : all.filter(file -> file.getFileName().toString().startsWith("replaced-")).toList()) {
                assertThat(states).contains(StoredFolder.rows(kept));
                try (Stream<Path> files = Files.walk(kept)) {
                    for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(file);
                    }
                }
            }
        }
    }
}

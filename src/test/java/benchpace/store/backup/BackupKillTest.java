package benchpace.store.backup;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.sqlite.DraftingProgram;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A backup is killed in the middle, again and again, by a signal it cannot catch (POSIX SIGKILL): the one before stays
 * whole, what was begun is told by its name, and the next one takes it away, but nothing that another process is making
 * just then. {@code -Dkills=N} asks for more rounds.
 */
class BackupKillTest extends BackedUp {
    private static final int KILLS = Integer.getInteger("kills", 8);

    @Test void a_kill_leaves_the_one_before_whole_and_the_next_one_sweeps_what_was_begun() throws Exception {
        Path data = data();
        Path disk = Files.createDirectory(temp.resolve("disk"));
        Path target = disk.resolve("b.backup");
        Random random = new Random(20270307);
        int begun = 0;
        try (DraftingProgram living = DraftingProgram.started(disk)) {
            String its = living.draft().getParent().getFileName().toString();
            for (int round = 1; round <= KILLS; round++) {
                runAndKill(data, target, random.nextInt(100_000_000));

                BackupFile.check(target, Progress.UNHEARD);
                assertThat(StoredFolder.names(disk)).as("kill %d", round)
                        .allMatch(name -> name.matches("b\\.backup|benchpace-.{36}\\.part"));
                begun += StoredFolder.names(disk).size() - 2;
                new Backup(data, "0.1.0").make(target, true, NOW, Progress.UNHEARD);
                assertThat(StoredFolder.names(disk)).as("kill %d", round).containsExactly("b.backup", its);
                assertThat(living.draft()).hasContent("half");
            }
        }
        assertThat(begun).as("kills in the middle").isPositive();
        System.out.printf("%d kills, %d of them in the middle of a backup%n", KILLS, begun);
    }

    /** Lets it make one, then kills it a random moment later. */
    private void runAndKill(Path data, Path target, int thenNanos) throws Exception {
        Path errors = temp.resolve("errors.txt");
        Process program = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), CopyingProgram.class.getName(), data.toString(),
                target.toString()).redirectError(errors.toFile()).start();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(program.getInputStream(), StandardCharsets.US_ASCII))) {
            assertThat(lines.readLine()).as(() -> "it stopped by itself: " + errors).isEqualTo("done");
            long end = System.nanoTime() + thenNanos;
            while (System.nanoTime() < end) {
                Thread.onSpinWait();
            }
        } finally {
            program.destroyForcibly().waitFor();
        }
        assertThat(errors).isEmptyFile();
    }
}

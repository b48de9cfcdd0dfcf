package benchpace.board.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.plan.PlanFile;
import benchpace.store.sqlite.Database;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program is killed while plans are saved (POSIX SIGKILL): every version that was said to be saved is there, whole,
 * and the plan's file holds the old plan or the new one. {@code -Dkills=N} asks for more rounds.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlansKilledTest {
    private static final int KILLS = Integer.getInteger("kills", 12);

    @TempDir Path folder;

    @Test void nothing_that_was_saved_is_lost_and_nothing_is_half_saved() throws Exception {
        Random random = new Random(20270304);
        int saved = 0;
        for (int round = 1; round <= KILLS; round++) {
            saved = Math.max(saved, runAndKill(1 + random.nextInt(8), random.nextInt(9_000_000)));
            check(saved, "after kill " + round);
        }
        assertThat(saved).isGreaterThan(KILLS);
    }

    /** @return the last version that was said to be saved */
    private int runAndKill(int versions, int thenNanos) throws Exception {
        Process book = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), SavingBook.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        int saved = 0;
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(book.getInputStream(), StandardCharsets.UTF_8))) {
            int heard = 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.endsWith(" .")) {
                    saved = Integer.parseInt(line.split(" ")[1]);
                    heard++;
                }
                if (heard == versions) {
                    long end = System.nanoTime() + thenNanos;
                    while (System.nanoTime() < end) {
                        Thread.onSpinWait();
                    }
                    book.toHandle().destroyForcibly();
                }
            }
        } finally {
            book.destroyForcibly().waitFor();
        }
        return saved;
    }

    private void check(int saved, String when) throws Exception {
        Path file = folder.resolve("plans/tins.json");
        assertThat(PlanFile.read(file).problems()).as(when + ", the file before it is looked at").isEmpty();
        try (Database database = Database.open(folder)) {
            PlanBook book = SavingBook.open(database, folder);

            BookPlan newest = book.find("tins").orElseThrow();
            assertThat(newest.version()).as(when).isIn(saved, saved + 1);
            assertThat(newest.plan()).as(when).isEqualTo(SavingBook.plan(newest.version()));
            assertThat(book.versions("tins")).as(when).hasSize(newest.version())
                    .allSatisfy(v -> assertThat(v.plan()).contains(SavingBook.plan(v.number())));
            assertThat(PlanFile.read(file).ifSound()).as(when).contains(newest.plan());
            try (Stream<Path> files = Files.list(folder.resolve("plans"))) {
                assertThat(files.map(f -> f.getFileName().toString())).as(when).containsExactly("tins.json");
            }
            assertThat(book.troubles()).as(when).isEmpty();
        }
    }
}

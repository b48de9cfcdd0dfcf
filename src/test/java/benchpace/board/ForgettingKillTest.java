package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.Remnants;
import benchpace.store.sqlite.Database;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A board is killed while it forgets guests, by a signal it cannot catch (POSIX SIGKILL): while it writes, while the
 * file is rewritten, while its log is emptied. What was told to be gone is in no byte; what was not told is done by the
 * next start or was never begun. {@code -Dkills=N} asks for more rounds.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ForgettingKillTest {
    private static final int KILLS = Integer.getInteger("kills", 8);
    private static final int FILLING = 3 << 20;

    @TempDir Path temp;
    private final List<Integer> begun = new ArrayList<>();
    private final List<Integer> done = new ArrayList<>();
    private int halfway;

    @Test void guests_are_forgotten_whole_or_not_at_all_and_what_is_told_is_so() throws Exception {
        Path filled = temp.resolve("filled");
        ForgettingBoard.fill(filled, FILLING);
        long whole = forgetAndKill(copyOf(filled, "unkilled"), Long.MAX_VALUE);
        assertThat(done).as("where nobody kills").hasSize(ForgettingBoard.CLASSES);
        assertThat(begun).hasSize(ForgettingBoard.CLASSES);
        check(temp.resolve("unkilled"), "where nobody kills");
        Random random = new Random(20270307);
        for (int round = 1; round <= KILLS; round++) {
            Path folder = copyOf(filled, "kill-" + round);
            forgetAndKill(folder, random.nextLong(whole));
            check(folder, "kill " + round);
        }
        System.out.printf("%d kills in %d ms, %d of them after a class was forgotten and before that was told%n", KILLS,
                whole / 1_000_000, halfway);
    }

    private Path copyOf(Path filled, String name) throws IOException {
        Path folder = Files.createDirectory(temp.resolve(name));
        Files.copy(filled.resolve(Database.FILE), folder.resolve(Database.FILE));
        return folder;
    }

    /** @param nanos after it began with the first class @return how long it took, if it was left alone */
    private long forgetAndKill(Path folder, long nanos) throws Exception {
        begun.clear();
        done.clear();
        Process board = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), ForgettingBoard.class.getName(), folder.toString())
                .redirectError(temp.resolve("errors.txt").toFile()).start();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(board.getInputStream(), StandardCharsets.US_ASCII))) {
            hear(lines.readLine());
            assertThat(begun).as(() -> "it stopped by itself: " + errors()).hasSize(1);
            long began = System.nanoTime();
            if (nanos < Long.MAX_VALUE) {
                while (System.nanoTime() - began < nanos) {
                    Thread.onSpinWait();
                }
                board.toHandle().destroyForcibly(); // unlike that of Process, leaves its output open
            }
            long ended = began;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                ended = hear(line) ? System.nanoTime() : ended;
            }
            return ended - began;
        } finally {
            board.destroyForcibly().waitFor();
        }
    }

    private String errors() {
        try {
            return Files.readString(temp.resolve("errors.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** @return whether one was told to be done; the last line may have been cut by the kill */
    private boolean hear(String line) {
        String[] words = line == null ? new String[0] : line.split(" ");
        if (words.length == 2 && words[0].equals("begin")) {
            begun.add(Integer.valueOf(words[1]));
        }
        boolean told = words.length == 4 && words[0].equals("done");
        if (told) {
            assertThat(words[2]).as("the file is small and nobody reads it").isEqualTo("true");
            done.add(Integer.valueOf(words[1]));
        }
        return told;
    }

    private void check(Path folder, String when) {
        assertThat(Remnants.of(folder, words(done))).as(when + ", as the kill left the files").isEmpty();
        List<Integer> forgotten = new ArrayList<>();
        try (ForgettingBoard board = ForgettingBoard.open(folder)) {
            for (int n = 0; n < ForgettingBoard.CLASSES; n++) {
                boolean gone = board.of(n).forgotten().isPresent();
                assertThat(board.told(n)).as("%s: events of class %d with its guest's name", when, n)
                        .isEqualTo(gone ? 0 : 3);
                if (gone) {
                    forgotten.add(n);
                }
            }
            board.erasing().close(); // once, as at every start
        }
        assertThat(forgotten).as(when).containsAll(done);
        assertThat(begun).as(when).containsAll(forgotten);
        halfway += forgotten.size() > done.size() ? 1 : 0;
        assertThat(Remnants.of(folder, words(forgotten))).as(when + ", after a start").isEmpty();
        List<Integer> others = IntStream.range(0, ForgettingBoard.CLASSES).boxed()
                .filter(n -> !forgotten.contains(n)).toList();
        try (ForgettingBoard board = ForgettingBoard.open(folder)) {
            others.forEach(n -> assertThat(board.told(n)).as(when).isEqualTo(3));
            assertThat(board.shelf.shelf().entries()).as(when + ": candles that keep their words")
                    .filteredOn(candle -> !candle.erased()).hasSize(others.size());
        }
    }

    private static List<String> words(List<Integer> classes) {
        return classes.stream().map(ForgettingBoard::word).toList();
    }
}

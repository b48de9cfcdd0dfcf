package benchpace.store.backup;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to the bytes of a backup on its way. {@code -Dflips=N} asks for more rounds. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DamagedBackupTest {
    private static final int FLIPS = Integer.getInteger("flips", 120);

    @TempDir Path temp;

    @Test void bytes_flipped_anywhere_are_told_or_change_nothing_and_never_raise_a_trace() throws IOException {
        Path data = StoredFolder.filled(temp.resolve("data"));
        List<String> original = StoredFolder.rows(data);
        Path backup = temp.resolve("b.backup");
        new Backup(data, "0.1.0").make(backup, false, Instant.parse("2027-03-05T09:00:00Z"), Progress.UNHEARD);
        byte[] whole = Files.readAllBytes(backup);
        Random random = new Random(20270305);
        int refused = 0;
        for (int round = 0; round < FLIPS; round++) {
            Files.write(backup, damaged(whole, round, random));
            Path folder = temp.resolve("new" + round);
            try {
                new Restore(folder).from(backup, false, Progress.UNHEARD);
                assertThat(StoredFolder.rows(folder)).as("round %d", round).isEqualTo(original);
            } catch (StoreException told) {
                refused++;
                assertThat(told.getMessage()).as("round %d", round).startsWith("The ").endsWith(".")
                        .doesNotContain("SQLITE", "Exception", "restoring.db");
                assertThat(folder).doesNotExist();
            }
        }
        assertThat(refused).as("what was found").isBetween(FLIPS / 2, FLIPS - 1);
        System.out.printf("%d of %d damaged backups refused, the others restored equal%n", refused, FLIPS);
    }

    /**
     * A few bits where something is written, mostly, as the room that pages have left says nothing; anywhere in the
     * header every fourth time, anywhere at all as often; or a stretch of zeros.
     */
    private static byte[] damaged(byte[] whole, int round, Random random) {
        byte[] bytes = whole.clone();
        int within = round % 4 == 0 ? 100 : bytes.length;
        if (round % 7 == 6) {
            int from = random.nextInt(bytes.length);
            Arrays.fill(bytes, from, Math.min(bytes.length, from + 1 + random.nextInt(9000)), (byte) 0);
            return bytes;
        }
        for (int flips = 0; flips < 1 + round % 3; flips++) {
            int at = random.nextInt(within);
            while (round % 4 != 0 && round % 4 != 1 && whole[at] == 0) {
                at = random.nextInt(within);
            }
            bytes[at] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }
}

package benchpace.store;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Leftovers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A computer that loses its power every day, in the middle of a record. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LeftoversTest {
    @TempDir Path folder;

    /** Records beside a file that is empty: SQLite would delete them without a word. */
    private String look(String records) throws IOException {
        Path file = folder.resolve(Database.FILE);
        Files.writeString(file, "");
        Files.writeString(folder.resolve(Database.FILE + "-wal"), records);
        return new Leftovers(file).look().orElseThrow();
    }

    private Stream<String> kept() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString()).filter(n -> n.startsWith("kept-")).toList().stream();
        }
    }

    @Test void the_newest_ten_copies_are_kept_and_what_made_room_is_told() throws IOException {
        for (int time = 1; time <= Leftovers.MOST_KEPT; time++) {
            assertThat(look("records " + time)).contains("kept-" + time).doesNotContain("removed");
        }

        assertThat(look("records 11")).contains("kept-11").contains("removed kept-1)");
        assertThat(look("records 12")).contains("kept-12").contains("removed kept-2)");

        assertThat(kept()).containsExactlyInAnyOrderElementsOf(
                IntStream.rangeClosed(3, 12).mapToObj(n -> "kept-" + n).toList());
        assertThat(folder.resolve("kept-12").resolve(Database.FILE + "-wal")).hasContent("records 12");
    }

    @Test void what_somebody_else_put_there_stays() throws IOException {
        look("records 1");
        Files.writeString(folder.resolve("kept-1/notes.txt"), "the evening of the storm");
        Files.writeString(folder.resolve("kept-2"), "no folder");
        for (int time = 3; time <= 12; time++) {
            look("records " + time);
        }

        assertThat(folder.resolve("kept-1/notes.txt")).hasContent("the evening of the storm");
        assertThat(folder.resolve("kept-2")).hasContent("no folder");
        assertThat(folder.resolve("kept-12")).isDirectory();
    }
}

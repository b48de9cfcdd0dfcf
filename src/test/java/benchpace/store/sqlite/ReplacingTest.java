package benchpace.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReplacingTest {
    private static final List<String> OLD = List.of("benchpace.db", "benchpace.db-wal", "benchpace.db-shm", "plans");

    @TempDir Path temp;

    private static void remember(Path folder, String word) {
        try (Database database = Database.open(folder)) {
            database.write(connection -> Statements.change(connection, "insert into setting values ('word', ?)", word));
        }
    }

    private static String word(Database database) {
        return database.read(connection -> {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("select value from setting where key = 'word'")) {
                return row.getString(1);
            }
        });
    }

    /** A folder with old data, their log as a killed board left it, and new data whose place is decided. */
    private Path decided(String name) throws IOException {
        Path folder = temp.resolve(name);
        remember(folder, "old");
        Files.writeString(folder.resolve("benchpace.db-wal"), "old log");
        Files.writeString(folder.resolve("benchpace.db-shm"), "old index");
        Files.writeString(Files.createDirectory(folder.resolve("plans")).resolve("own.json"), "{}");
        remember(temp.resolve(name + "-new"), "new");
        Files.move(temp.resolve(name + "-new/benchpace.db"), folder.resolve("restored.db"));
        return folder;
    }

    @Test void whatever_of_the_moves_was_done_the_next_start_does_the_rest() throws IOException {
        for (int moved = 0; moved <= OLD.size(); moved++) {
            Path folder = decided("after" + moved);
            for (String file : OLD.subList(0, moved)) {
                Files.createDirectories(folder.resolve("replacing"));
                Files.move(folder.resolve(file), folder.resolve("replacing").resolve(file));
            }

            assertNewWithTheOldAside(folder);
        }
    }

    @Test void a_start_after_the_last_move_but_one_names_what_was_put_aside() throws IOException {
        Path folder = decided("last");
        Files.createDirectory(folder.resolve("replacing"));
        for (String file : OLD) {
            Files.move(folder.resolve(file), folder.resolve("replacing").resolve(file));
        }
        Files.move(folder.resolve("restored.db"), folder.resolve("benchpace.db"));

        assertNewWithTheOldAside(folder);
    }

    private static void assertNewWithTheOldAside(Path folder) {
        try (Database database = Database.open(folder)) {
            assertThat(word(database)).isEqualTo("new");
            assertThat(database.told()).singleElement().asString().contains("is done now", "replaced-1");
        }
        assertThat(folder.resolve("replaced-1/benchpace.db-wal")).hasContent("old log");
        assertThat(folder.resolve("replaced-1/benchpace.db-shm")).hasContent("old index");
        assertThat(folder.resolve("replaced-1/plans/own.json")).hasContent("{}");
        assertThat(folder.resolve("replaced-1/benchpace.db")).isRegularFile();
        try (Database database = Database.open(folder)) {
            assertThat(database.told()).as("told once").isEmpty();
        }
    }

    @Test void what_never_came_to_count_is_taken_away_by_the_next_start() throws IOException {
        Path folder = temp.resolve("draft");
        remember(folder, "old");
        Files.writeString(folder.resolve("restoring.db"), "half");

        try (Database database = Database.open(folder)) {
            assertThat(word(database)).isEqualTo("old");
            assertThat(database.told()).isEmpty();
        }
        assertThat(folder.resolve("restoring.db")).doesNotExist();
    }
}

package benchpace.store.backup;

import benchpace.files.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;

/** A store as an older board left it: the released files of its time, and a class. */
public final class OlderStore {
    private static final Path MIGRATIONS = Path.of("src/main/resources/benchpace/store/sqlite");

    private OlderStore() { }

    /** @param version how many of the released files its tables have seen */
    public static void write(Path file, int version) throws IOException, SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement(); Stream<Path> files = Files.list(MIGRATIONS)) {
            List<Path> scripts = files.sorted().limit(version).toList();
            for (Path script : scripts) {
                statement.executeUpdate(Files.readString(script));
            }
            statement.executeUpdate("pragma user_version = " + version);
            List<String> created = Files.readAllLines(Path.of("src/test/resources/benchpace/files/log/events-v1.jsonl"))
                    .stream().filter(line -> line.contains("\"create\"")).toList();
            statement.executeUpdate("insert into event (class_id, seq, command_id, type, by_whom, at_ms, recorded_ms, "
                    + "payload) values ('old', 1, 'a', 'create', 'instructor', 1804185000000, 1804185000000, '"
                    + Json.text(Json.read(created.get(0)).get("fields")).replace("'", "''")
                    + "'), ('old', 2, 'b', 'close', 'instructor', 1804185060000, "
                    + "1804185060000, '{}')");
        }
    }

    static int version(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("pragma user_version")) {
            return row.getInt(1);
        }
    }
}

package benchpace.store.backup;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.io.TempDir;

/** A data folder of its own for each test, backups of it, and folders that these are restored into. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
abstract class BackedUp {
    static final Instant NOW = Instant.parse("2027-03-05T09:00:00Z");

    @TempDir Path temp;

    final Path data() {
        return StoredFolder.filled(temp.resolve("data"));
    }

    final Backup.Made made(Path data) {
        return made(data, "b.backup");
    }

    final Backup.Made made(Path data, String name) {
        return new Backup(data, "0.1.0").make(temp.resolve(name), false, NOW, Progress.UNHEARD);
    }

    static Restore.Restored restored(Path backup, Path folder, boolean replace) {
        return new Restore(folder).from(backup, replace, Progress.UNHEARD);
    }

    /** Changes a file behind the program's back. */
    static void sql(Path file, String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}

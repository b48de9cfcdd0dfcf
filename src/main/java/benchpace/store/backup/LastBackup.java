package benchpace.store.backup;

import benchpace.store.Settings;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;

/** When a backup was last made, as the store itself remembers it. */
public final class LastBackup {
    private static final String KEY = "last-backup";

    private final Settings settings;

    public LastBackup(Settings settings) {
        this.settings = settings;
    }

    /** Empty if never, or if that cannot be told. */
    public Optional<Instant> at() {
        try {
            return settings.get(KEY).map(Instant::parse);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    public void note(Instant at) {
        settings.put(KEY, at.toString());
    }

    /** Notes it in a folder on which a board may be open. @throws benchpace.store.sqlite.StoreException if not */
    public static void note(Path folder, Instant at) {
        try (Database database = Database.besideBoard(folder)) {
            new LastBackup(new Settings(database)).note(at);
        }
    }

    static int put(Connection connection, Instant at) throws SQLException {
        return Statements.change(connection, "insert into setting (key, value) values (?, ?) on conflict (key) "
                + "do update set value = excluded.value", KEY, at.toString());
    }
}

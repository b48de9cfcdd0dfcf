package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;

/**
 * Sees to it that what was erased is nowhere in the file either. SQLite overwrites what is deleted where it stands
 * ({@code secure_delete}), and yet pages keep bytes of rows that stood on them before they were moved to another page:
 * in 300,000 events one such copy was found. So whoever erases words owes the file a rewriting, from the same
 * transaction on, and it is owed until it is done, over restarts too.
 */
public final class FileSweep {
    private static final String KEY = "file.sweep-owed";

    private final Database database;
    private final Settings settings;

    public FileSweep(Database database) {
        this.database = database;
        this.settings = new Settings(database);
    }

    /** Words are erased in the transaction under way. */
    static void owe(Connection connection) throws SQLException {
        Statements.change(connection, "insert into setting (key, value) values ('" + KEY + "', '1') "
                + "on conflict (key) do update set value = cast(value as integer) + 1");
    }

    /** Whether words were erased that may still be found in unused parts of the file. */
    public boolean owed() {
        return settings.get(KEY).isPresent();
    }

    /** How much there is to rewrite, in bytes. */
    public long bytes() {
        return database.bytes();
    }

    /**
     * Does what is owed. Whoever writes waits meanwhile, about a second for 90 MB; whoever reads does not.
     *
     * @return whether nothing is owed any more; not if somebody read all the while, or erased more
     */
    public boolean sweep() {
        Optional<String> owed = settings.get(KEY);
        return owed.isEmpty() || database.rewrite() && database.write(connection -> Statements.change(connection,
                "delete from setting where key = '" + KEY + "' and value = ?", owed.get())) > 0;
    }
}

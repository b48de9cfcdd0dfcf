package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.Optional;

/** Small things the board remembers: a text for a key. */
public final class Settings {
    private final Database database;

    public Settings(Database database) {
        this.database = database;
    }

    public Optional<String> get(String key) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement("select value from setting where key = ?")) {
                select.setString(1, key);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
                }
            }
        });
    }

    public void put(String key, String value) {
        database.write(connection -> {
            try (PreparedStatement upsert = connection.prepareStatement("insert into setting (key, value) "
                    + "values (?, ?) on conflict (key) do update set value = excluded.value")) {
                upsert.setString(1, key);
                upsert.setString(2, value);
                return upsert.executeUpdate();
            }
        });
    }

    public void remove(String key) {
        database.write(connection -> {
            try (PreparedStatement delete = connection.prepareStatement("delete from setting where key = ?")) {
                delete.setString(1, key);
                return delete.executeUpdate();
            }
        });
    }

    /** Removes a text that must not be found in the data folder any more, not in the write-ahead log either. */
    public void erase(String key) {
        database.write(connection -> {
            if (Statements.change(connection, "delete from setting where key = ?", key) > 0) {
                FileSweep.owe(connection);
            }
            return 0;
        });
        database.emptyWriteAheadLog();
    }
}

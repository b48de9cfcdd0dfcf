package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Hashes;
import benchpace.store.sqlite.Statements;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** The keys that still let any number of devices in, kept over restarts as {@link Hashes}: what is printed works on. */
public final class PairingKeys {
    private final Database database;

    public PairingKeys(Database database) {
        this.database = database;
    }

    public void add(String key, String role, Instant now) {
        database.write(connection -> Statements.change(connection, "insert into pairing_key (key_hash, role, made_ms) "
                + "values (?, ?, ?) on conflict do nothing", Hashes.of(key), role, now.toEpochMilli()));
    }

    /** What a key lets in as; empty for one that opens nothing. */
    public Optional<String> role(String key) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select role from pairing_key where key_hash = ?")) {
                select.setString(1, Hashes.of(key));
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(row.getString(1)) : Optional.empty();
                }
            }
        });
    }

    /** From now on no key opens for that role. */
    public void removeAll(String role) {
        database.write(connection -> Statements.change(connection, "delete from pairing_key where role = ?", role));
    }

    /** The clock by which keys were made between then and then was wrong by so much. */
    public void move(Instant from, Instant until, Duration by) {
        database.write(connection -> Statements.change(connection, "update pairing_key set made_ms = made_ms + ? "
                + "where made_ms between ? and ?", by.toMillis(), from.toEpochMilli(), until.toEpochMilli()));
    }

    /** Forgets every key that was made before then. */
    public void prune(Instant before) {
        database.write(connection -> Statements.change(connection, "delete from pairing_key where made_ms < ?",
                before.toEpochMilli()));
    }
}

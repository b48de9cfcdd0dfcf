package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Hashes;
import benchpace.store.sqlite.Statements;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Who has been let in, kept over restarts. Tokens are made and judged elsewhere; here only their {@link Hashes} are
 * kept, so that a paired device's token cannot be read from a stolen data folder.
 */
public final class Sessions {
    /** 48 bits: in a house with a thousand devices two have the same mark once in half a thousand million. */
    private static final int MARK_DIGITS = 12;
    private static final String SELECT = "select token_hash, role, label, created_ms, last_seen_ms, name "
            + "from session ";

    private final Database database;
    /** Everybody, by the hash of the token, as long as nothing was changed: every request asks who it comes from. */
    private Optional<Map<String, Session>> known = Optional.empty();

    public Sessions(Database database) {
        this.database = database;
    }

    public void create(String token, String role, String label, Instant now) {
        change(connection -> Statements.change(connection,
                "insert into session (token_hash, role, label, created_ms, last_seen_ms) values (?, ?, ?, ?, ?)",
                Hashes.of(token), role, label, now.toEpochMilli(), now.toEpochMilli()));
    }

    public Optional<Session> find(String token) {
        return Optional.ofNullable(known().get(Hashes.of(token)));
    }

    /** Whether a device was let in by this token, however long ago. */
    public boolean knows(String token) {
        return known().containsKey(Hashes.of(token));
    }

    private synchronized Map<String, Session> known() {
        if (known.isEmpty()) {
            known = Optional.of(Collections.unmodifiableMap(read()));
        }
        return known.get();
    }

    private int change(Database.Work<Integer> work) {
        try {
            return database.write(work);
        } finally { // whatever became of it
            synchronized (this) {
                known = Optional.empty();
            }
        }
    }

    /** Everybody who was let in, the newest first. */
    public List<Session> all() {
        return List.copyOf(known().values());
    }

    public void remove(String token) {
        String hash = Hashes.of(token);
        change(connection -> remove(connection, hash));
    }

    /** Forgets those that fit, all in one step. @return the marks of those that are gone */
    public List<String> remove(Predicate<Session> which) {
        Map<String, Session> found = new LinkedHashMap<>(known());
        found.values().removeIf(which.negate());
        change(connection -> {
            for (String hash : found.keySet()) {
                remove(connection, hash);
            }
            return 0;
        });
        return found.values().stream().map(Session::mark).toList();
    }

    /** @return whether there is a device of that mark */
    public boolean rename(String mark, String name) {
        Optional<String> hash = known().entrySet().stream().filter(e -> e.getValue().mark().equals(mark))
                .map(Map.Entry::getKey).findFirst();
        return hash.isPresent() && 1 == change(connection -> Statements.change(connection,
                "update session set name = ? where token_hash = ?", name, hash.get()));
    }

    /** @param seen when each device was seen last, by mark */
    public void seen(Map<String, Instant> seen) {
        Map<String, Session> all = new LinkedHashMap<>(known());
        all.values().removeIf(session -> !seen.containsKey(session.mark()));
        change(connection -> {
            for (Map.Entry<String, Session> entry : all.entrySet()) {
                long at = seen.get(entry.getValue().mark()).toEpochMilli();
                Statements.change(connection, "update session set last_seen_ms = ? where token_hash = ? "
                        + "and last_seen_ms < ?", at, entry.getKey(), at);
            }
            return 0;
        });
    }

    /** The clock by which devices were let in and seen between then and then was wrong by so much. */
    public void move(Instant from, Instant until, Duration by) {
        change(connection -> {
            for (String column : List.of("created_ms", "last_seen_ms")) {
                Statements.change(connection, "update session set " + column + " = " + column + " + ? where " + column
                        + " between ? and ?", by.toMillis(), from.toEpochMilli(), until.toEpochMilli());
            }
            return 0;
        });
    }

    /** Forgets every device let in before then. @return how many */
    public int prune(Instant before) {
        return change(connection -> Statements.change(connection, "delete from session where created_ms < ?",
                before.toEpochMilli()));
    }

    private static int remove(Connection connection, String hash) throws SQLException {
        return Statements.change(connection, "delete from session where token_hash = ?", hash);
    }

    /** The newest first. */
    private Map<String, Session> read() {
        return database.read(connection -> {
            Map<String, Session> found = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(SELECT
                    + "order by created_ms desc, token_hash"); ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    String hash = row.getString(1);
                    found.put(hash, new Session(row.getString(2), row.getString(3),
                            Instant.ofEpochMilli(row.getLong(4)), Instant.ofEpochMilli(row.getLong(5)),
                            mark(hash), row.getString(6)));
                }
            }
            return found;
        });
    }

    /** The beginning of a hash of the hash: the same while the device stays paired, and leading back to neither. */
    private static String mark(String hash) {
        return Hashes.of("mark of " + hash).substring(0, MARK_DIGITS);
    }
}

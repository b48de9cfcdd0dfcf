package benchpace.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Who has been let in, kept over restarts. Tokens are made and judged elsewhere; here only their SHA-256 (FIPS 180-4)
 * is kept, so that a stolen data folder opens no door. That needs no salt, as tokens are long and random.
 */
public final class Sessions {
    private final Database database;

    public Sessions(Database database) {
        this.database = database;
    }

    public void create(String token, String role, String label, Instant now) {
        change("insert into session (token_hash, role, label, created_ms, last_seen_ms) values (?, ?, ?, ?, ?)",
                hash(token), role, label, now.toEpochMilli(), now.toEpochMilli());
    }

    public Optional<Session> find(String token) {
        String hash = hash(token);
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select role, label, created_ms, last_seen_ms from session where token_hash = ?")) {
                select.setString(1, hash);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(new Session(row.getString(1), row.getString(2),
                            Instant.ofEpochMilli(row.getLong(3)), Instant.ofEpochMilli(row.getLong(4))))
                            : Optional.empty();
                }
            }
        });
    }

    /** Notes that the device is still in use. Costs a write to disk: not for every request. */
    public void seen(String token, Instant now) {
        change("update session set last_seen_ms = ? where token_hash = ?", now.toEpochMilli(), hash(token));
    }

    public void remove(String token) {
        change("delete from session where token_hash = ?", hash(token));
    }

    /** Forgets every device not seen since then. @return how many */
    public int prune(Instant notSeenSince) {
        return change("delete from session where last_seen_ms < ?", notSeenSince.toEpochMilli());
    }

    private int change(String sql, Object... values) {
        return database.write(connection -> {
            try (PreparedStatement statement = connection.prepareStatement(sql)) {
                for (int i = 0; i < values.length; i++) {
                    statement.setObject(i + 1, values[i]);
                }
                return statement.executeUpdate();
            }
        });
    }

    static String hash(String token) {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha256.digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

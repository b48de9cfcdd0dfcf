package benchpace.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;

/**
 * Who has been let in, kept over restarts. Tokens are made and judged elsewhere; here only their SHA-256 (FIPS 180-4)
 * is kept, so that a paired device's token cannot be read from a stolen data folder. That needs no salt, as tokens are
 * long and random. The folder is to be guarded all the same: what {@link Settings} keeps, the helpers' key and the
 * secret of the guests' codes among it, stands there in clear.
 */
public final class Sessions {
    /** 48 bits: in a house with a thousand devices two have the same mark once in half a thousand million. */
    private static final int MARK_DIGITS = 12;

    private final Database database;
    /** The hashes of all tokens, as long as nothing was changed. */
    private Optional<Set<String>> hashes = Optional.empty();

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
                    "select role, label, created_ms from session where token_hash = ?")) {
                select.setString(1, hash);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(new Session(row.getString(1), row.getString(2),
                            Instant.ofEpochMilli(row.getLong(3)), mark(hash)))
                            : Optional.empty();
                }
            }
        });
    }

    /** Whether a device was let in by this token, however long ago; quicker than {@link #find} and off the disk. */
    public boolean knows(String token) {
        return hashes().contains(hash(token));
    }

    private synchronized Set<String> hashes() {
        if (hashes.isEmpty()) {
            hashes = Optional.of(database.read(connection -> {
                try (PreparedStatement select = connection.prepareStatement("select token_hash from session");
                     ResultSet rows = select.executeQuery()) {
                    Set<String> all = new HashSet<>();
                    while (rows.next()) {
                        all.add(rows.getString(1));
                    }
                    return all;
                }
            }));
        }
        return hashes.get();
    }

    private synchronized void forgetHashes() {
        hashes = Optional.empty();
    }

    public void remove(String token) {
        change("delete from session where token_hash = ?", hash(token));
    }

    /** Forgets every device let in before then. @return how many */
    public int prune(Instant before) {
        return change("delete from session where created_ms < ?", before.toEpochMilli());
    }

    private int change(String sql, Object... values) {
        int changed = database.write(connection -> {
            try (PreparedStatement statement = connection.prepareStatement(sql)) {
                for (int i = 0; i < values.length; i++) {
                    statement.setObject(i + 1, values[i]);
                }
                return statement.executeUpdate();
            }
        });
        forgetHashes();
        return changed;
    }

    /** The beginning of a hash of the hash: the same while the device stays paired, and leading back to neither. */
    private static String mark(String hash) {
        return hash("mark of " + hash).substring(0, MARK_DIGITS);
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

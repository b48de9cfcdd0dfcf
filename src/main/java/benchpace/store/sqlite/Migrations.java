package benchpace.store.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;

/**
 * Brings the tables up to date: numbered SQL files, each applied once, in order, in a transaction of its own. The
 * database remembers how many it has seen ({@code user_version}).
 *
 * <p>To change the tables add a file with the next number and name it here. A file that was released is never edited.
 */
final class Migrations {
    static final List<String> FILES = List.of(
            "001-events.sql",
            "002-sessions.sql",
            "003-settings.sql",
            "004-rooms.sql",
            "005-shelf.sql",
            "006-steps.sql",
            "007-devices.sql",
            "008-keys.sql",
            "009-plans.sql",
            "010-prep.sql",
            "011-deleted.sql",
            "012-history.sql",
            "013-learned.sql",
            "014-forgotten.sql");

    private Migrations() { }

    /**
     * @throws StoreException if the database was written by a newer board, or is not ours
     * @throws SQLException   if it cannot be changed
     */
    static void apply(Connection connection, String shown) throws SQLException {
        int version = version(connection);
        if (version < 0) {
            throw new StoreException("The file " + shown + " says it is of version " + version + ", which no Benchpace "
                    + "writes: please put back a copy of it, or move it away to start anew.");
        }
        if (version > FILES.size()) {
            throw new StoreException("The data in " + shown + " was written by a newer Benchpace (version " + version
                    + ", this one knows " + FILES.size() + "): please use that one.");
        }
        if (version == 0 && hasTables(connection)) {
            throw new StoreException("The file " + shown + " is a database of another program.");
        }
        bringUpToDate(connection, version, FILES.size());
        Optional<String> missing = Schema.missing(connection);
        if (missing.isPresent()) {
            throw new StoreException("The file " + shown + " lacks the " + missing.get() + ": please put back a copy "
                    + "of it, or move it away to start anew.");
        }
    }

    static void bringUpToDate(Connection connection, int version, int to) throws SQLException {
        for (int next = version + 1; next <= to; next++) {
            apply(connection, next);
        }
    }

    private static void apply(Connection connection, int number) throws SQLException {
        connection.setAutoCommit(false);
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(script(FILES.get(number - 1)));
            statement.executeUpdate("pragma user_version = " + number);
            connection.commit();
        } catch (SQLException failed) {
            connection.rollback();
            throw failed;
        } finally {
            connection.setAutoCommit(true);
        }
    }

    static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("pragma user_version")) {
            return row.getInt(1);
        }
    }

    private static boolean hasTables(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select count(*) from sqlite_master")) {
            return row.getInt(1) > 0;
        }
    }

    private static String script(String file) {
        try (InputStream in = Migrations.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its file " + file, e);
        }
    }
}

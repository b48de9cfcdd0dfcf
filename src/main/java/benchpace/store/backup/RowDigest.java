package benchpace.store.backup;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * SHA-256 (FIPS 180-4) over all that a database says: how each thing in it was made, and every value of every row, in
 * the order of the keys. How the rows lie in the file does not count, so a copy has the digest of its original.
 */
final class RowDigest {
    private static final int OFTEN = 5_000;

    private final MessageDigest sha256;
    private final Progress progress;
    private long rows;
    private long of;

    private RowDigest(Progress progress) {
        this.progress = progress;
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** @param but a row of this table whose key is its own name is left out: the digest itself */
    static String of(Connection connection, String but, Progress progress) throws SQLException {
        RowDigest digest = new RowDigest(progress);
        digest.rows(connection, "select type, name, tbl_name, coalesce(sql, '') from sqlite_master "
                + "order by type, name", 4, List.of());
        List<String> tables = tables(connection);
        for (String table : tables) {
            digest.of += count(connection, table);
        }
        for (String table : tables) {
            digest.table(connection, table, table.equals(but) ? " where key <> '" + but + "'" : "");
        }
        return HexFormat.of().formatHex(digest.sha256.digest());
    }

    private static List<String> tables(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select name from sqlite_master where type = 'table' "
                        + "and name not like 'sqlite\\_%' escape '\\' order by name")) {
            while (row.next()) {
                tables.add(row.getString(1));
            }
        }
        return tables;
    }

    private static long count(Connection connection, String table) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select count(*) from " + quoted(table))) {
            return row.getLong(1);
        }
    }

    private static String quoted(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }

    private void table(Connection connection, String table, String where) throws SQLException {
        List<Integer> reals = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        int columns = 0;
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select name, type, pk from pragma_table_info("
                        + "'" + table.replace("'", "''") + "') order by cid")) {
            while (row.next()) {
                columns++;
                if (row.getString(2).equalsIgnoreCase("real")) {
                    reals.add(columns);
                }
                if (row.getInt(3) > 0) {
                    keys.add(quoted(row.getString(1)));
                }
            }
        }
        add(table.getBytes(StandardCharsets.UTF_8));
        rows(connection, "select * from " + quoted(table) + where + " order by "
                + (keys.isEmpty() ? "rowid" : String.join(", ", keys)), columns, reals);
    }

    private void rows(Connection connection, String sql, int columns, List<Integer> reals) throws SQLException {
        try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                for (int column = 1; column <= columns; column++) {
                    add(reals.contains(column) ? bits(row, column) : row.getBytes(column));
                }
                rows++;
                if (rows % OFTEN == 0) {
                    progress.at(Progress.Stage.COUNTING, rows, of);
                    Stopped.unlessWanted(progress);
                }
            }
        }
    }

    /** Whole, as its text would be rounded. */
    private static byte[] bits(ResultSet row, int column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? null : ByteBuffer.allocate(Double.BYTES).putDouble(value).array();
    }

    private void add(byte[] value) {
        byte[] bytes = value == null ? new byte[0] : value;
        sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(value == null ? -1 : bytes.length).array());
        sha256.update(bytes);
    }
}

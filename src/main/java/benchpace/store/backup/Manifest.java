package benchpace.store.backup;

import benchpace.store.sqlite.Statements;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a backup says of itself, in a table of its own.
 *
 * @param program which made it, by its version
 * @param schema  how many migrations its tables have seen
 * @param made    when, by that board's time
 */
public record Manifest(String program, int schema, Instant made, Holdings holdings) {
    static final String TABLE = "backup";

    void write(Connection connection) throws SQLException {
        Statements.change(connection, "create table " + TABLE + " (key text not null primary key, value text not null) "
                + "strict, without rowid");
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("program", program);
        values.put("schema", schema);
        values.put("made", made);
        values.put("classes", holdings.classes());
        values.put("deleted", holdings.deleted());
        values.put("unreadable", holdings.unreadable());
        values.put("events", holdings.events());
        values.put("shelf", holdings.shelf());
        values.put("plans", holdings.plans());
        for (Map.Entry<String, Object> value : values.entrySet()) {
            put(connection, value.getKey(), value.getValue().toString());
        }
    }

    /** The digest of all the rest stands under the table's own name. */
    static void seal(Connection connection, String digest) throws SQLException {
        put(connection, TABLE, digest);
    }

    private static void put(Connection connection, String key, String value) throws SQLException {
        Statements.change(connection, "insert into " + TABLE + " (key, value) values (?, ?)", key, value);
    }

    static Optional<String> seal(Connection connection) throws SQLException {
        return Optional.ofNullable(values(connection).get(TABLE));
    }

    /** Empty if it is none that a board wrote. */
    static Optional<Manifest> read(Connection connection) throws SQLException {
        Map<String, String> values = values(connection);
        try {
            return Optional.of(new Manifest(values.getOrDefault("program", ""), (int) number(values, "schema"),
                    Instant.parse(values.getOrDefault("made", "")), new Holdings(number(values, "classes"),
                    number(values, "deleted"), number(values, "unreadable"), number(values, "events"),
                    number(values, "shelf"), number(values, "plans"))));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }

    private static long number(Map<String, String> values, String key) {
        return Long.parseLong(values.getOrDefault(key, ""));
    }

    private static Map<String, String> values(Connection connection) throws SQLException {
        Map<String, String> values = new LinkedHashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select key, value from " + TABLE)) {
            while (row.next()) {
                values.put(row.getString(1), row.getString(2));
            }
        }
        return values;
    }
}

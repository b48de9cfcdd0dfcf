package benchpace.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Whether a database has the tables and columns that its number of migrations made. */
final class Schema {
    private Schema() { }

    /** The first table or column that is missing, in words. */
    static Optional<String> missing(Connection connection) throws SQLException {
        Set<String> missing = fresh();
        missing.removeAll(columns(connection));
        return missing.stream().findFirst().map(column -> {
            int dot = column.indexOf('.');
            return "column \"" + column.substring(dot + 1) + "\" of its table \"" + column.substring(0, dot) + "\"";
        });
    }

    /** What the migrations make of nothing. */
    private static Set<String> fresh() throws SQLException {
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Migrations.bringUpToDate(memory, 0, Migrations.FILES.size());
            return columns(memory);
        }
    }

    /**
     * The first thing that the migrations a database has seen would not have made, or would have made besides.
     *
     * @param but a table that is passed over
     */
    static Optional<String> oddity(Connection connection, String but) throws SQLException {
        Map<String, String> wanted = wanted(Migrations.version(connection));
        Map<String, String> there = things(connection);
        there.remove("table " + but);
        return Stream.concat(there.entrySet().stream().filter(thing -> !wanted.entrySet().contains(thing)),
                wanted.entrySet().stream().filter(thing -> !there.entrySet().contains(thing)))
                .map(Map.Entry::getKey).findFirst();
    }

    /** Takes out what the migrations would not have made, and puts in what of theirs is gone, but for tables. */
    static void tidy(Connection connection) throws SQLException {
        Map<String, String> wanted = wanted(Migrations.version(connection));
        Map<String, String> there = things(connection);
        try (Statement statement = connection.createStatement()) {
            for (String kind : List.of("trigger", "view", "index", "table")) {
                for (Map.Entry<String, String> thing : there.entrySet()) {
                    if (thing.getKey().startsWith(kind + " ") && !wanted.entrySet().contains(thing)) {
                        String name = thing.getKey().substring(kind.length() + 1).replace("\"", "\"\"");
                        statement.execute("drop " + kind + " \"" + name + "\"");
                    }
                }
            }
            for (Map.Entry<String, String> thing : wanted.entrySet()) {
                if (!thing.getValue().isEmpty() && !there.entrySet().contains(thing)) {
                    statement.execute(thing.getValue());
                }
            }
        }
    }

    private static Map<String, String> wanted(int version) throws SQLException {
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Migrations.bringUpToDate(memory, 0, Math.min(version, Migrations.FILES.size()));
            return things(memory);
        }
    }

    /** What there is, each with how it was made; of tables that is changed by later migrations, and left out. */
    private static Map<String, String> things(Connection connection) throws SQLException {
        Map<String, String> things = new TreeMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select type, name, sql from sqlite_master "
                        + "where name not like 'sqlite\\_%' escape '\\'")) {
            while (row.next()) {
                things.put(row.getString(1) + " " + row.getString(2),
                        row.getString(1).equals("table") ? "" : row.getString(3));
            }
        }
        return things;
    }

    private static Set<String> columns(Connection connection) throws SQLException {
        Set<String> columns = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("select t.name, c.name from sqlite_master t, "
                        + "pragma_table_info(t.name) c where t.type = 'table'")) {
            while (row.next()) {
                columns.add(row.getString(1) + "." + row.getString(2));
            }
        }
        return columns;
    }
}

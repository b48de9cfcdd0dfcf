package benchpace.store.sqlite;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
            Migrations.bringUpToDate(memory, 0);
            return columns(memory);
        }
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

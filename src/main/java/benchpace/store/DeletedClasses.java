package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The classes that were deleted. Whatever bears a class's id in whatever table goes with it; the shelf, which has a log
 * of its own, keeps its candles.
 */
final class DeletedClasses {
    private static final String TABLE = "deleted_class";

    private final Database database;

    DeletedClasses(Database database) {
        this.database = database;
    }

    Map<String, Instant> all() {
        return database.read(connection -> {
            Map<String, Instant> all = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select class_id, deleted_ms from deleted_class order by deleted_ms, class_id");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    all.put(row.getString(1), Instant.ofEpochMilli(row.getLong(2)));
                }
            }
            return all;
        });
    }

    void add(String classId, Instant at) {
        database.write(connection -> Statements.change(connection, "insert into deleted_class (class_id, deleted_ms) "
                + "values (?, ?) on conflict do nothing", classId, at.toEpochMilli()));
    }

    boolean restore(String classId) {
        return database.write(connection -> Statements.change(connection, "delete from deleted_class "
                + "where class_id = ? and exists (select 1 from event where class_id = ?)", classId, classId)) > 0;
    }

    void erase(String classId) {
        database.write(connection -> {
            int erased = 0;
            for (String table : tables(connection)) {
                erased += Statements.change(connection, "delete from " + table + " where class_id = ? and exists "
                        + "(select 1 from deleted_class d where d.class_id = ?)", classId, classId);
            }
            if (erased > 0) {
                FileSweep.owe(connection);
            }
            return erased;
        });
    }

    /** All that say of which class a row is. */
    static List<String> tables(Connection connection) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select t.name from sqlite_master t, "
                + "pragma_table_info(t.name) c where t.type = 'table' and c.name = 'class_id' and t.name <> ?")) {
            select.setString(1, TABLE);
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    tables.add(row.getString(1));
                }
            }
        }
        return tables;
    }
}

package benchpace.store;

import benchpace.store.sqlite.Database;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the store is like, without a word of what is in it.
 *
 * @param sqlite    the library's version
 * @param version   how many migrations the file has seen
 * @param rows      of each table
 * @param integrity what SQLite's own check says, https://sqlite.org/pragma.html#pragma_integrity_check
 * @param settings  which are set, by their keys
 */
public record StoreFacts(String sqlite, int version, SortedMap<String, Long> rows, List<String> integrity,
                         List<String> settings) {
    private static final int MOST_FAULTS = 20;
    /** The tables that bear what people wrote, or ids made of it, in columns of their own. */
    private static final Map<String, List<String>> WORDS = Map.of("session", List.of("label", "name"),
            "saved_plan", List.of("plan_id"), "plan_file", List.of("file"), "class_prior", List.of("room"),
            "room_lesson", List.of("room"), "step_lesson", List.of("place"));

    public static StoreFacts of(Database database) {
        return ofCopy(database, database);
    }

    /** @param copy read for what it holds, brought up to date @param original for its version and its soundness */
    public static StoreFacts ofCopy(Database copy, Database original) {
        int version = original.read(connection -> Integer.valueOf(column(connection, "pragma user_version").get(0)));
        List<String> integrity = original.read(connection ->
                column(connection, "pragma integrity_check(" + MOST_FAULTS + ")"));
        return copy.read(connection -> {
            SortedMap<String, Long> rows = new TreeMap<>();
            for (String table : column(connection, "select name from sqlite_master where type = 'table'")) {
                rows.put(table, Long.valueOf(column(connection, "select count(*) from \""
                        + table.replace("\"", "\"\"") + "\"").get(0)));
            }
            return new StoreFacts(column(connection, "select sqlite_version()").get(0), version, rows, integrity,
                    column(connection, "select key from setting order by key"));
        });
    }

    /** What devices and those who hold them are called, and plans and rooms, those of no class too. */
    public static Set<String> names(Database database) {
        return database.read(connection -> {
            Set<String> names = new TreeSet<>();
            for (Map.Entry<String, List<String>> table : WORDS.entrySet()) {
                for (String column : table.getValue()) {
                    names.addAll(column(connection, "select distinct " + column + " from " + table.getKey()));
                }
            }
            return names;
        });
    }

    private static List<String> column(Connection connection, String sql) throws SQLException {
        List<String> column = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(sql); ResultSet row = select.executeQuery()) {
            while (row.next()) {
                String text = row.getString(1);
                column.add(text == null ? "" : text);
            }
        }
        return column;
    }
}

package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is ticked off of the lists of the day before, class by class. What is not ticked is not there, and a class that
 * is erased takes its own with it ({@link EventLog#erase}).
 */
public final class PrepTicks {
    private final Database database;

    /**
     * A thing that is done.
     *
     * @param item the list and the thing on it; the same while the plan is edited around it
     * @param by   "instructor", or a helper's initials, which may be empty
     * @param at   when, in whole milliseconds
     */
    public record Tick(String item, String by, Instant at) { }

    public PrepTicks(Database database) {
        this.database = database;
    }

    /** The ticks of every class, by class and item, each class's in the order in which they were made. */
    public Map<String, Map<String, Tick>> all() {
        return database.read(connection -> {
            Map<String, Map<String, Tick>> all = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select class_id, item, by_whom, at_ms from prep_tick order by class_id, at_ms, item");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    all.computeIfAbsent(row.getString(1), id -> new LinkedHashMap<>()).put(row.getString(2),
                            new Tick(row.getString(2), row.getString(3), Instant.ofEpochMilli(row.getLong(4))));
                }
            }
            return all;
        });
    }

    /** Ticks something off; whoever did so first stays named. */
    public void tick(String classId, Tick tick) {
        database.write(connection -> Statements.change(connection, "insert into prep_tick (class_id, item, by_whom, "
                + "at_ms) values (?, ?, ?, ?) on conflict do nothing", classId, tick.item(), tick.by(),
                tick.at().toEpochMilli()));
    }

    public void untick(String classId, String item) {
        database.write(connection -> Statements.change(connection, "delete from prep_tick where class_id = ? "
                + "and item = ?", classId, item));
    }
}

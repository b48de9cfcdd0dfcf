package benchpace.store;

import benchpace.live.Recorded;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The classes whose guests are forgotten, and the one change that is ever made to an event: it loses its words. The
 * table's own trigger holds that nothing else about it changes.
 */
final class ForgottenGuests {
    /** The types of those events that bear words of guests, as the trigger has them. */
    static final Set<String> WORDED = Set.of("create", "set-up", "add-seat", "correct-guest", "arrive", "note");

    private final Database database;

    ForgottenGuests(Database database) {
        this.database = database;
    }

    Map<String, Forgotten> all() {
        return database.read(connection -> {
            Map<String, Forgotten> all = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement("select class_id, forgotten_ms, by_age "
                    + "from forgotten_class order by forgotten_ms, class_id");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    all.put(row.getString(1), new Forgotten(Instant.ofEpochMilli(row.getLong(2)),
                            row.getInt(3) == 1));
                }
            }
            return all;
        });
    }

    /** @param nameless all events of the class, as they are to be read from now on */
    void forget(String classId, Forgotten forgotten, List<Recorded> nameless) {
        List<EventRow> rows = nameless.stream().map(EventRow::of).filter(row -> WORDED.contains(row.type())).toList();
        database.write(connection -> {
            int changed = Statements.change(connection, "insert into forgotten_class (class_id, forgotten_ms, by_age) "
                    + "values (?, ?, ?) on conflict do nothing", classId, forgotten.at().toEpochMilli(),
                    forgotten.byAge() ? 1 : 0);
            for (EventRow row : rows) {
                changed += Statements.change(connection, "update event set payload = ? where class_id = ? and seq = ? "
                        + "and payload <> ?", row.payload(), classId, row.seq(), row.payload());
            }
            if (changed > 0) {
                FileSweep.owe(connection);
            }
            return changed;
        });
    }
}

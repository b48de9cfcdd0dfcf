package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.log.StoredEvent;
import benchpace.live.Recorded;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The log in the {@code event} table. The table's own keys and triggers hold what {@link EventLog} promises. */
public final class SqliteEventLog implements EventLog {
    private static final String INSERT = "insert into event (class_id, " + EventRow.COLUMNS
            + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?)";
    private static final String CLOSED = "select class_id, max(case type when 'close' then at_ms end) from event "
            + "group by class_id having max(recorded_ms) < ? and sum(type = 'close') = 1 "
            + "and max(case type when 'close' then seq end) > coalesce(max(case when type in "
            + "('undo', 'correct-time', 'correct-seat', 'shift-clock') then seq end), 0)";
    private static final String SELECT = "select " + EventRow.COLUMNS
            + " from event where class_id = ? order by seq";

    private final Database database;
    private final DeletedClasses deleted;
    private final ForgottenGuests forgotten;

    public SqliteEventLog(Database database) {
        this.database = database;
        this.deleted = new DeletedClasses(database);
        this.forgotten = new ForgottenGuests(database);
    }

    @Override public List<String> classIds() {
        return database.read(connection -> {
            List<String> ids = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select class_id from event where class_id not in (select class_id from deleted_class) "
                    + "group by class_id order by min(recorded_ms), class_id");
                    ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    ids.add(rows.getString(1));
                }
            }
            return ids;
        });
    }

    @Override public Map<String, Instant> closed(Instant before) {
        return database.read(connection -> {
            Map<String, Instant> closed = new HashMap<>();
            try (PreparedStatement select = connection.prepareStatement(CLOSED)) {
                select.setLong(1, before.toEpochMilli());
                try (ResultSet row = select.executeQuery()) {
                    while (row.next()) {
                        closed.put(row.getString(1), Instant.ofEpochMilli(row.getLong(2)));
                    }
                }
            }
            return closed;
        });
    }

    @Override public boolean anyRecorded(Instant from, Instant until) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select 1 from event where recorded_ms between ? and ? limit 1")) {
                select.setLong(1, from.toEpochMilli());
                select.setLong(2, until.toEpochMilli());
                return any(select);
            }
        });
    }

    @Override public List<Recorded> read(String classId) {
        return database.read(connection -> {
            List<Recorded> events = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(SELECT)) {
                select.setString(1, classId);
                try (ResultSet row = select.executeQuery()) {
                    while (row.next()) {
                        events.add(recorded(classId, events.size() + 1, EventRow.of(row)));
                    }
                }
            }
            return events;
        });
    }

    /** Every event of a class in order, those that cannot be read back too, as they stand there; empty if none. */
    public List<StoredEvent> stored(String classId) {
        return database.read(connection -> {
            List<StoredEvent> events = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(SELECT)) {
                select.setString(1, classId);
                try (ResultSet row = select.executeQuery()) {
                    while (row.next()) {
                        events.add(EventRow.of(row).stored());
                    }
                }
            }
            return events;
        });
    }

    private static Recorded recorded(String classId, int expected, EventRow row) {
        try {
            if (row.seq() != expected) {
                throw new BadField("seq", "is missing before event " + row.seq());
            }
            return row.read();
        } catch (JsonProcessingException | BadField e) {
            throw new CannotBeReadBack("Event " + expected + " of class " + classId + " cannot be read back: "
                    + (e instanceof JsonProcessingException j ? Json.problem(j).toString() : e.getMessage()) + ".", e);
        }
    }

    @Override public void append(String classId, Recorded event) {
        requireMillis(event.at());
        requireMillis(event.recordedAt());
        EventRow row = EventRow.of(event);
        database.writeOne(connection -> {
            try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
                insert.setString(1, classId);
                row.set(insert, 2);
                return insert.executeUpdate();
            } catch (SQLiteException e) {
                if (isConflict(e)) {
                    throw conflict(connection, classId, event, e);
                }
                throw e;
            }
        });
    }

    @Override public Map<String, Instant> deleted() {
        return deleted.all();
    }

    @Override public void delete(String classId, Instant at) {
        deleted.add(classId, at);
    }

    @Override public boolean restore(String classId) {
        return deleted.restore(classId);
    }

    @Override public void erase(String classId) {
        deleted.erase(classId);
    }

    @Override public Map<String, Forgotten> forgotten() {
        return forgotten.all();
    }

    @Override public void forgetGuests(String classId, Forgotten how, List<Recorded> nameless) {
        forgotten.forget(classId, how, nameless);
    }

    @Override public void forgetUnreadable(String classId, Forgotten how) {
        forgotten.forgetUnreadable(classId, how);
    }

    @Override public KeptWords keptWords(String classId) {
        return forgotten.keptWords(classId);
    }

    private static void requireMillis(Instant instant) {
        if (instant.getNano() % 1_000_000 != 0) {
            throw new IllegalArgumentException("the log keeps whole milliseconds, not " + instant);
        }
    }

    private static boolean isConflict(SQLiteException e) {
        return (e.getResultCode().code & 0xff) == SQLiteErrorCode.SQLITE_CONSTRAINT.code;
    }

    private static StoreException conflict(Connection connection, String classId, Recorded event, SQLException cause)
            throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select 1 from event where class_id = ? and command_id = ?")) {
            select.setString(1, classId);
            select.setString(2, event.commandId());
            return any(select) ? new CommandTaken(classId, event.commandId(), cause)
                    : new SeqTaken(classId, event.seq(), cause);
        }
    }

    private static boolean any(PreparedStatement select) throws SQLException {
        try (ResultSet row = select.executeQuery()) {
            return row.next();
        }
    }
}

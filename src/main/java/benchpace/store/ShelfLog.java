package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.ShelfJson;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What happened at the pickup shelf, in the table {@code shelf_event}. Only added to, but for one thing: with the event
 * that erases a guest's words they are overwritten where they were written down, in the same transaction, and the
 * write-ahead log is emptied as soon as no reader holds it: at once, with a later event of the shelf, when it is tried
 * again, or at closing.
 *
 * <p>What is erased is the claim word, and the name that was given for the shelf. What remains is the fact that a
 * candle of that seat was here, its places and times. A first name that the guest let stand in the class itself is not
 * of the shelf: it remains in the class's own events, as does whatever was written in notes, until the guests of that
 * class are forgotten ({@link EventLog#forgetGuests}); and so it does in copies that somebody made of the file before.
 */
public final class ShelfLog {
    private static final String INSERT = "insert into shelf_event (seq, command_id, entry, type, at_ms, payload) "
            + "values ((select coalesce(max(seq), 0) + 1 from shelf_event), ?, ?, ?, ?, ?)";

    private final Database database;
    private volatile boolean toEmpty;

    public ShelfLog(Database database) {
        this.database = database;
    }

    /**
     * What the log holds.
     *
     * @param events     in order; {@link ShelfEvent.Unreadable} in the place of those that cannot be read back
     * @param unreadable a sentence for each of these, and why
     */
    public record Content(List<ShelfEvent> events, List<StoreException> unreadable) {
        public Content {
            events = List.copyOf(events);
            unreadable = List.copyOf(unreadable);
        }
    }

    /** All events in order. One that cannot be read back is left as it is, and takes no other with it. */
    public Content read() {
        return database.read(connection -> {
            List<ShelfEvent> events = new ArrayList<>();
            List<StoreException> unreadable = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select seq, entry, type, at_ms, payload from shelf_event order by seq");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    try {
                        events.add(event(row));
                    } catch (StoreException fault) {
                        events.add(instead(row));
                        unreadable.add(fault);
                    }
                }
            }
            return new Content(events, unreadable);
        });
    }

    private static ShelfEvent instead(ResultSet row) throws SQLException {
        return new ShelfEvent.Unreadable(new EntryId(row.getLong(2)), Instant.ofEpochMilli(row.getLong(4)),
                place(row.getString(5)));
    }

    private static Optional<ShelfPlace> place(String payload) {
        try {
            return ShelfJson.placeIn(Json.read(payload));
        } catch (JsonProcessingException none) {
            return Optional.empty();
        }
    }

    private static ShelfEvent event(ResultSet row) throws SQLException {
        try {
            return ShelfJson.read(row.getString(3), row.getLong(2), Instant.ofEpochMilli(row.getLong(4)),
                    Json.read(row.getString(5)));
        } catch (JsonProcessingException | BadField | IllegalArgumentException e) {
            throw new StoreException("What was written down of candle " + row.getLong(2)
                    + " on the pickup shelf (event " + row.getLong(1) + ") cannot be read and is left out; "
                    + "the log says why.", e);
        }
    }

    /** What a command led to first, if it was recorded before; without its words once they were erased. */
    public Optional<ShelfEvent> eventOf(String commandId) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select seq, entry, type, at_ms, payload from shelf_event where command_id = ?")) {
                select.setString(1, commandId);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(event(row)) : Optional.empty();
                }
            }
        });
    }

    /**
     * Records what one command led to, durably, all or nothing.
     *
     * @param commandId never recorded before
     * @param events    in order; times in whole milliseconds
     * @throws CannotBeKept if one would not be read back as it is
     */
    public void append(String commandId, List<ShelfEvent> events) {
        events.forEach(event -> ReadBack.require(event, () -> ShelfJson.read(ShelfJson.type(event),
                event.entry().value(), Instant.ofEpochMilli(event.at().toEpochMilli()),
                Json.read(ReadBack.utf8(Json.text(ShelfJson.fields(event)))))));
        boolean erases = database.write(connection -> {
            boolean erased = false;
            for (int i = 0; i < events.size(); i++) {
                ShelfEvent event = events.get(i);
                insert(connection, i == 0 ? commandId : commandId + "/" + i, event);
                if (event instanceof ShelfEvent.Erased) {
                    erase(connection, event.entry());
                    FileSweep.owe(connection);
                    erased = true;
                }
            }
            return erased;
        });
        toEmpty = toEmpty || erases;
        emptyWhatIsOwed();
    }

    /** Tries again to empty the write-ahead log of what was erased, if a reader held it then. */
    public void emptyWhatIsOwed() {
        if (toEmpty) {
            toEmpty = !database.emptyWriteAheadLog();
        }
    }

    private static void insert(Connection connection, String commandId, ShelfEvent event) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(INSERT)) {
            insert.setString(1, commandId);
            insert.setLong(2, event.entry().value());
            insert.setString(3, ShelfJson.type(event));
            insert.setLong(4, event.at().toEpochMilli());
            insert.setString(5, Json.text(ShelfJson.fields(event)));
            insert.executeUpdate();
        }
    }

    private static void erase(Connection connection, EntryId entry) throws SQLException {
        String without;
        try (PreparedStatement select = connection.prepareStatement(
                "select seq, entry, type, at_ms, payload from shelf_event where entry = ? and type = 'put'")) {
            select.setLong(1, entry.value());
            try (ResultSet row = select.executeQuery()) {
                if (!row.next()) {
                    return;
                }
                ShelfEvent.Placed placed = (ShelfEvent.Placed) event(row);
                without = Json.text(ShelfJson.fields(placed.withoutWords()));
            }
        }
        try (PreparedStatement update = connection.prepareStatement(
                "update shelf_event set payload = ? where entry = ? and type = 'put'")) {
            update.setString(1, without);
            update.setLong(2, entry.value());
            update.executeUpdate();
        }
    }
}

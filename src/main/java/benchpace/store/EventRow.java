package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.Json;
import benchpace.files.log.EventJson;
import benchpace.files.log.StoredEvent;
import benchpace.live.ClassEvent;
import benchpace.live.Recorded;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;

/**
 * An event as the row of the table that keeps it. What a start reads is what an append wrote: both go through here, and
 * nothing is appended that was not read back first.
 */
record EventRow(long seq, String commandId, String type, String by, long atMillis, long recordedMillis, String payload,
                String device) {
    /** In the order in which {@link #of(ResultSet)} and {@link #set} count them. */
    static final String COLUMNS = "seq, command_id, type, by_whom, at_ms, recorded_ms, payload, device";

    /**
     * The row of an event.
     *
     * @throws CannotBeKept if the row would not be read back as that very event
     */
    static EventRow of(Recorded event) {
        EventRow row = new EventRow(event.seq(), event.commandId(), EventJson.type(event.event()), event.by(),
                event.at().toEpochMilli(), event.recordedAt().toEpochMilli(),
                Json.text(EventJson.fields(event.event())), event.device());
        ReadBack.require(event, row.utf8()::read);
        return row;
    }

    static EventRow of(ResultSet row) throws SQLException {
        return new EventRow(row.getLong(1), row.getString(2), row.getString(3), row.getString(4), row.getLong(5),
                row.getLong(6), row.getString(7), row.getString(8));
    }

    /** @param first the number of the statement's parameter that takes the first column */
    void set(PreparedStatement insert, int first) throws SQLException {
        insert.setLong(first, seq);
        insert.setString(first + 1, commandId);
        insert.setString(first + 2, type);
        insert.setString(first + 3, by);
        insert.setLong(first + 4, atMillis);
        insert.setLong(first + 5, recordedMillis);
        insert.setString(first + 6, payload);
        insert.setString(first + 7, device);
    }

    /** @throws BadField if it is no event */
    Recorded read() throws JsonProcessingException {
        ClassEvent event = EventJson.read(type, Json.read(payload));
        // who, and on which device, is said again in event after event, and held once
        return new Recorded(seq, commandId, by.intern(), device.intern(),
                EventJson.time("at", Instant.ofEpochMilli(atMillis)),
                EventJson.time("recordedAt", Instant.ofEpochMilli(recordedMillis)), event);
    }

    /** The event, or the row itself if it is none. */
    StoredEvent stored() {
        try {
            return new StoredEvent.Sound(read());
        } catch (JsonProcessingException | BadField e) {
            return new StoredEvent.Unreadable(seq, type, Instant.ofEpochMilli(atMillis),
                    Instant.ofEpochMilli(recordedMillis), by, device, payload);
        }
    }

    /** As the file holds it. */
    private EventRow utf8() {
        return new EventRow(seq, ReadBack.utf8(commandId), type, ReadBack.utf8(by), atMillis, recordedMillis,
                ReadBack.utf8(payload), ReadBack.utf8(device));
    }
}

package benchpace.store;

import benchpace.files.BadField;
import benchpace.files.log.EventJson;
import benchpace.files.log.NamelessFields;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The classes whose guests are forgotten, and the one change that is ever made to an event: it loses its words. The
 * table's own trigger holds that nothing else about it changes.
 */
final class ForgottenGuests {
    /** The types of those events that bear words of guests, as the trigger has them. */
    static final Set<String> WORDED = NamelessFields.types();

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
        List<Payload> payloads = nameless.stream().map(EventRow::of).filter(row -> WORDED.contains(row.type()))
                .map(row -> new Payload(row.seq(), row.payload())).toList();
        database.write(connection -> forget(connection, classId, forgotten, payloads));
    }

    /** @param text what an event says from now on */
    private record Payload(long seq, String text) { }

    private static int forget(Connection connection, String classId, Forgotten forgotten, List<Payload> payloads)
            throws SQLException {
        int changed = Statements.change(connection, "insert into forgotten_class (class_id, forgotten_ms, by_age) "
                + "values (?, ?, ?) on conflict do nothing", classId, forgotten.at().toEpochMilli(),
                forgotten.byAge() ? 1 : 0);
        for (Payload payload : payloads) {
            changed += Statements.change(connection, "update event set payload = ? where class_id = ? and seq = ? "
                    + "and payload <> ?", payload.text(), classId, payload.seq(), payload.text());
        }
        if (changed > 0) {
            FileSweep.owe(connection);
        }
        return changed;
    }

    // ---- classes that cannot be read back

    /** Event by event, as far as what stands there can be told. */
    void forgetUnreadable(String classId, Forgotten forgotten) {
        database.write(connection -> {
            List<Payload> payloads = new ArrayList<>();
            for (EventRow row : rows(connection, classId)) {
                nameless(row).ifPresent(text -> payloads.add(new Payload(row.seq(), text)));
            }
            return forget(connection, classId, forgotten, payloads);
        });
    }

    KeptWords keptWords(String classId) {
        return database.read(connection -> {
            int erasable = 0;
            int stuck = 0;
            Optional<Instant> last = Optional.empty();
            Optional<Instant> until = Optional.empty();
            for (EventRow row : rows(connection, classId)) {
                Optional<String> nameless = nameless(row);
                erasable += nameless.filter(text -> !text.equals(row.payload())).isPresent() ? 1 : 0;
                stuck += nameless.isEmpty() && (WORDED.contains(row.type())
                        || !EventJson.types().contains(row.type())) ? 1 : 0;
                Instant at = Instant.ofEpochMilli(row.recordedMillis());
                last = Optional.of(last.filter(at::isBefore).orElse(at));
                until = Stream.of(until, last, NamelessFields.lastAppointment(row.payload()))
                        .flatMap(Optional::stream).max(Comparator.naturalOrder());
            }
            return new KeptWords(erasable, stuck, last, until);
        });
    }

    private static List<EventRow> rows(Connection connection, String classId) throws SQLException {
        List<EventRow> rows = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select " + EventRow.COLUMNS
                + " from event where class_id = ? order by seq")) {
            select.setString(1, classId);
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    rows.add(EventRow.of(row));
                }
            }
        }
        return rows;
    }

    /** What an event says without words; empty if it bears none, or if nobody can tell. */
    private static Optional<String> nameless(EventRow row) {
        if (!WORDED.contains(row.type())) {
            return Optional.empty();
        }
        try {
            Recorded event = row.read();
            Recorded nameless = Nameless.ofGuests().of(event);
            return Optional.of(nameless.equals(event) ? row.payload() : EventRow.of(nameless).payload());
        } catch (JsonProcessingException | BadField | CannotBeKept e) {
            return NamelessFields.of(row.type(), row.payload());
        }
    }
}

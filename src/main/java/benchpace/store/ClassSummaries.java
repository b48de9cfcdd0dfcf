package benchpace.store;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What closed classes came to, kept over restarts. A row that cannot be true is passed over: it is made anew. */
public final class ClassSummaries {
    private static final Logger LOG = System.getLogger(ClassSummaries.class.getName());

    private final Database database;

    /**
     * What is kept of a class.
     *
     * @param seq       the class's last event that it rests on
     * @param reckoning as {@link ClassFigures#RECKONING} was when it was made
     */
    public record Kept(long seq, int reckoning, ClassFigures figures) { }

    public ClassSummaries(Database database) {
        this.database = database;
    }

    /** Of every class of which something is kept, by its id. */
    public Map<String, Kept> all() {
        return database.read(connection -> {
            Map<String, List<Lost>> lost = lost(connection);
            Map<String, Kept> all = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement("select * from class_summary");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    String id = row.getString("class_id");
                    try {
                        all.put(id, kept(row, lost.getOrDefault(id, List.of())));
                    } catch (RuntimeException e) {
                        LOG.log(Level.WARNING, "what class " + id + " came to cannot be read back; it is made anew", e);
                    }
                }
            }
            return all;
        });
    }

    private static Map<String, List<Lost>> lost(Connection connection) throws SQLException {
        Map<String, List<Lost>> lost = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(
                "select class_id, cause, step_id, minutes from class_lost order by class_id, ordinal");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                try {
                    lost.computeIfAbsent(row.getString(1), id -> new ArrayList<>()).add(
                            new Lost(Cause.valueOf(row.getString(2)), row.getString(3), row.getDouble(4)));
                } catch (IllegalArgumentException e) {
                    LOG.log(Level.WARNING, "what held class " + row.getString(1) + " cannot all be read back", e);
                }
            }
        }
        return lost;
    }

    private static Kept kept(ResultSet row, List<Lost> lost) throws SQLException {
        long ready = row.getLong("ready_ms");
        Optional<Instant> at = row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(ready));
        return new Kept(row.getLong("seq"), row.getInt("reckoning"), new ClassFigures(instant(row, "promised_ms"),
                instant(row, "ended_ms"), instant(row, "planned_ready_ms"), at,
                ClassFigures.ReadyBy.valueOf(row.getString("ready_by")), lost, row.getInt("idle_seats"),
                row.getInt("idle_minutes"),
                new FlagFigures(row.getInt("flags"), row.getInt("flags_answered"), figure(row, "answer_minutes"),
                        row.getInt("flags_wrong")),
                new CureFigures(row.getInt("cures"), row.getInt("cures_in_range"), figure(row, "cure_minutes"))));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return Instant.ofEpochMilli(row.getLong(column));
    }

    private static OptionalDouble figure(ResultSet row, String column) throws SQLException {
        double figure = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /**
     * Keeps what a class came to, in place of what was kept of it.
     *
     * @return whether it was: a class that was deleted meanwhile leaves nothing
     */
    public boolean put(String classId, Kept kept) {
        return database.write(connection -> {
            forget(connection, classId);
            if (!exists(connection, classId)) {
                return false;
            }
            ClassFigures f = kept.figures();
            Statements.change(connection, "insert into class_summary (class_id, seq, reckoning, promised_ms, ended_ms, "
                    + "planned_ready_ms, ready_ms, ready_by, idle_seats, idle_minutes, flags, flags_answered, "
                    + "answer_minutes, flags_wrong, cures, cures_in_range, cure_minutes) "
                    + "values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", classId, kept.seq(),
                    kept.reckoning(), f.promised().toEpochMilli(), f.ended().toEpochMilli(),
                    f.plannedReady().toEpochMilli(), f.ready().map(Instant::toEpochMilli).orElse(null),
                    f.readyBy().name(), f.idleSeats(), f.idleMinutes(), f.flags().raised(), f.flags().answered(),
                    orNull(f.flags().answerMinutes()), f.flags().wrong(), f.cures().judged(), f.cures().inRange(),
                    orNull(f.cures().meanMinutes()));
            for (int i = 0; i < f.lost().size(); i++) {
                Lost lost = f.lost().get(i);
                Statements.change(connection, "insert into class_lost (class_id, ordinal, cause, step_id, minutes) "
                        + "values (?, ?, ?, ?, ?)", classId, i, lost.cause().name(), lost.step(), lost.minutes());
            }
            return true;
        });
    }

    private static void forget(Connection connection, String classId) throws SQLException {
        Statements.change(connection, "delete from class_summary where class_id = ?", classId);
        Statements.change(connection, "delete from class_lost where class_id = ?", classId);
    }

    private static boolean exists(Connection connection, String classId) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select 1 from event where class_id = ? "
                + "and not exists (select 1 from deleted_class d where d.class_id = event.class_id) limit 1")) {
            select.setString(1, classId);
            try (ResultSet row = select.executeQuery()) {
                return row.next();
            }
        }
    }

    private static Double orNull(OptionalDouble figure) {
        return figure.isPresent() ? Double.valueOf(figure.getAsDouble()) : null;
    }
}

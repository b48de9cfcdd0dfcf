package benchpace.store;

import benchpace.cure.room.RoomFit;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What rooms have taught, kept over restarts. Each class leaves one lesson; the latest is what the next class in that
 * room starts from, and what a class started from stays as it was, whatever is learned or reset meanwhile.
 */
public final class Rooms {
    /** Stands for the last event of a lesson that was forgotten with its room. */
    public static final long FORGOTTEN = -1;
    private static final String FIT = "log_loss_mean, log_loss_sd, ready_mean, ready_sd, observations";
    /** What {@link RoomFit} takes. A lesson that is none is passed over: the one before it counts. */
    private static final String SOUND = "(abs(log_loss_mean) < 1e9 and log_loss_sd > 0 and ready_mean between 0 and 1 "
            + "and ready_sd > 0 and observations >= 0)";
    /** Not taken back by the organiser. */
    private static final String COUNTS = "class_id not in (select class_id from room_decision where counts = 0)";

    /**
     * What a room has taught so far.
     *
     * @param room    its name; empty for "this room"
     * @param classes how many classes taught it
     * @param at      when the latest of them did
     */
    public record Taught(String room, RoomFit fit, int classes, Instant at) { }

    private final Database database;

    public Rooms(Database database) {
        this.database = database;
    }

    /** What a class starts from: fixed for that class, for good, if it is not. */
    public RoomFit prior(String classId, String room) {
        return started(classId).orElseGet(() -> fix(classId, room, before(classId, room)));
    }

    /** What a class started from, if that is fixed already. */
    public Optional<RoomFit> started(String classId) {
        return database.read(connection -> one(connection,
                "select " + FIT + " from class_prior where class_id = ?", classId));
    }

    private RoomFit fix(String classId, String room, RoomFit fit) {
        database.write(connection -> {
            try (PreparedStatement insert = connection.prepareStatement("insert into class_prior (" + FIT
                    + ", class_id, room) values (?, ?, ?, ?, ?, ?, ?) on conflict (class_id) do nothing")) {
                set(insert, fit);
                insert.setString(6, classId);
                insert.setString(7, room);
                return insert.executeUpdate();
            }
        });
        return started(classId).orElseThrow();
    }

    /** What the room had taught before that class, ready for the next one. */
    public RoomFit before(String classId, String room) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement("select " + FIT + " from room_lesson "
                    + "where " + SOUND + " and " + COUNTS + " and room = ? "
                    + "and ordinal < coalesce((select ordinal from room_lesson where class_id = ?), "
                    + Long.MAX_VALUE + ") order by ordinal desc limit 1")) {
                select.setString(1, room);
                select.setString(2, classId);
                return first(select);
            }
        }).map(RoomFit::forNextClass).orElseGet(RoomFit::untaught);
    }

    /** The event up to which a class's lesson was drawn; 0 if never, {@link #FORGOTTEN} if it is not to count. */
    public long lessonSeq(String classId) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select lesson_seq from class_prior where class_id = ?")) {
                select.setString(1, classId);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? row.getLong(1) : 0L;
                }
            }
        });
    }

    /**
     * Keeps what a class taught, in place of an earlier lesson of the same class; nothing if that was forgotten.
     *
     * @param lesson empty if it taught nothing
     * @param seq    the class's last event that it rests on
     */
    public void learn(String classId, String room, Optional<RoomFit> lesson, long seq, Instant now) {
        database.write(connection -> {
            if (forgotten(connection, classId)) {
                return 0;
            }
            long ordinal = ordinal(connection, classId, room);
            Statements.change(connection, "delete from room_lesson where class_id = ?", classId);
            if (lesson.isPresent()) {
                try (PreparedStatement insert = connection.prepareStatement("insert into room_lesson (" + FIT
                        + ", room, ordinal, class_id, learned_ms) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
                    set(insert, lesson.get());
                    insert.setString(6, room);
                    insert.setLong(7, ordinal);
                    insert.setString(8, classId);
                    insert.setLong(9, now.toEpochMilli());
                    insert.executeUpdate();
                }
            }
            return Statements.change(connection, "update class_prior set lesson_seq = ? where class_id = ?", seq,
                    classId);
        });
    }

    private static boolean forgotten(Connection connection, String classId) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select 1 from class_prior where class_id = ? and lesson_seq = " + FORGOTTEN)) {
            select.setString(1, classId);
            try (ResultSet row = select.executeQuery()) {
                return row.next();
            }
        }
    }

    private static long ordinal(Connection connection, String classId, String room) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select coalesce("
                + "(select ordinal from room_lesson where class_id = ?), "
                + "(select max(ordinal) + 1 from room_lesson where room = ?), 1)")) {
            select.setString(1, classId);
            select.setString(2, room);
            try (ResultSet row = select.executeQuery()) {
                return row.getLong(1);
            }
        }
    }

    /** How many lessons are kept that cannot be true, as of a damaged file; they are passed over. */
    public int unsound() {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select count(*) from room_lesson where not " + SOUND);
                    ResultSet row = select.executeQuery()) {
                return row.getInt(1);
            }
        });
    }

    /** What every class taught its room, by room and in the order in which classes ended; also what was taken back. */
    public List<RoomLesson> lessons() {
        return database.read(connection -> {
            List<RoomLesson> lessons = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement("select l.log_loss_mean, l.log_loss_sd, "
                    + "l.ready_mean, l.ready_sd, l.observations, l.class_id, l.room, l.learned_ms, "
                    + "coalesce(p.lesson_seq, 0), d.counts, d.lesson_seq, d.decided_ms "
                    + "from (select * from room_lesson where " + SOUND + ") l "
                    + "left join class_prior p on p.class_id = l.class_id "
                    + "left join room_decision d on d.class_id = l.class_id order by l.room, l.ordinal");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    lessons.add(new RoomLesson(row.getString(6), row.getString(7), fit(row), row.getLong(9),
                            Instant.ofEpochMilli(row.getLong(8)), said(row)));
                }
            }
            return lessons;
        });
    }

    private static Optional<RoomLesson.Said> said(ResultSet row) throws SQLException {
        boolean counts = row.getInt(10) != 0;
        return row.wasNull() ? Optional.empty() : Optional.of(new RoomLesson.Said(counts, row.getLong(11),
                Instant.ofEpochMilli(row.getLong(12))));
    }

    /**
     * Keeps what the organiser said of a class's lesson, and what later lessons of the room come to by it: all of it or
     * nothing.
     *
     * @param redrawn the lessons that follow from it, by class; empty for one that can be drawn no more, which is then
     *                drawn anew when its class can be read again
     */
    public void decide(String classId, RoomLesson.Said said, Map<String, Optional<RoomFit>> redrawn) {
        database.write(connection -> {
            for (Map.Entry<String, Optional<RoomFit>> lesson : redrawn.entrySet()) {
                if (lesson.getValue().isPresent()) {
                    redraw(connection, lesson.getKey(), lesson.getValue().get());
                } else {
                    Statements.change(connection, "delete from room_lesson where class_id = ?", lesson.getKey());
                    Statements.change(connection, "update class_prior set lesson_seq = 0 where class_id = ?",
                            lesson.getKey());
                }
            }
            return Statements.change(connection, "insert into room_decision (class_id, counts, lesson_seq, decided_ms) "
                    + "values (?, ?, ?, ?) on conflict (class_id) do update set counts = excluded.counts, "
                    + "lesson_seq = excluded.lesson_seq, decided_ms = excluded.decided_ms", classId,
                    said.counts() ? 1 : 0, said.seq(), said.at().toEpochMilli());
        });
    }

    private static void redraw(Connection connection, String classId, RoomFit fit) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement("update room_lesson set log_loss_mean = ?, "
                + "log_loss_sd = ?, ready_mean = ?, ready_sd = ?, observations = ? where class_id = ?")) {
            set(update, fit);
            update.setString(6, classId);
            update.executeUpdate();
        }
    }

    /** Every room that has taught something that counts, by name. */
    public List<Taught> all() {
        return database.read(connection -> {
            List<Taught> rooms = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement("select " + FIT + ", room, learned_ms, "
                    + "(select count(*) from room_lesson o where o." + COUNTS + " and o.room = l.room) "
                    + "from room_lesson l where ordinal = (select max(ordinal) from room_lesson m where " + SOUND
                    + " and m." + COUNTS + " and m.room = l.room) order by room");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    rooms.add(new Taught(row.getString(6), fit(row), row.getInt(8),
                            Instant.ofEpochMilli(row.getLong(7))));
                }
            }
            return rooms;
        });
    }

    /**
     * Forgets what a room has taught. Classes whose lesson was drawn before teach it nothing again, whatever is noted
     * in them later.
     *
     * @return whether there was anything to forget
     */
    public boolean reset(String room) {
        return database.write(connection -> {
            Statements.change(connection, "update class_prior set lesson_seq = " + FORGOTTEN
                    + " where room = ? and lesson_seq > 0", room);
            Statements.change(connection, "delete from room_decision where class_id in "
                    + "(select class_id from room_lesson where room = ?)", room);
            return Statements.change(connection, "delete from room_lesson where room = ?", room);
        }) > 0;
    }

    private static Optional<RoomFit> one(Connection connection, String sql, String key) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setString(1, key);
            return first(select);
        }
    }

    private static Optional<RoomFit> first(PreparedStatement select) throws SQLException {
        try (ResultSet row = select.executeQuery()) {
            return row.next() ? Optional.of(fit(row)) : Optional.empty();
        }
    }

    private static RoomFit fit(ResultSet row) throws SQLException {
        return new RoomFit(row.getDouble(1), row.getDouble(2), row.getDouble(3), row.getDouble(4), row.getInt(5));
    }

    private static void set(PreparedStatement statement, RoomFit fit) throws SQLException {
        statement.setDouble(1, fit.logLossMean());
        statement.setDouble(2, fit.logLossSd());
        statement.setDouble(3, fit.readyMean());
        statement.setDouble(4, fit.readySd());
        statement.setInt(5, fit.observations());
    }
}

package benchpace.store;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The organiser's own plans, every version of each. Versions are only added; a plan that is deleted is marked and keeps
 * them. What cannot be read back later is told apart and takes no other version along.
 */
public final class SavedPlans {
    private static final Logger LOG = System.getLogger(SavedPlans.class.getName());
    private static final String COLUMNS = "plan_id, version, saved_ms, by_whom, device, plan";

    /**
     * Who saved a version.
     *
     * @param who    a role, or {@link #FOLDER}
     * @param device the mark of the device; empty if it was none
     */
    public record By(String who, String device) {
        /** It was found as a file in the data folder. */
        public static final By FOLDER = new By("folder", "");
    }

    /**
     * One saved version.
     *
     * @param number from 1
     * @param plan   empty if it cannot be read back
     */
    public record Version(String id, int number, Instant at, By by, Optional<Plan> plan) { }

    /** What a file of the plans' folder held when it was last written or read. @param sha256 of its bytes, in hex */
    public record Mark(String planId, String sha256) { }

    private final Database database;

    public SavedPlans(Database database) {
        this.database = database;
    }

    /** Of each plan the latest version that can be read, in the order of ids; deleted plans among them. */
    public List<Version> latest() {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select " + COLUMNS + " from saved_plan order by plan_id, version desc")) {
                List<Version> latest = new ArrayList<>();
                String done = "";
                try (ResultSet row = select.executeQuery()) {
                    while (row.next()) {
                        if (!row.getString(1).equals(done)) {
                            Version version = version(row);
                            done = version.plan().isPresent() ? version.id() : "";
                            version.plan().ifPresent(sound -> latest.add(version));
                        }
                    }
                }
                return latest;
            }
        });
    }

    /** The number of the last version of each plan, whether it can be read or not. */
    public Map<String, Integer> lastNumbers() {
        return database.read(connection -> {
            Map<String, Integer> last = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select plan_id, max(version) from saved_plan group by plan_id order by plan_id");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    last.put(row.getString(1), row.getInt(2));
                }
            }
            return last;
        });
    }

    /** Every version of a plan, newest first; none if there is no such plan. */
    public List<Version> versions(String id) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement("select " + COLUMNS
                    + " from saved_plan where plan_id = ? order by version desc")) {
                select.setString(1, id);
                List<Version> versions = new ArrayList<>();
                try (ResultSet row = select.executeQuery()) {
                    while (row.next()) {
                        versions.add(version(row));
                    }
                }
                return versions;
            }
        });
    }

    /** One version of a plan. */
    public Optional<Version> version(String id, int number) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement("select " + COLUMNS
                    + " from saved_plan where plan_id = ? and version = ?")) {
                select.setString(1, id);
                select.setInt(2, number);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(version(row)) : Optional.empty();
                }
            }
        });
    }

    private static Version version(ResultSet row) throws SQLException {
        String id = row.getString(1);
        int number = row.getInt(2);
        return new Version(id, number, Instant.ofEpochMilli(row.getLong(3)),
                new By(row.getString(4), row.getString(5)), plan(id, number, row.getString(6)));
    }

    private static Optional<Plan> plan(String id, int number, String text) {
        try {
            PlanReading reading = PlanFile.read(Json.read(text));
            Optional<Plan> plan = reading.ifSound().filter(p -> p.id().value().equals(id));
            if (plan.isEmpty()) {
                LOG.log(Level.WARNING, "version " + number + " of plan " + id + " cannot be read back: "
                        + reading.problems());
            }
            return plan;
        } catch (JsonProcessingException e) {
            LOG.log(Level.WARNING, "version " + number + " of plan " + id + " cannot be read back", e);
            return Optional.empty();
        }
    }

    /**
     * Keeps a plan as the next version of its id, durably. One that was deleted is there again.
     *
     * @param at whole milliseconds
     * @return the version as it will be read back
     * @throws CannotBeKept if it would not be read back as it is
     */
    public Version add(Plan plan, Instant at, By by) {
        String text = Json.text(PlanFile.write(plan));
        ReadBack.require(plan, () -> {
            PlanReading reading = PlanFile.read(Json.read(ReadBack.utf8(text)));
            return reading.ifSound().orElseThrow(() ->
                    new IllegalArgumentException(reading.problems().get(0).toString()));
        });
        String id = plan.id().value();
        return database.write(connection -> {
            int number = next(connection, id);
            Statements.change(connection, "insert into saved_plan (" + COLUMNS + ") values (?, ?, ?, ?, ?, ?)",
                    id, number, at.toEpochMilli(), by.who(), by.device(), text);
            Statements.change(connection, "delete from deleted_plan where plan_id = ?", id);
            return new Version(id, number, Instant.ofEpochMilli(at.toEpochMilli()), by, Optional.of(plan));
        });
    }

    private static int next(Connection connection, String id) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select coalesce(max(version), 0) + 1 from saved_plan where plan_id = ?")) {
            select.setString(1, id);
            try (ResultSet row = select.executeQuery()) {
                row.next();
                return row.getInt(1);
            }
        }
    }

    /** Marks a plan as deleted; its versions stay. */
    public void delete(PlanId id, Instant at) {
        database.write(connection -> Statements.change(connection, "insert into deleted_plan (plan_id, deleted_ms) "
                + "values (?, ?) on conflict do nothing", id.value(), at.toEpochMilli()));
    }

    /** Takes the mark away. @return whether there was one */
    public boolean restore(PlanId id) {
        return database.write(connection ->
                Statements.change(connection, "delete from deleted_plan where plan_id = ?", id.value())) > 0;
    }

    /** When each plan that is deleted was, by id. */
    public Map<String, Instant> deleted() {
        return database.read(connection -> {
            Map<String, Instant> deleted = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select plan_id, deleted_ms from deleted_plan order by deleted_ms desc, plan_id");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    deleted.put(row.getString(1), Instant.ofEpochMilli(row.getLong(2)));
                }
            }
            return deleted;
        });
    }

    /** What each file of the plans' folder held when it was last written or read, by its name. */
    public Map<String, Mark> files() {
        return database.read(connection -> {
            Map<String, Mark> files = new LinkedHashMap<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select file, plan_id, sha256 from plan_file order by file");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    files.put(row.getString(1), new Mark(row.getString(2), row.getString(3)));
                }
            }
            return files;
        });
    }

    public void mark(String file, Mark mark) {
        database.write(connection -> Statements.change(connection, "insert into plan_file (file, plan_id, sha256) "
                + "values (?, ?, ?) on conflict (file) do update set plan_id = excluded.plan_id, "
                + "sha256 = excluded.sha256", file, mark.planId(), mark.sha256()));
    }

    public void unmark(String file) {
        database.write(connection -> Statements.change(connection, "delete from plan_file where file = ?", file));
    }
}

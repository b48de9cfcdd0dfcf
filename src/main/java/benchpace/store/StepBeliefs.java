package benchpace.store;

import benchpace.pace.StepPrior;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What steps are expected to take, by plan and place, as the organiser accepted it from past classes; and what each
 * class started from, fixed when it begins, which stays as it was whatever is accepted or forgotten meanwhile.
 */
public final class StepBeliefs {
    private static final Logger LOG = System.getLogger(StepBeliefs.class.getName());
    private static final String FIXED = "";

    /**
     * What was accepted for a plan at a place.
     *
     * @param steps   by step id
     * @param classes how many classes taught it
     */
    public record Accepted(Map<String, StepPrior> steps, int classes, Instant at) {
        public Accepted {
            steps = Map.copyOf(steps);
        }
    }

    private final Database database;

    public StepBeliefs(Database database) {
        this.database = database;
    }

    /** What is in force for the next class of a plan at a place. */
    public Optional<Accepted> accepted(String planId, String place) {
        return database.read(connection -> {
            Map<String, StepPrior> steps = steps(connection, "select step_id, log_shift, log_variance, noise_variance "
                    + "from step_belief where plan_id = ? and place = ? order by step_id", planId, place);
            try (PreparedStatement select = connection.prepareStatement(
                    "select classes, accepted_ms from step_lesson where plan_id = ? and place = ?")) {
                select.setString(1, planId);
                select.setString(2, place);
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(new Accepted(steps, row.getInt(1),
                            Instant.ofEpochMilli(row.getLong(2)))) : Optional.empty();
                }
            }
        });
    }

    /** What lessons are kept by. @param place empty is "this room" */
    public record Key(String planId, String place) { }

    /** Every plan and place for which something is in force. */
    public List<Key> all() {
        return database.read(connection -> {
            List<Key> keys = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement(
                    "select plan_id, place from step_lesson order by plan_id, place");
                    ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    keys.add(new Key(row.getString(1), row.getString(2)));
                }
            }
            return keys;
        });
    }

    /** Puts what past classes taught in force, in place of what was accepted before. */
    public void accept(String planId, String place, Accepted lesson) {
        database.write(connection -> {
            remove(connection, planId, place);
            Statements.change(connection, "insert into step_lesson (plan_id, place, classes, accepted_ms) "
                    + "values (?, ?, ?, ?)", planId, place, lesson.classes(), lesson.at().toEpochMilli());
            for (Map.Entry<String, StepPrior> step : lesson.steps().entrySet()) {
                StepPrior prior = step.getValue();
                Statements.change(connection, "insert into step_belief (plan_id, place, step_id, log_shift, "
                        + "log_variance, noise_variance) values (?, ?, ?, ?, ?, ?)", planId, place, step.getKey(),
                        prior.meanLogShift(), prior.variance(), noise(prior));
            }
            return 0;
        });
    }

    /** The plan's own figures again. @return whether anything was in force */
    public boolean forget(String planId, String place) {
        return database.write(connection -> remove(connection, planId, place)) > 0;
    }

    /** What a class started from: fixed for that class, for good, if it is not. */
    public Map<String, StepPrior> startedFrom(String classId, String planId, String place) {
        return started(classId).orElseGet(() -> fix(classId, accepted(planId, place).map(Accepted::steps)
                .orElse(Map.of())));
    }

    /** What a class started from, if that is fixed already. */
    public Optional<Map<String, StepPrior>> started(String classId) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select 1 from class_belief where class_id = ? and step_id = '" + FIXED + "'")) {
                select.setString(1, classId);
                try (ResultSet row = select.executeQuery()) {
                    if (!row.next()) {
                        return Optional.empty();
                    }
                }
            }
            return Optional.of(steps(connection, "select step_id, log_shift, log_variance, noise_variance "
                    + "from class_belief where class_id = ? and step_id <> '" + FIXED + "'", classId));
        });
    }

    private Map<String, StepPrior> fix(String classId, Map<String, StepPrior> steps) {
        database.write(connection -> {
            int first = Statements.change(connection, "insert into class_belief (class_id, step_id) "
                    + "values (?, '" + FIXED + "') on conflict do nothing", classId);
            if (first > 0) {
                for (Map.Entry<String, StepPrior> step : steps.entrySet()) {
                    StepPrior prior = step.getValue();
                    Statements.change(connection, "insert into class_belief (class_id, step_id, log_shift, "
                            + "log_variance, noise_variance) values (?, ?, ?, ?, ?)", classId, step.getKey(),
                            prior.meanLogShift(), prior.variance(), noise(prior));
                }
            }
            return first;
        });
        return started(classId).orElseThrow();
    }

    private static Double noise(StepPrior prior) {
        return Double.isNaN(prior.noiseVariance()) ? null : Double.valueOf(prior.noiseVariance());
    }

    private static int remove(Connection connection, String planId, String place) throws SQLException {
        Statements.change(connection, "delete from step_belief where plan_id = ? and place = ?", planId, place);
        return Statements.change(connection, "delete from step_lesson where plan_id = ? and place = ?", planId, place);
    }

    private static Map<String, StepPrior> steps(Connection connection, String sql, String... keys)
            throws SQLException {
        Map<String, StepPrior> steps = new LinkedHashMap<>();
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            for (int i = 0; i < keys.length; i++) {
                select.setString(i + 1, keys[i]);
            }
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    double noise = row.getDouble(4);
                    noise = row.wasNull() ? Double.NaN : noise;
                    try {
                        steps.put(row.getString(1), new StepPrior(row.getDouble(2), row.getDouble(3), noise));
                    } catch (IllegalArgumentException e) { // the plan's own figure does for this step
                        LOG.log(Level.WARNING, "what step \"" + row.getString(1) + "\" takes cannot be read back", e);
                    }
                }
            }
        }
        return steps;
    }
}

package benchpace.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Runs single statements. */
final class Statements {
    private Statements() { }

    /** Runs a statement that changes rows. @param values its parameters, in order @return how many rows it changed */
    static int change(Connection connection, String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            return statement.executeUpdate();
        }
    }
}

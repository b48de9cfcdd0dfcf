package benchpace.store.sqlite;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Runs single statements. */
public final class Statements {
    private Statements() { }

    /** Runs a statement that changes rows. @param values its parameters, in order @return how many rows it changed */
    public static int change(Connection connection, String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            return statement.executeUpdate();
        }
    }
}

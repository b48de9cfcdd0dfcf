package benchpace.store;

import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Hashes;
import benchpace.store.sqlite.Statements;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which seat of which class a guest's code stands for, kept over restarts as {@link Hashes} of the codes. */
public final class SeatCodes {
    private final Database database;

    /** One seat of one class. */
    public record Place(String classId, int seat) { }

    public SeatCodes(Database database) {
        this.database = database;
    }

    /** @param codes by seat number */
    public void add(String classId, Map<Integer, String> codes) {
        database.write(connection -> {
            for (Map.Entry<Integer, String> code : codes.entrySet()) {
                Statements.change(connection, "insert into seat_code (code_hash, class_id, seat) values (?, ?, ?) "
                        + "on conflict do nothing", Hashes.of(code.getValue()), classId, code.getKey());
            }
            return 0;
        });
    }

    public Optional<Place> place(String code) {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement(
                    "select class_id, seat from seat_code where code_hash = ?")) {
                select.setString(1, Hashes.of(code));
                try (ResultSet row = select.executeQuery()) {
                    return row.next() ? Optional.of(new Place(row.getString(1), row.getInt(2))) : Optional.empty();
                }
            }
        });
    }

    /** The classes that have any. */
    public List<String> classes() {
        return database.read(connection -> {
            try (PreparedStatement select = connection.prepareStatement("select distinct class_id from seat_code");
                    ResultSet row = select.executeQuery()) {
                List<String> classes = new ArrayList<>();
                while (row.next()) {
                    classes.add(row.getString(1));
                }
                return classes;
            }
        });
    }

    public void removeOf(String classId) {
        database.write(connection -> Statements.change(connection, "delete from seat_code where class_id = ?",
                classId));
    }
}

package benchpace.store.backup;

import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.store.Forgotten;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Guests who were forgotten after a backup was made would be back with it. Those whom the folder that it replaces has
 * forgotten are forgotten in it, too; where that folder is gone nobody knows of them any more.
 */
final class ForgottenAgain {
    private static final Logger LOG = System.getLogger(ForgottenAgain.class.getName());

    private ForgottenAgain() { }

    /** @param folder that the draft is to take the place of */
    static void in(Path draft, Path folder) {
        Map<String, Forgotten> before = forgotten(folder);
        try (Database database = Database.ofCopy(draft)) {
            SqliteEventLog log = new SqliteEventLog(database);
            before.keySet().removeAll(log.forgotten().keySet());
            for (Map.Entry<String, Forgotten> each : before.entrySet()) {
                forget(log, each.getKey(), each.getValue());
            }
        }
    }

    /** A class that cannot be read back keeps its words, as on the board, and nothing else from being restored. */
    private static void forget(SqliteEventLog log, String classId, Forgotten forgotten) {
        List<Recorded> events;
        try {
            events = log.read(classId);
        } catch (StoreException e) {
            LOG.log(Level.WARNING, "class " + classId + " cannot be read, so its guests cannot be forgotten again", e);
            return;
        }
        if (!events.isEmpty()) {
            log.forgetGuests(classId, forgotten, Nameless.ofGuests().all(events));
        }
    }

    /** None where there is no store, or none that can be read. */
    private static Map<String, Forgotten> forgotten(Path folder) {
        if (!Files.isRegularFile(folder.resolve(Database.FILE))) {
            return new LinkedHashMap<>();
        }
        try (Database old = Database.besideBoard(folder)) {
            return new LinkedHashMap<>(new SqliteEventLog(old).forgotten());
        } catch (StoreException e) {
            LOG.log(Level.DEBUG, "what was forgotten in the data that are replaced cannot be read", e);
            return new LinkedHashMap<>();
        }
    }
}

package benchpace.store.sqlite;

import java.nio.file.Path;
import org.sqlite.SQLiteJDBCLoader;

/**
 * SQLite itself, which comes within the program and has to be unpacked into a folder to be run: that for temporary
 * files, or the data folder where that one is full, missing or may not hold programs.
 */
final class SqliteLibrary {
    private static final String FOLDER = "org.sqlite.tmpdir";

    private SqliteLibrary() { }

    /** @throws StoreException if it can be unpacked in neither */
    static synchronized void load(Path data) {
        String first = System.getProperty(FOLDER, System.getProperty("java.io.tmpdir"));
        if (loads()) {
            return;
        }
        String before = System.setProperty(FOLDER, data.toString());
        if (loads()) {
            return;
        }
        if (before == null) {
            System.clearProperty(FOLDER);
        } else {
            System.setProperty(FOLDER, before);
        }
        throw new StoreException("The database's own program can be unpacked neither in " + first + " nor in " + data
                + ": make room there, or name another folder with java -D" + FOLDER + "=FOLDER.");
    }

    private static boolean loads() {
        try {
            return SQLiteJDBCLoader.initialize();
        } catch (Exception | LinkageError e) { // whatever it is, another folder may do
            return false;
        }
    }
}

package benchpace;

import benchpace.store.sqlite.Copy;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * All that a data folder holds as it stood in one moment, in a copy that is brought up to date and is gone once this is
 * closed. A board may be open on the folder, which stays as it is.
 */
final class DataCopy implements AutoCloseable {
    private final Draft draft;
    private final Database database;

    private DataCopy(Draft draft, Database database) {
        this.draft = draft;
        this.database = database;
    }

    /**
     * Makes one.
     *
     * @throws Stop           if there are no data of a board
     * @throws StoreException in one plain sentence; {@link benchpace.store.sqlite.NoRoom} if that is the copy's fault
     */
    static DataCopy of(Path data) {
        Path store = data.toAbsolutePath().normalize().resolve(Database.FILE);
        if (!Files.isRegularFile(store)) {
            throw new Stop(Main.BAD_INPUT, "There are no data of a board in " + data + " (no file " + Database.FILE
                    + ").");
        }
        Draft draft = Draft.temporary();
        try {
            Copy copy = Copy.of(store, draft.file(), bytes -> { }, () -> false);
            requireVersion(store, copy.version());
            copy.bringUpToDate();
            return new DataCopy(draft, Database.ofCopy(draft.file()));
        } catch (RuntimeException | Error e) {
            draft.close();
            throw e;
        }
    }

    private static void requireVersion(Path store, int version) {
        if (version > Copy.newestVersion()) {
            throw new StoreException("The data in " + store + " were written by a newer Benchpace: please use that one "
                    + "for this.");
        }
        if (version < 1) {
            throw new StoreException("The file " + store + " is a database of another program.");
        }
    }

    /** To be read. */
    Database database() {
        return database;
    }

    @Override public void close() {
        database.close();
        draft.close();
    }
}

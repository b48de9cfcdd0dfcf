package benchpace.store.sqlite;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.Set;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What an error of a file means to whoever runs the board. */
final class FileFault {
    // Primary result codes, https://sqlite.org/rescode.html; extended codes carry them in their low byte.
    private static final int SQLITE_PERM = 3;
    private static final int SQLITE_BUSY = 5;
    private static final int SQLITE_LOCKED = 6;
    private static final int SQLITE_READONLY = 8;
    private static final int SQLITE_IOERR = 10;
    private static final int SQLITE_CORRUPT = 11;
    private static final int SQLITE_FULL = 13;
    private static final int SQLITE_CANTOPEN = 14;
    private static final int SQLITE_NOTADB = 26;
    private static final Set<SQLiteErrorCode> WRITING = EnumSet.of(SQLiteErrorCode.SQLITE_IOERR_WRITE,
            SQLiteErrorCode.SQLITE_IOERR_FSYNC, SQLiteErrorCode.SQLITE_IOERR_TRUNCATE,
            SQLiteErrorCode.SQLITE_IOERR_SHMSIZE, SQLiteErrorCode.SQLITE_IOERR_DIR_FSYNC);

    private FileFault() { }

    static StoreException of(Path file, SQLException e) {
        if (e instanceof SQLiteException sqlite) {
            SQLiteErrorCode code = sqlite.getResultCode();
            switch (code.code & 0xff) {
                case SQLITE_FULL:
                    return new NoRoom("The disk of " + file + " is full: nothing was written.", e);
                case SQLITE_IOERR:
                    if (WRITING.contains(code)) {
                        return new NoRoom("The disk of " + file + " takes no more, it may be full or broken: "
                                + "nothing was written.", e);
                    }
                    break;
                case SQLITE_NOTADB:
                case SQLITE_CORRUPT:
                    return damaged(file, e);
                case SQLITE_CANTOPEN:
                case SQLITE_PERM:
                case SQLITE_READONLY:
                    return new StoreException("The file " + file + " cannot be opened for reading and writing.", e);
                case SQLITE_BUSY:
                case SQLITE_LOCKED:
                    return new StoreException("The file " + file + " is held by another program.", e);
                default:
                    break;
            }
        }
        return new StoreException("The file " + file + " cannot be read or written.", e);
    }

    /** What it means that a copy could not be made: of the place it was to go to, or of what it was made of. */
    static StoreException ofCopying(Path original, Path target, SQLException e) {
        int code = e instanceof SQLiteException sqlite ? sqlite.getResultCode().code & 0xff : 0;
        return switch (code) {
            case SQLITE_FULL, SQLITE_IOERR, SQLITE_CANTOPEN, SQLITE_PERM, SQLITE_READONLY -> of(target, e);
            case SQLITE_BUSY, SQLITE_LOCKED -> of(original, e);
            default -> damaged(original, e);
        };
    }

    static StoreException damaged(Path file, SQLException cause) {
        return new DamagedFile("The file " + file + " is damaged or no database: please put back a copy of it, "
                + "or move it away to start anew.", cause);
    }
}

package benchpace.store.sqlite;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import org.sqlite.SQLiteConfig;

/**
 * The one SQLite file of a data folder. A single connection writes, a transaction at a time, on disk before
 * {@link #write} returns (write-ahead log and {@code synchronous=FULL}, as https://sqlite.org/pragma.html says of
 * them); others read beside it and never wait for it. Safe for use by many threads.
 */
public final class Database implements AutoCloseable {
    /** The file's name in the data folder. */
    public static final String FILE = "benchpace.db";
    private static final Logger LOG = System.getLogger(Database.class.getName());
    private static final int BUSY_MILLIS = 5_000;
    private static final int BRIEFLY_BUSY_MILLIS = 100;
    private static final int IDLE_READERS = 4;

    private final Path file;
    private final Optional<FolderLock> folderLock;
    private final boolean copy;
    private final ReentrantLock writing = new ReentrantLock();
    private final Deque<Connection> idleReaders = new ArrayDeque<>();
    private final List<String> told = new ArrayList<>();
    private Connection writer;
    private boolean closed;

    private Database(Path file, Optional<FolderLock> folderLock, boolean copy) {
        this.file = file;
        this.copy = copy;
        this.folderLock = folderLock;
    }

    /** What was amiss with the files and is worth a sentence to whoever starts the board, although it goes on. */
    public List<String> told() {
        return List.copyOf(told);
    }

    /** Something to do with a connection, which stays open and must not be kept. */
    public interface Work<T> {
        T with(Connection connection) throws SQLException;
    }

    /**
     * Opens the data of a folder, making both if need be, and brings the tables up to date.
     *
     * @throws StoreException in one plain sentence: cannot be made, written or read, in use, damaged, newer than this
     */
    public static Database open(Path folder) {
        Path absolute = folder.toAbsolutePath().normalize();
        FolderLock lock = FolderLock.of(absolute);
        Database database = new Database(absolute.resolve(FILE), Optional.of(lock), false);
        try {
            SqliteLibrary.load(absolute);
            new Replacing(absolute).finish().ifPresent(done -> database.told.add(done.sentence()));
            new Leftovers(database.file).look().ifPresent(database.told::add);
            database.writer = database.connect(false);
            database.check();
            Migrations.apply(database.writer, database.file.toString());
            if (!database.told.isEmpty()) {
                database.emptyWriteAheadLog(); // what was told and kept once is not told again
            }
            List.of("", "-wal", "-shm").forEach(of -> OwnerOnly.file(absolute.resolve(FILE + of)));
            return database;
        } catch (SQLException e) {
            database.close();
            throw FileFault.of(database.file, e);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /**
     * A single file that nobody writes, such as a copy of somebody's data: only to be read, and left just as it is.
     *
     * @throws StoreException from each reading if it cannot be, in one plain sentence
     */
    public static Database ofCopy(Path file) {
        return new Database(file.toAbsolutePath().normalize(), Optional.empty(), true);
    }

    /** The data of a folder beside a board that may be open on it: for a few words to be written down. */
    public static Database besideBoard(Path folder) {
        return new Database(folder.toAbsolutePath().normalize().resolve(FILE), Optional.empty(), false);
    }

    private Connection connect(boolean onlyReads) throws SQLException {
        if (copy) {
            return Copy.connect(file, onlyReads ? Copy.Use.LOOK : Copy.Use.CHANGE);
        }
        if (folderLock.isEmpty() && onlyReads) { // whose closing leaves what another board left as it is
            return Copy.connect(file, Copy.Use.LOOK_BESIDE_OTHERS);
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(BUSY_MILLIS);
        config.enforceForeignKeys(true);
        config.setGetGeneratedKeys(false); // else each insert asks for its row's number, which nobody wants
        Connection connection = config.createConnection(Copy.address(file));
        try (Statement statement = connection.createStatement()) {
            // what is erased is overwritten with zeros, https://sqlite.org/pragma.html#pragma_secure_delete
            statement.execute(onlyReads ? "pragma query_only = on" : "pragma secure_delete = on");
        }
        return connection;
    }

    /** Reads through the whole file once: damage is told at the start of an evening, not in the middle of it. */
    private void check() throws SQLException {
        try (Statement statement = writer.createStatement();
                ResultSet row = statement.executeQuery("pragma integrity_check(1)")) {
            if (!"ok".equals(row.getString(1))) {
                throw FileFault.damaged(file, null);
            }
        }
    }

    /**
     * Runs {@code work} in one transaction. When this returns, what it wrote survives a power cut; when it throws,
     * nothing was written, and the next one may try again.
     *
     * @throws StoreException if the file fails; whatever {@code work} itself throws passes through
     */
    public <T> T write(Work<T> work) {
        writing.lock();
        try {
            requireWriter();
            writer.setAutoCommit(false);
            T result = work.with(writer);
            writer.commit();
            writer.setAutoCommit(true);
            return result;
        } catch (SQLException e) {
            abandon();
            throw FileFault.of(file, e);
        } catch (RuntimeException | Error e) {
            abandon();
            throw e;
        } finally {
            writing.unlock();
        }
    }

    /**
     * Runs {@code work} of a single statement that changes something, which is a transaction of its own: the same
     * promises as {@link #write}, and the way of a tap is shorter.
     */
    public <T> T writeOne(Work<T> work) {
        writing.lock();
        try {
            requireWriter();
            return work.with(writer);
        } catch (SQLException e) {
            closeQuietly(writer); // nothing is to be taken back, and a new one begins well
            writer = null;
            throw FileFault.of(file, e);
        } finally {
            writing.unlock();
        }
    }

    /**
     * Brings everything into the file itself and cuts the write-ahead log to nothing, so that what was erased does not
     * stand there any more. Whatever comes of it, what was written before stays written. A reader under way may keep
     * it; then the next call, or closing, does it.
     *
     * @return whether it is empty now; it does not wait long for that, as taps wait meanwhile
     */
    public boolean emptyWriteAheadLog() {
        writing.lock();
        try {
            return writer != null && emptied(writer);
        } finally {
            writing.unlock();
        }
    }

    private static boolean emptied(Connection connection) {
        try (Statement statement = connection.createStatement()) {
            statement.execute("pragma busy_timeout = " + BRIEFLY_BUSY_MILLIS);
            try (ResultSet row = statement.executeQuery("pragma wal_checkpoint(truncate)")) {
                return row.next() && row.getInt(1) == 0;
            } finally {
                statement.execute("pragma busy_timeout = " + BUSY_MILLIS);
            }
        } catch (SQLException e) {
            LOG.log(Level.WARNING, "the write-ahead log could not be emptied; it is tried again later", e);
            return false;
        }
    }

    /**
     * Writes the whole file anew, so that it holds nothing but what can be read from it, and empties the write-ahead
     * log. Whoever writes waits; whoever reads goes on (https://sqlite.org/lang_vacuum.html).
     *
     * @return whether the log is empty, too, as after {@link #emptyWriteAheadLog}
     * @throws StoreException if the file fails or the disk has no room for a second one: all stays as it was
     */
    public boolean rewrite() {
        writing.lock();
        try {
            requireWriter();
            try (Statement statement = writer.createStatement()) {
                statement.executeUpdate("vacuum");
            }
            return emptied(writer);
        } catch (SQLException e) {
            abandon();
            throw FileFault.of(file, e);
        } finally {
            writing.unlock();
        }
    }

    /** How large the file is, in bytes. */
    public long bytes() {
        return read(connection -> {
            try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(
                    "select page_count * page_size from pragma_page_count(), pragma_page_size()")) {
                return row.getLong(1);
            }
        });
    }

    private void requireWriter() throws SQLException {
        if (closed) {
            throw new StoreException("The data in " + file + " is closed.");
        }
        if (writer == null) {
            writer = connect(false);
        }
    }

    /** A connection that will not even roll back is thrown away; closing it rolls back. */
    private void abandon() {
        if (writer == null) {
            return;
        }
        try {
            writer.rollback();
            writer.setAutoCommit(true);
        } catch (SQLException broken) {
            closeQuietly(writer);
            writer = null;
        }
    }

    /**
     * Runs {@code work} on a connection that only reads.
     *
     * @throws StoreException if the file fails; whatever {@code work} itself throws passes through
     */
    public <T> T read(Work<T> work) {
        Connection reader = null;
        boolean sound = false;
        try {
            reader = borrow();
            T result = work.with(reader);
            sound = true;
            return result;
        } catch (SQLException e) {
            throw FileFault.of(file, e);
        } finally {
            giveBack(reader, sound);
        }
    }

    private Connection borrow() throws SQLException {
        synchronized (idleReaders) {
            if (closed) {
                throw new StoreException("The data in " + file + " is closed.");
            }
            if (!idleReaders.isEmpty()) {
                return idleReaders.pop();
            }
        }
        return connect(true);
    }

    private void giveBack(Connection reader, boolean sound) {
        synchronized (idleReaders) {
            if (reader != null && sound && !closed && idleReaders.size() < IDLE_READERS) {
                idleReaders.push(reader);
                return;
            }
        }
        closeQuietly(reader);
    }

    private static void closeQuietly(Connection connection) {
        if (connection == null) {
            return;
        }
        try {
            connection.close();
        } catch (SQLException ignored) {
            // everything that was promised is on disk already
        }
    }

    /** Lets a write that is under way finish first. */
    @Override public void close() {
        writing.lock();
        try {
            synchronized (idleReaders) {
                closed = true;
                idleReaders.forEach(Database::closeQuietly);
                idleReaders.clear();
            }
            closeQuietly(writer);
            writer = null;
            folderLock.ifPresent(FolderLock::close);
        } finally {
            writing.unlock();
        }
    }
}

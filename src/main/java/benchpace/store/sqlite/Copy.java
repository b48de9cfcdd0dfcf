package benchpace.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongConsumer;
import org.sqlite.ProgressHandler;
import org.sqlite.SQLiteConfig;

/**
 * A copy of a database that is one file, and nobody else's while it is worked on. It is made by {@code VACUUM INTO}
 * (https://sqlite.org/lang_vacuum.html): one reading of the original as it stood in one moment, which holds up nobody
 * who writes meanwhile; and only what counts is copied, so that no erased byte goes along.
 */
public final class Copy {
    /** Steps of SQLite's machine between two looks at how far it is: some milliseconds. */
    private static final int STEPS = 20_000;
    private static final int BUSY_MILLIS = 5_000;

    private final Path file;

    /** What a connection is for. */
    enum Use {
        /** The file is read as it lies there; not even a lock is put on it. */
        LOOK,
        /** What others write is read, too. */
        LOOK_BESIDE_OTHERS,
        CHANGE
    }

    /** @param file a copy that there is */
    public Copy(Path file) {
        this.file = file;
    }

    /**
     * Makes one.
     *
     * @param original may be in use
     * @param target   made here, for the owner only; whatever comes of it, taking it away is the caller's
     * @param copied   told now and then how many bytes there are
     * @param stop     asked now and then; if so, the copy is given up
     * @throws StoreException in one plain sentence
     */
    public static Copy of(Path original, Path target, LongConsumer copied, BooleanSupplier stop) {
        return of(original, Use.LOOK_BESIDE_OTHERS, target, copied, stop);
    }

    /** The same of a file that nobody changes meanwhile; nothing is written beside it. */
    public static Copy ofStill(Path original, Path target, LongConsumer copied, BooleanSupplier stop) {
        return of(original, Use.LOOK, target, copied, stop);
    }

    private static Copy of(Path original, Use use, Path target, LongConsumer copied, BooleanSupplier stop) {
        try {
            Files.createFile(target);
            OwnerOnly.file(target);
        } catch (IOException e) {
            throw new StoreException("The file " + target + " cannot be written.", e);
        }
        Copy copy = new Copy(target);
        try (Connection connection = connect(original, use)) {
            ProgressHandler.setHandler(connection, STEPS, new ProgressHandler() {
                @Override protected int progress() {
                    copied.accept(copy.size());
                    return stop.getAsBoolean() ? 1 : 0;
                }
            });
            try (PreparedStatement vacuum = connection.prepareStatement("vacuum into ?")) {
                vacuum.setString(1, target.toAbsolutePath().toString());
                vacuum.execute();
            }
            ProgressHandler.clearHandler(connection);
            return copy;
        } catch (SQLException e) {
            throw stop.getAsBoolean() ? new StoreException("The copy of " + original + " was given up.", e)
                    : FileFault.ofCopying(original, target, e);
        }
    }

    static Connection connect(Path file, Use use) throws SQLException {
        SqliteLibrary.load(file.toAbsolutePath().getParent());
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(use != Use.CHANGE);
        config.setTransactionMode(SQLiteConfig.TransactionMode.DEFERRED);
        config.setBusyTimeout(BUSY_MILLIS);
        Connection connection = config.createConnection(address(file) + (use == Use.LOOK ? "?immutable=1" : ""));
        try (Statement statement = connection.createStatement()) {
            // what stands in a file from elsewhere is not trusted, https://sqlite.org/security.html
            statement.execute("pragma trusted_schema = off");
            statement.execute("pragma cell_size_check = on");
            if (use == Use.CHANGE) { // it counts only once it was flushed and looked at
                statement.execute("pragma journal_mode = memory");
                statement.execute("pragma synchronous = off");
                statement.execute("pragma secure_delete = on");
            }
        } catch (SQLException e) {
            connection.close();
            throw e;
        }
        return connection;
    }

    /** A file: address, because a plain name is cut at a question mark. */
    static String address(Path file) {
        return "jdbc:sqlite:" + file.toAbsolutePath().toUri().toString().replaceFirst("^file:/+", "file:///");
    }

    private long size() {
        try {
            return Files.size(file);
        } catch (IOException e) { // told another time
            return 0;
        }
    }

    /** Runs {@code work}, which may change the copy; if it throws the copy is worth nothing. */
    public <T> T change(Database.Work<T> work) {
        return with(Use.CHANGE, work);
    }

    /** Runs {@code work}, which only reads. */
    public <T> T look(Database.Work<T> work) {
        return with(Use.LOOK, work);
    }

    private <T> T with(Use use, Database.Work<T> work) {
        try (Connection connection = connect(file, use)) {
            return work.with(connection);
        } catch (SQLException e) {
            throw FileFault.of(file, e);
        }
    }

    /** How many migrations its tables have seen. */
    public int version() {
        return look(Migrations::version);
    }

    /** How many there are. */
    public static int newestVersion() {
        return Migrations.FILES.size();
    }

    /** The first thing in it that a board of its version would not have made, or lacks, as SQLite calls it. */
    public Optional<String> oddity(String but) {
        return look(connection -> Schema.oddity(connection, but));
    }

    /** Takes out of it what no board made, tables, views and triggers of other programs, and puts in what it lacks. */
    public void tidy() {
        change(connection -> {
            Schema.tidy(connection);
            return 0;
        });
    }

    /** Whether it is sound as SQLite sees it: every page, every index. */
    public boolean isSound() {
        return look(connection -> {
            try (Statement statement = connection.createStatement();
                    ResultSet row = statement.executeQuery("pragma integrity_check(1)")) {
                return "ok".equals(row.getString(1));
            }
        });
    }

    /** Brings its tables up to date. @throws StoreException if they cannot be */
    public void bringUpToDate() {
        change(connection -> {
            Migrations.apply(connection, file.toString());
            return 0;
        });
    }

    /** When this returns, the copy survives a power cut. */
    public void flush() {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        } catch (IOException e) {
            throw new StoreException("The disk of " + file + " takes no more, it may be full or broken.", e);
        }
    }
}

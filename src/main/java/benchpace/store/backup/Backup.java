package benchpace.store.backup;

import benchpace.store.sqlite.Copy;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.FolderLock;
import benchpace.store.sqlite.Leftovers;
import benchpace.store.sqlite.Replacing;
import benchpace.store.sqlite.Statements;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Makes a backup of a data folder, whether or not a board is open on it: all as it stood in one moment, up to the last
 * tap that was acknowledged before. It is made beside its place under another name, flushed, read back whole by the
 * board's own readers, and only then moved there: whatever fails, what was there before stays and nothing half is left
 * ({@link Draft}).
 */
public final class Backup {
    /** How the names of backups end. */
    public static final String ENDING = ".backup";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmm", Locale.ROOT);

    private final Path store;
    private final String program;
    private final boolean boardOpen;

    /**
     * One that was made.
     *
     * @param bytes its size
     * @param told  what is amiss with the data it was made of, in a sentence
     */
    public record Made(Path file, Manifest manifest, long bytes, Optional<String> told) { }

    private Backup(Path folder, String program, boolean boardOpen) {
        this.store = folder.toAbsolutePath().normalize().resolve(Database.FILE);
        this.program = program;
        this.boardOpen = boardOpen;
    }

    /** @param program the version of the program that makes it */
    public Backup(Path folder, String program) {
        this(folder, program, false);
    }

    /**
     * Of the data of a board that is open in this very program, whose lock is not touched: a file that is closed here
     * loses the locks of the whole program (fcntl(2) of POSIX).
     */
    public static Backup ofOpenBoard(Path folder, String program) {
        return new Backup(folder, program, true);
    }

    /** "benchpace-2027-03-04-1830.backup": sorted by name, the newest is the last. */
    public static String suggestedName(Instant at, ZoneId zone) {
        return "benchpace-" + STAMP.format(at.atZone(zone)) + ENDING;
    }

    /**
     * Makes one.
     *
     * @param target  where to; not in a folder that is missing
     * @param replace whether a file that is there may be replaced
     * @throws StoreException in one plain sentence
     */
    public Made make(Path target, boolean replace, Instant now, Progress progress) {
        requireStore();
        requirePlace(target, replace);
        Optional<String> told = leftovers();
        try (Draft draft = Draft.beside(target)) {
            Manifest manifest = fill(draft.file(), now, progress);
            move(draft.file(), target, replace);
            return new Made(target, manifest, Files.size(target), told);
        } catch (IOException e) {
            throw new StoreException("The file " + target + " cannot be written.", e);
        }
    }

    private void requireStore() {
        if (!Files.isRegularFile(store)) {
            throw new NotAsked("There are no data of a board in " + store.getParent() + " (no file " + Database.FILE
                    + "), so there is nothing to copy.");
        }
    }

    private void requirePlace(Path target, boolean replace) {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new NotAsked("There is no folder " + folder + ": please make it, or plug in the disk it is on.");
        }
        if (Files.isDirectory(target)) {
            throw new NotAsked("There is a folder at " + target + ": please name a file in it.");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new NotAsked("What stands at " + target + " is no file that could be replaced: please name another.");
        }
        if (isAmongTheData(target, folder)) {
            throw new NotAsked("The file " + target + " would stand among the data themselves: please name another, "
                    + "best on another disk; in that folder only names that end in " + ENDING + " are free.");
        }
        if (!replace && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw there(target);
        }
    }

    /** Whether a board could take it for its own, or lose its own to it. */
    private boolean isAmongTheData(Path target, Path folder) {
        try {
            return folder.toRealPath().startsWith(store.getParent().toRealPath())
                    && !target.getFileName().toString().endsWith(ENDING);
        } catch (IOException e) {
            throw new StoreException("The folder " + folder + " cannot be read.", e);
        }
    }

    private static NotAsked there(Path target) {
        return new NotAsked("There is a file " + target + " already: name another, or add --replace.");
    }

    /** What the last board left behind is only looked at where none is open; who opens the folder next is told, too. */
    private Optional<String> leftovers() {
        if (boardOpen) {
            return Optional.empty();
        }
        try (FolderLock lock = FolderLock.of(store.getParent())) {
            new Replacing(store.getParent()).finish();
            return new Leftovers(store).whole() ? Optional.empty() : Optional.of("Records beside " + store
                    + " are damaged and cannot be read: the newest taps may be missing, in the backup, too.");
        } catch (StoreException inUse) {
            return Optional.empty();
        }
    }

    private Manifest fill(Path draft, Instant now, Progress progress) {
        long size = size(store);
        Copy copy = Copy.of(store, draft, done -> progress.at(Progress.Stage.COPYING, done, size), progress::stopped);
        int schema = copy.version();
        if (schema < 1 || schema > Copy.newestVersion()) {
            throw new StoreException(schema > Copy.newestVersion() ? "The data in " + store + " were written by a "
                    + "newer Benchpace: please make the backup with that one."
                    : "The file " + store + " is a database of another program.");
        }
        copy.tidy();
        copy.change(Backup::takeWaysInOut);
        Manifest manifest = new Manifest(program, schema, now, holdings(copy, draft, progress));
        copy.change(connection -> {
            manifest.write(connection);
            Statements.change(connection, "pragma application_id = " + BackupFile.APPLICATION_ID);
            Manifest.seal(connection, RowDigest.of(connection, Manifest.TABLE, progress));
            return 0;
        });
        copy.flush();
        return BackupFile.check(draft, progress);
    }

    private static int takeWaysInOut(Connection connection) throws SQLException {
        for (String table : BackupFile.WAYS_IN) {
            if (isThere(connection, table)) {
                Statements.change(connection, "delete from " + table);
            }
        }
        for (String key : isThere(connection, "setting") ? BackupFile.OLDER_WAYS_IN : List.<String>of()) {
            Statements.change(connection, "delete from setting where key = ?", key);
        }
        return 0;
    }

    /** Older boards have fewer tables. */
    private static boolean isThere(Connection connection, String table) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select 1 from sqlite_master where type = 'table' and name = ?")) {
            select.setString(1, table);
            try (ResultSet row = select.executeQuery()) {
                return row.next();
            }
        }
    }

    /** Read by this program's readers: older data are brought up to date for that, on a copy of their own. */
    private Holdings holdings(Copy copy, Path draft, Progress progress) {
        if (copy.version() == Copy.newestVersion()) {
            return ReadThrough.of(draft, progress);
        }
        Path newer = draft.resolveSibling(draft.getFileName() + "-newer");
        Copy.ofStill(draft, newer, done -> { }, progress::stopped).bringUpToDate();
        return ReadThrough.of(newer, progress);
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new StoreException("The file " + file + " cannot be read.", e);
        }
    }

    private static void move(Path draft, Path target, boolean replace) throws IOException {
        try {
            if (replace) {
                Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(draft, target);
            }
        } catch (FileAlreadyExistsException e) {
            throw there(target);
        }
    }
}

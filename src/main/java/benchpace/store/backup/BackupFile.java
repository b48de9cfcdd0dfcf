package benchpace.store.backup;

import benchpace.store.sqlite.Copy;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Supplier;

/**
 * A backup: a database of its own kind ({@code application_id}, https://sqlite.org/fileformat2.html, 1.3), with the
 * tables of a board, a {@link Manifest}, and a {@link RowDigest} over all of it. What lets anybody in is not in it.
 */
public final class BackupFile {
    /** "BPbk" in ASCII. */
    static final int APPLICATION_ID = 0x4250626b;
    /** Of these the tables are there, and empty: a backup lets nobody in. */
    static final List<String> WAYS_IN = List.of("session", "pairing_key", "seat_code");
    /** What boards kept before there were tables for it, see {@code OlderSecrets}. */
    static final List<String> OLDER_WAYS_IN = List.of("helper-key", "guest-secret");
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int HEADER = 100;

    private BackupFile() { }

    /**
     * Looks at a file whether it is a backup, whole and as it was made, that this program can restore.
     *
     * @throws BadBackup in one plain sentence if not
     */
    public static Manifest check(Path file, Progress progress) {
        requireKind(file);
        return content(new Copy(file), file, progress);
    }

    /** @throws BadBackup if a glance tells that the file is none, or none that this program can restore */
    static void requireKind(Path file) {
        requireHeader(file);
        int schema = unlessDamaged(file, () -> new Copy(file).version());
        if (schema > Copy.newestVersion()) {
            throw new BadBackup("The backup " + file + " was made by a newer Benchpace (its data are of version "
                    + schema + ", this one knows " + Copy.newestVersion() + "): please restore it with that one.");
        }
    }

    /** What the content of a backup says of itself, if that is true. @param file as it is called in a refusal */
    static Manifest content(Copy copy, Path file, Progress progress) {
        return unlessDamaged(file, () -> {
            int schema = copy.version();
            Manifest manifest = copy.look(Manifest::read).orElseThrow(() -> damaged(file, null));
            if (schema < 1 || manifest.schema() != schema || copy.oddity(Manifest.TABLE).isPresent()
                    || !copy.isSound() || !copy.look(connection -> isSealed(connection, progress))) {
                throw damaged(file, null);
            }
            return manifest;
        });
    }

    static <T> T unlessDamaged(Path file, Supplier<T> work) {
        try {
            return work.get();
        } catch (Stopped | BadBackup e) {
            throw e;
        } catch (StoreException e) {
            throw damaged(file, e);
        }
    }

    private static boolean isSealed(Connection connection, Progress progress) throws SQLException {
        String digest = RowDigest.of(connection, Manifest.TABLE, progress);
        return Manifest.seal(connection).filter(digest::equals).isPresent();
    }

    static BadBackup damaged(Path file, StoreException cause) {
        return new BadBackup("The backup " + file + " is damaged: it is not as it was made. Please take another copy "
                + "of it, or an earlier one. Nothing was changed.", cause);
    }

    /** What can be told before SQLite is asked. */
    private static void requireHeader(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadBackup("There is a folder at " + file + ": please name the backup in it.");
        }
        if (!Files.exists(file)) {
            throw new BadBackup("There is no file " + file + ".");
        }
        if (!Files.isRegularFile(file)) {
            throw new BadBackup("What stands at " + file + " is no file.");
        }
        ByteBuffer header = header(file);
        if (header.capacity() == 0) {
            throw new BadBackup("The file " + file + " is empty, so nothing can be restored from it.");
        }
        if (header.capacity() < HEADER || !header.slice(0, MAGIC.length).equals(ByteBuffer.wrap(MAGIC))) {
            throw new BadBackup("The file " + file + " is no backup of Benchpace.");
        }
        if (header.getInt(68) != APPLICATION_ID) {
            throw new BadBackup(isBoards(file) ? "The file " + file + " is a board's own data, no backup of it: a "
                    + "folder that holds it as benchpace.db can be named with --data."
                    : "The file " + file + " is a database of another program, no backup of Benchpace.");
        }
        requireLength(file, header);
    }

    private static ByteBuffer header(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return ByteBuffer.wrap(in.readNBytes(HEADER));
        } catch (IOException e) {
            throw new BadBackup("The file " + file + " cannot be read.", e);
        }
    }

    private static boolean isBoards(Path file) {
        Copy copy = new Copy(file);
        try {
            int version = copy.version();
            return version >= 1 && version <= Copy.newestVersion() && copy.oddity("").isEmpty();
        } catch (StoreException e) {
            return false;
        }
    }

    private static void requireLength(Path file, ByteBuffer header) {
        long page = header.getShort(16) == 1 ? 65_536 : Short.toUnsignedInt(header.getShort(16));
        long whole = page * Integer.toUnsignedLong(header.getInt(28));
        try {
            if (Files.size(file) < whole) {
                throw new BadBackup("The backup " + file + " is cut off: " + Files.size(file) + " of its " + whole
                        + " bytes are there. Please take another copy of it, or an earlier one. Nothing was changed.");
            }
        } catch (IOException e) {
            throw new BadBackup("The file " + file + " cannot be read.", e);
        }
    }
}

package benchpace.store.sqlite;

import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

/**
 * A file in the making, in a folder of its own whose name tells that it is ours and nothing whole, {@code
 * benchpace-….part}, and into which its owner alone may look. As long as it is made a file beside it is locked; the
 * operating system takes the lock back when the process ends, however that ended. So whatever lies there and is not
 * locked was left behind, and goes with the next draft in the same place, or with {@link #sweep}. The file itself
 * cannot bear the lock: SQLite opens and closes it, and with a file that is closed all locks go that the process has on
 * it (fcntl(2) of POSIX). Where a file system knows no locks nothing is swept.
 */
public final class Draft implements AutoCloseable {
    private static final Pattern NAME = Pattern.compile("benchpace-[0-9a-f-]{36}\\.part");
    private static final int ATTEMPTS = 10;
    private static final String FILE = "draft";
    private static final String LOCK = "lock";
    private static final Logger LOG = System.getLogger(Draft.class.getName());
    /** Of this process: their locks are not touched, as that would be the end of them. */
    private static final Set<String> OURS = new HashSet<>();

    private final Path folder;
    private final FileChannel lock;

    private Draft(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /** On the same disk as its place, so that it can be moved there at once. @throws NoRoom if nothing can be made */
    public static Draft beside(Path place) {
        return in(place.toAbsolutePath().getParent());
    }

    /** In the folder for temporary files. @throws NoRoom if nothing can be made there */
    public static Draft temporary() {
        return in(temporaries());
    }

    private static Path temporaries() {
        return Path.of(System.getProperty("java.io.tmpdir"));
    }

    private static Draft in(Path place) {
        sweep(place);
        IOException why = new IOException("somebody sweeps there all the time");
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            try {
                Optional<Draft> made = made(place);
                if (made.isPresent()) {
                    return made.get();
                }
            } catch (IOException e) {
                why = e;
            }
        }
        throw new NoRoom("In the folder " + place + " nothing can be written: its disk may be full, or it is not there "
                + "or somebody else's.", why);
    }

    /** Empty if somebody swept it away in the very moment. */
    private static synchronized Optional<Draft> made(Path place) throws IOException {
        Path folder = place.resolve("benchpace-" + UUID.randomUUID() + ".part");
        OwnerOnly.newFolder(folder);
        Path file = folder.resolve(LOCK);
        FileChannel channel;
        try {
            channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (NoSuchFileException swept) {
            return Optional.empty();
        }
        if (!isLocked(channel) || !Files.exists(file)) {
            channel.close();
            return Optional.empty();
        }
        OURS.add(folder.getFileName().toString());
        return Optional.of(new Draft(folder, channel));
    }

    private static boolean isLocked(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (IOException noLocks) {
            return true;
        }
    }

    /** Where it is made; nothing is there yet. What is made for it stands beside, under names that begin with its. */
    public Path file() {
        return folder.resolve(FILE);
    }

    /** Takes away whatever is there still. */
    @Override public void close() {
        release(this);
    }

    private static synchronized void release(Draft draft) {
        try {
            try (FileChannel held = draft.lock) {
                empty(draft.folder);
            }
            Files.deleteIfExists(draft.folder);
        } catch (IOException e) {
            LOG.log(Level.DEBUG, "a draft lies in " + draft.folder + " until the next is made", e);
        }
        OURS.remove(draft.folder.getFileName().toString());
    }

    /** Takes away what was left in the folder for temporary files by processes that are no more. */
    public static void sweepTemporary() {
        sweep(temporaries());
    }

    /** The same in another folder. What anybody is making stays there, and so does all else. */
    public static void sweep(Path place) {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(place, "benchpace-*.part")) {
            for (Path folder : all) {
                if (NAME.matcher(folder.getFileName().toString()).matches()
                        && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
                    sweepOne(folder);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            LOG.log(Level.DEBUG, "it could not be looked for drafts that were left in " + place, e);
        }
    }

    private static synchronized void sweepOne(Path folder) {
        Path file = folder.resolve(LOCK);
        if (OURS.contains(folder.getFileName().toString())) {
            return;
        }
        try {
            if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                Files.delete(folder); // only if nothing is in it
                return;
            }
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                if (channel.tryLock() != null) {
                    sweep(folder); // a draft may have been made beside another
                    empty(folder);
                }
            }
            Files.deleteIfExists(folder); // only if nothing is in it: not where it is somebody else's
        } catch (IOException | OverlappingFileLockException e) { // somebody else's, or where no locks are known
            LOG.log(Level.DEBUG, "the draft in " + folder + " is left there", e);
        }
    }

    /**
     * The lock goes last, so that what is left of a sweeping that was killed is swept, too. The folder follows once the
     * lock is closed: till then some file systems keep the file there (NFS, Windows).
     */
    private static void empty(Path folder) throws IOException {
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, FILE + "*")) {
            for (Path file : drafts) {
                Files.deleteIfExists(file);
            }
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        Files.deleteIfExists(folder.resolve(LOCK));
    }
}

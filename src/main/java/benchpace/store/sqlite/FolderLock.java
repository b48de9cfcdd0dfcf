package benchpace.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second board out of a data folder. The operating system holds the lock, so it is gone when the process is,
 * however that ended.
 */
public final class FolderLock implements AutoCloseable {
    /** The lock's name in the folder. */
    public static final String FILE = "benchpace.lock";

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /** @throws StoreException if the folder cannot be made or written, or another board holds it */
    public static FolderLock of(Path folder) {
        makeFolder(folder);
        FileChannel channel;
        try {
            channel = FileChannel.open(folder.resolve(FILE), StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw new StoreException("The data folder " + folder + " cannot be written.", e);
        }
        FileLock lock = null;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException sameProcess) {
            lock = null;
        } catch (IOException e) {
            closeQuietly(channel);
            throw new StoreException("The data folder " + folder + " cannot be locked.", e);
        }
        if (lock == null) {
            closeQuietly(channel);
            throw new StoreException("The data folder " + folder + " is in use by another running Benchpace.");
        }
        return new FolderLock(channel);
    }

    /**
     * Whether a board of another process holds it. Nothing is made for the answer; to be asked by a process that holds
     * none itself, as its lock would be gone by it.
     */
    public static boolean isHeld(Path folder) {
        try (FileChannel channel = FileChannel.open(folder.resolve(FILE), StandardOpenOption.WRITE)) {
            return channel.tryLock() == null;
        } catch (IOException e) { // no board was ever open on it, or none could be
            return false;
        }
    }

    private static void makeFolder(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new StoreException("The data folder " + folder + " is not a folder.");
        }
        boolean made = !Files.exists(folder);
        try {
            Files.createDirectories(folder);
            if (made) { // one that was there may be for others, too
                OwnerOnly.folder(folder);
            }
        } catch (IOException e) {
            throw new StoreException("The data folder " + folder + " cannot be created.", e);
        }
    }

    private static void closeQuietly(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException ignored) {
            // the lock was not ours, and the process keeps no use for the channel
        }
    }

    @Override public void close() {
        closeQuietly(channel);
    }
}

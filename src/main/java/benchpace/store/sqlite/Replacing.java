package benchpace.store.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts other data in the place of a folder's, so that whatever ends the program leaves the old or the new. What is to
 * take the place is made beside it, {@link #draft}; its renaming to {@link #READY} decides, and from then on only moves
 * are left, each of which the next start goes on from. What was there goes to {@code replaced-N} and is never removed.
 * Whoever calls holds the folder's {@link FolderLock}.
 */
public final class Replacing {
    static final String READY = "restored.db";
    private static final String DRAFT = "restoring.db";
    private static final String ASIDE = "replacing";
    private static final List<String> OLD = List.of(Database.FILE, Database.FILE + "-wal", Database.FILE + "-shm",
            Database.FILE + "-journal", "plans");

    private final Path folder;

    /** @param before where what was there is kept, if anything was */
    public record Done(Optional<Path> before) {
        String sentence() {
            return "Restoring a backup had been broken off and is done now"
                    + before.map(kept -> "; what was there before is kept in " + kept).orElse("") + ".";
        }
    }

    public Replacing(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Where what is to take the place is made; it counts for nothing yet. */
    public Path draft() {
        return folder.resolve(DRAFT);
    }

    /** Whether nothing stands in the folder that is somebody's. */
    public boolean isFree() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .allMatch(name -> name.equals(FolderLock.FILE) || name.startsWith(DRAFT));
        } catch (IOException e) {
            throw new StoreException("The files in " + folder + " cannot be read.", e);
        }
    }

    /** Takes away a draft that never came to count. */
    public void drop() {
        try {
            for (String ending : List.of("", "-journal")) {
                Files.deleteIfExists(folder.resolve(DRAFT + ending));
            }
        } catch (IOException e) {
            throw new StoreException("The file " + draft() + " cannot be removed.", e);
        }
    }

    /**
     * From here on the draft, which is whole and flushed, is the folder's data.
     *
     * @throws StoreException if it could not take the place now; the next start of a board tries again
     */
    public Done decide() {
        try {
            Files.move(draft(), folder.resolve(READY), StandardCopyOption.ATOMIC_MOVE);
            flush();
        } catch (IOException e) {
            throw new StoreException("The files in " + folder + " cannot be moved: nothing was changed.", e);
        }
        return finish().orElseThrow();
    }

    /**
     * Does what is left to do, if something was decided; else takes away what never came to count.
     *
     * @throws StoreException if files cannot be moved; what was decided stays so
     */
    public Optional<Done> finish() {
        try {
            boolean decided = Files.exists(folder.resolve(READY));
            if (decided) {
                moveAside();
                Files.move(folder.resolve(READY), folder.resolve(Database.FILE), StandardCopyOption.ATOMIC_MOVE);
                flush();
            } else {
                drop();
            }
            Path aside = folder.resolve(ASIDE);
            if (!Files.isDirectory(aside)) {
                return decided ? Optional.of(new Done(Optional.empty())) : Optional.empty();
            }
            Path before = Files.move(aside, free());
            flush();
            return Optional.of(new Done(Optional.of(before)));
        } catch (IOException e) {
            throw new StoreException("A backup is to take the place of the data in " + folder + ", whose files cannot "
                    + "be moved: close what has them open, and try again. Nothing is lost.", e);
        }
    }

    private void moveAside() throws IOException {
        Path aside = folder.resolve(ASIDE);
        for (String name : OLD) {
            Path old = folder.resolve(name);
            if (Files.exists(old, LinkOption.NOFOLLOW_LINKS)) {
                if (!Files.exists(aside)) {
                    OwnerOnly.folder(Files.createDirectory(aside));
                }
                Files.move(old, aside.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        flush();
    }

    private Path free() {
        int number = 1;
        while (Files.exists(folder.resolve("replaced-" + number), LinkOption.NOFOLLOW_LINKS)) {
            number++;
        }
        return folder.resolve("replaced-" + number);
    }

    /** Names of files survive a power cut once their folder was flushed, where the system can flush one. */
    private void flush() {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // it flushes by itself, later
        }
    }
}

package benchpace.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Keeps other users of the machine out of what guests' names stand in, where the file system knows users (POSIX). */
final class OwnerOnly {
    private static final String ALL = "rwx------";

    private OwnerOnly() { }

    /** Whatever comes of it, the board goes on: somebody else's file system may know no such thing. */
    static void folder(Path folder) {
        set(folder, ALL);
    }

    /** Makes one that nobody else may look into at any moment. */
    static void newFolder(Path folder) throws IOException {
        try {
            Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(ALL)));
        } catch (UnsupportedOperationException e) {
            Files.createDirectory(folder);
        }
    }

    static void file(Path file) {
        set(file, "rw-------");
    }

    private static void set(Path path, String permissions) {
        try {
            Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(permissions));
        } catch (IOException | UnsupportedOperationException e) {
            // as it was made, then
        }
    }
}

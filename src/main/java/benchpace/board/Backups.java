package benchpace.board;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The folder that everything is kept in, and what is copied out of it. */
public final class Backups {
    private static final String STORE = "benchpace.db";

    private final Path folder;

    public Backups(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Where everything is kept. */
    public Path folder() {
        return folder;
    }

    /** What the store takes now, with what waits in its log, in bytes. */
    public long size() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith(STORE)).mapToLong(Backups::size).sum();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException gone) { // the log comes and goes
            return 0;
        }
    }
}

package benchpace.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the last board left in a data folder, looked at before SQLite opens it: whatever SQLite would pass over or
 * overwrite without a word is told in a sentence, and kept as it was in a folder beside.
 */
final class Leftovers {
    private final Path folder;
    private final Path file;
    private final Path log;

    Leftovers(Path file) {
        this.folder = file.getParent();
        this.file = file;
        this.log = folder.resolve(file.getFileName() + "-wal");
    }

    /**
     * One sentence for whoever starts the board, if something is or may be missing.
     *
     * @throws StoreException if that cannot be kept aside
     */
    Optional<String> look() {
        try {
            requireFile();
            boolean empty = !Files.exists(file) || Files.isRegularFile(file) && Files.size(file) == 0;
            if (!empty) {
                return records();
            }
            if (Files.isRegularFile(log) && Files.size(log) > 0) {
                return Optional.of("The file " + file + (Files.exists(file) ? " is empty" : " is missing")
                        + ", so the records beside it in " + log.getFileName() + " cannot be read: put back a copy of "
                        + "it if there is one. They are kept in " + keep() + ", and the board begins anew.");
            }
            return Files.exists(file) ? Optional.of("The file " + file + " is empty: if classes were kept in it, put "
                    + "back a copy of it. The board begins anew.") : Optional.empty();
        } catch (IOException e) {
            throw new StoreException("The files in " + folder + " cannot be read or copied: " + e.getMessage() + ".",
                    e);
        }
    }

    private void requireFile() {
        if (Files.isSymbolicLink(file) && !Files.exists(file)) {
            throw new StoreException("The file " + file + " is a link that leads nowhere: plug in the disk it is on, "
                    + "or remove the link to start anew.");
        }
        if (Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file)) {
            throw new StoreException("What stands at " + file + " is no file.");
        }
    }

    private Optional<String> records() throws IOException {
        if (!Files.isRegularFile(log)) {
            return Optional.empty(); // none, or nothing that SQLite would read either
        }
        return switch (WriteAheadLog.state(log, folder.resolve(file.getFileName() + "-shm"))) {
            case READ -> Optional.empty();
            case CUT -> Optional.of("The last record in " + log + " is not whole and is left out: the last tap before "
                    + "the board stopped may be missing. The files are kept as they were in " + keep() + ".");
            case PASSED_OVER -> Optional.of("Records in " + log + " are damaged and are left out: the newest taps may "
                    + "be missing. The files are kept as they were in " + keep() + ".");
        };
    }

    /** Copies the files under their own names, so that SQLite's tools can open them there. */
    private Path keep() throws IOException {
        int number = 1;
        while (Files.exists(folder.resolve("kept-" + number))) {
            number++;
        }
        Path kept = Files.createDirectory(folder.resolve("kept-" + number));
        OwnerOnly.folder(kept);
        for (Path each : List.of(file, log)) {
            if (Files.exists(each)) {
                OwnerOnly.file(Files.copy(each, kept.resolve(each.getFileName())));
            }
        }
        return kept;
    }
}

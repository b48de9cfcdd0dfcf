package benchpace.store.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What the last board left in a data folder, looked at before SQLite opens it: whatever SQLite would pass over or
 * overwrite without a word is told in a sentence, and kept as it was in a folder beside.
 */
public final class Leftovers {
    /** So many copies are kept, the newest: a computer that loses its power every day must not fill its disk. */
    public static final int MOST_KEPT = 10;
    private static final Pattern KEPT = Pattern.compile("kept-([1-9]\\d{0,8})");

    private final Path folder;
    private final Path file;
    private final Path log;

    public Leftovers(Path file) {
        this.folder = file.getParent();
        this.file = file;
        this.log = folder.resolve(file.getFileName() + "-wal");
    }

    /**
     * One sentence for whoever starts the board, if something is or may be missing.
     *
     * @throws StoreException if that cannot be kept aside
     */
    public Optional<String> look() {
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

    /** Whether all that the last board wrote down can be read; nothing is kept aside or told for it. */
    public boolean whole() {
        try {
            return !Files.isRegularFile(log) || WriteAheadLog.state(log, index()) == WriteAheadLog.State.READ;
        } catch (IOException e) {
            return false;
        }
    }

    private Path index() {
        return folder.resolve(file.getFileName() + "-shm");
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
        return switch (WriteAheadLog.state(log, index())) {
            case READ -> Optional.empty();
            case CUT -> Optional.of("The last record in " + log + " is not whole and is left out: the last tap before "
                    + "the board stopped may be missing. The files are kept as they were in " + keep() + ".");
            case PASSED_OVER -> Optional.of("Records in " + log + " are damaged and are left out: the newest taps may "
                    + "be missing. The files are kept as they were in " + keep() + ".");
        };
    }

    /**
     * Copies the files under their own names, so that SQLite's tools can open them there.
     *
     * @return where to, and which older copies made room, in words
     */
    private String keep() throws IOException {
        NavigableMap<Integer, Path> before = kept();
        int number = before.isEmpty() ? 1 : before.lastKey() + 1;
        Path kept = Files.createDirectory(folder.resolve("kept-" + number));
        OwnerOnly.folder(kept);
        for (Path each : List.of(file, log)) {
            if (Files.exists(each)) {
                OwnerOnly.file(Files.copy(each, kept.resolve(each.getFileName())));
            }
        }
        before.put(number, kept);
        List<String> gone = new ArrayList<>();
        while (before.size() > MOST_KEPT) {
            Path oldest = before.pollFirstEntry().getValue();
            if (removed(oldest)) {
                gone.add(oldest.getFileName().toString());
            }
        }
        return kept + (gone.isEmpty() ? "" : " (only the newest " + MOST_KEPT + " copies stay: removed "
                + String.join(", ", gone) + ")");
    }

    /** The copies there are, by number. */
    private NavigableMap<Integer, Path> kept() throws IOException {
        NavigableMap<Integer, Path> kept = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            all.forEach(path -> {
                Matcher name = KEPT.matcher(path.getFileName().toString());
                if (name.matches()) {
                    kept.put(Integer.parseInt(name.group(1)), path);
                }
            });
        }
        return kept;
    }

    /** Only what was copied there goes; a folder that somebody put other things in stays, and so does what is none. */
    private boolean removed(Path kept) {
        try {
            if (!Files.isDirectory(kept, LinkOption.NOFOLLOW_LINKS)) {
                return false;
            }
            for (Path each : List.of(file, log)) {
                Files.deleteIfExists(kept.resolve(each.getFileName()));
            }
            return Files.deleteIfExists(kept);
        } catch (IOException e) { // it takes room, and no more than that
            return false;
        }
    }
}

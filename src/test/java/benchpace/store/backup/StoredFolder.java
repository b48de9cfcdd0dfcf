package benchpace.store.backup;

import benchpace.store.Deeds;
import benchpace.store.sqlite.Database;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A data folder with something of everything in it, and what it comes to. */
final class StoredFolder {
    /** So many that some of everything are done: classes deleted and erased, plans, ticks, candles, lessons. */
    static final int DEEDS = 225;
    /** Made once: every deed is flushed to the disk. */
    private static byte[] usual = new byte[0];

    private StoredFolder() { }

    /** After {@link #DEEDS} of them. */
    static synchronized Path filled(Path folder) {
        try {
            if (usual.length == 0) {
                usual = Files.readAllBytes(filled(folder, DEEDS).resolve(Database.FILE));
            } else {
                Files.write(Files.createDirectory(folder).resolve(Database.FILE), usual);
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path filled(Path folder, int deeds) {
        try (Database database = Database.open(folder)) {
            Deeds all = new Deeds(database);
            for (int number = 0; number < deeds; number++) {
                all.doThe(number);
            }
        }
        return folder;
    }

    /** Every row of every table, but of those that let somebody in and what a restoring writes itself. */
    static List<String> rows(Path folder) {
        try (Database database = Database.open(folder)) {
            return Deeds.rows(database).stream().filter(row -> BackupFile.WAYS_IN.stream()
                    .noneMatch(table -> row.startsWith(table + "|"))).filter(row -> !row.contains("|last-backup|"))
                    .toList();
        }
    }

    /** The rows that would let somebody in. */
    static long waysIn(Path folder) {
        try (Database database = Database.open(folder)) {
            return Deeds.rows(database).stream().filter(row -> BackupFile.WAYS_IN.stream()
                    .anyMatch(table -> row.startsWith(table + "|"))).count();
        }
    }

    /** Names of all that stands in a folder. */
    static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package benchpace.store.backup;

import benchpace.store.sqlite.Copy;
import benchpace.store.sqlite.DamagedFile;
import benchpace.store.sqlite.FolderLock;
import benchpace.store.sqlite.Replacing;
import benchpace.store.sqlite.Statements;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Puts a backup in the place of a data folder. It is copied into the folder under another name, brought up to date and
 * read through there, and only then takes the place ({@link Replacing}): whatever ends the program leaves the old or
 * the new. What was there before is kept aside. The backup itself is only read.
 */
public final class Restore {
    private final Path folder;

    /**
     * What came of it.
     *
     * @param manifest of the backup
     * @param before   where what was in the folder is kept, if anything was
     */
    public record Restored(Manifest manifest, Optional<Path> before) { }

    public Restore(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /**
     * Restores.
     *
     * @param replace whether data that are there may be moved aside for it
     * @throws BadBackup      if that file cannot be restored
     * @throws StoreException in one plain sentence; the folder is as it was
     */
    public Restored from(Path file, boolean replace, Progress progress) {
        BackupFile.requireKind(file);
        boolean made = !Files.exists(folder);
        try (FolderLock lock = FolderLock.of(folder)) {
            Replacing replacing = new Replacing(folder);
            replacing.finish();
            if (!replace && !replacing.isFree()) {
                throw new NotAsked("There are files in " + folder + " already: name another folder, or add --replace, "
                        + "and they are kept aside.");
            }
            Manifest manifest = fill(file, replacing, progress);
            return new Restored(manifest, replacing.decide().before());
        } catch (StoreException e) {
            if (made) {
                removeEmpty();
            }
            throw e;
        }
    }

    private Manifest fill(Path file, Replacing replacing, Progress progress) {
        try {
            Copy copy = copied(file, replacing.draft(), progress);
            Manifest manifest = BackupFile.content(copy, file, progress);
            copy.change(connection -> {
                Statements.change(connection, "drop table " + Manifest.TABLE);
                return Statements.change(connection, "pragma application_id = 0");
            });
            copy.bringUpToDate();
            copy.change(connection -> LastBackup.put(connection, manifest.made()));
            ForgottenAgain again = ForgottenAgain.of(folder);
            again.guests(replacing.draft());
            if (!ReadThrough.of(replacing.draft(), progress).equals(manifest.holdings())) {
                throw new BadBackup("The backup " + file + " cannot be read back whole by this Benchpace (it was made "
                        + "by " + manifest.program() + "). Nothing was changed.");
            }
            again.theRest(replacing.draft());
            copy.flush();
            return manifest;
        } catch (RuntimeException | Error e) {
            replacing.drop();
            throw e;
        }
    }

    private static Copy copied(Path file, Path draft, Progress progress) {
        try {
            long size = Files.size(file);
            return Copy.ofStill(file, draft, done -> progress.at(Progress.Stage.COPYING, done, size),
                    progress::stopped);
        } catch (DamagedFile e) {
            throw BackupFile.damaged(file, e);
        } catch (IOException e) {
            throw new BadBackup("The file " + file + " cannot be read.", e);
        }
    }

    /** A folder that was made for what failed. */
    private void removeEmpty() {
        try {
            Files.deleteIfExists(folder.resolve(FolderLock.FILE));
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            // there is something in it after all
        }
    }
}

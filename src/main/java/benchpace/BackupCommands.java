package benchpace;

import benchpace.store.backup.Backup;
import benchpace.store.backup.BadBackup;
import benchpace.store.backup.Holdings;
import benchpace.store.backup.LastBackup;
import benchpace.store.backup.NotAsked;
import benchpace.store.backup.Progress;
import benchpace.store.backup.Restore;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.StoreException;
import benchpace.words.BackupWords;
import benchpace.words.Times;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All that is kept, copied to one file and back. */
final class BackupCommands {
    private static final String STANDARD = "-";
    private static final int FAILED = 1;
    private static final Logger LOG = System.getLogger(BackupCommands.class.getName());

    private BackupCommands() { }

    /** {@code backup FILE --data DIR}. */
    @Command(name = "backup", mixinStandardHelpOptions = true, description = "Copies all that is kept to one file, "
            + "also while a class runs.")
    static final class MakeBackup implements Callable<Integer> {
        @Spec
        private CommandSpec spec;
        @Parameters(paramLabel = "FILE", description = "where to; in a folder that is there, it is named for the time; "
                + "- writes to standard output")
        private String file;
        @Option(names = "--data", defaultValue = "data", paramLabel = "DIR",
                description = "where classes are kept; default ${DEFAULT-VALUE}")
        private Path data;
        @Option(names = "--replace", description = "replace a file that is there")
        private boolean replace;

        @Override public Integer call() {
            Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
            PrintWriter err = spec.commandLine().getErr();
            Draft.sweepTemporary();
            if (file.equals(STANDARD)) {
                toStandardOutput(now, err);
                return 0;
            }
            Path target = path("FILE", file);
            if (Files.isDirectory(target)) {
                target = target.resolve(Backup.suggestedName(now, ZoneId.systemDefault()));
            }
            Backup.Made made = make(target, replace, now, err);
            note(made, now);
            spec.commandLine().getOut().println("Backup made: " + made.file() + ", "
                    + BackupWords.size(made.bytes()) + ", read back whole. In it: "
                    + held(made.manifest().holdings()) + ".");
            return 0;
        }

        private void toStandardOutput(Instant now, PrintWriter err) {
            withFile(file -> {
                Backup.Made made = make(file, true, now, err);
                Files.copy(file, System.out);
                if (System.out.checkError()) { // it throws nothing by itself
                    throw new IOException("standard output takes no more");
                }
                note(made, now);
                return file;
            });
        }

        private Backup.Made make(Path target, boolean replacing, Instant now, PrintWriter err) {
            Backup.Made made = told(() -> new Backup(data, Main.VERSION).make(target, replacing, now, onConsole(err)));
            made.told().ifPresent(err::println);
            String unreadable = BackupWords.unreadable(made.manifest().holdings().unreadable());
            if (!unreadable.isEmpty()) {
                err.println(unreadable);
            }
            return made;
        }

        private void note(Backup.Made made, Instant now) {
            if (made.told().isPresent()) { // nothing is written beside what cannot be read
                return;
            }
            try {
                LastBackup.note(data, now);
            } catch (StoreException e) { // the backup stands
                LOG.log(Level.DEBUG, "that a backup was made could not be noted", e);
            }
        }
    }

    /** {@code restore FILE --data DIR}. */
    @Command(name = "restore", mixinStandardHelpOptions = true, description = "Puts a backup into a data folder on "
            + "which no board is open.")
    static final class RestoreBackup implements Callable<Integer> {
        @Spec
        private CommandSpec spec;
        @Parameters(paramLabel = "FILE", description = "the backup; - reads standard input")
        private String file;
        @Option(names = "--data", defaultValue = "data", paramLabel = "DIR",
                description = "the folder to restore into; default ${DEFAULT-VALUE}")
        private Path data;
        @Option(names = "--replace", description = "move what is in the folder aside, to DIR/replaced-N")
        private boolean replace;

        @Override public Integer call() {
            Restore.Restored restored = file.equals(STANDARD) ? withFile(spool -> {
                Files.copy(System.in, spool);
                return restored(spool);
            }) : restored(path("FILE", file));
            PrintWriter out = spec.commandLine().getOut();
            String made = new Times(ZoneId.systemDefault()).dated(restored.manifest().made());
            out.println("Restored into " + data + ", as it stood on " + made + ": "
                    + held(restored.manifest().holdings()) + ".");
            restored.before().ifPresent(before -> out.println("What was there before is kept in " + before + "."));
            out.println("Devices have to be paired again. Guests who were forgotten after the backup was made, and "
                    + "words of candles that were erased since, are " + (restored.before().isPresent()
                    ? "gone again, where what was there can be read." : "back; guests can be forgotten once more.")
                    + " What is due by its days is erased when the board opens, before anybody sees a page.");
            return 0;
        }

        private Restore.Restored restored(Path from) {
            return told(() -> new Restore(data).from(from, replace, onConsole(spec.commandLine().getErr())));
        }
    }

    private static String held(Holdings held) {
        return BackupWords.of(held.classes(), held.events(), held.plans());
    }

    private static <T> T told(Supplier<T> work) {
        try {
            return work.get();
        } catch (BadBackup | NotAsked e) {
            throw new Stop(Main.BAD_INPUT, e.getMessage(), e);
        } catch (StoreException e) {
            throw new Stop(FAILED, e.getMessage(), e);
        }
    }

    private static Path path(String what, String text) {
        if (text.isBlank()) {
            throw new Stop(Main.BAD_INPUT, what + " must not be empty.");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new Stop(Main.BAD_INPUT, what + " is no name of a file: " + text + ".", e);
        }
    }

    private interface WithFile<T> {
        T work(Path file) throws IOException;
    }

    /** For what comes from or goes to a stream: a file of one's own, which is gone afterwards. */
    private static <T> T withFile(WithFile<T> work) {
        try (Draft draft = told(Draft::temporary)) {
            return work.work(draft.file());
        } catch (IOException e) {
            throw new Stop(FAILED, "It cannot be written or read whole: " + e.getMessage() + ".", e);
        }
    }

    /** A line every two seconds; nothing of what is done sooner. */
    private static Progress onConsole(PrintWriter err) {
        return new Progress() {
            private static final Duration EVERY = Duration.ofSeconds(2);
            private long next = System.nanoTime() + EVERY.toNanos();

            @Override public void at(Stage stage, long done, long of) {
                if (System.nanoTime() - next >= 0) {
                    next = System.nanoTime() + EVERY.toNanos();
                    err.println(switch (stage) {
                        case COPYING -> BackupWords.copying(done, of);
                        case COUNTING -> BackupWords.addingUp(done, of);
                        case READING -> BackupWords.readingBack(done, of);
                    });
                    err.flush();
                }
            }
        };
    }
}

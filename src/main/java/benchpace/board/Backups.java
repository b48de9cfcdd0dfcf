package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.store.Settings;
import benchpace.store.backup.Backup;
import benchpace.store.backup.LastBackup;
import benchpace.store.backup.Progress;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder that everything is kept in, and the backup that is made of it for a page: one at a time, on a thread of
 * its own, beside whatever the board does. It lies in the folder for some minutes to be fetched, and then is gone. Safe
 * for use by many threads.
 */
public final class Backups implements AutoCloseable {
    /** So long a backup may be fetched, also again, where a network broke off. */
    public static final Duration FETCHABLE = Duration.ofMinutes(10);
    private static final String STORE = "benchpace.db";
    private static final String OUTGOING = "outgoing" + Backup.ENDING;
    private static final long LONGEST_GOODBYE_MILLIS = 3_000;
    private static final long LOOKS_EVERY_MILLIS = 1_000;
    private static final Logger LOG = System.getLogger(Backups.class.getName());

    private final Path folder;
    private final LastBackup last;
    private final BoardTime clock;
    private final ZoneId zone;
    private final Backup backup;
    private State state = new State.Idle();
    private Optional<Thread> work = Optional.empty();
    private volatile boolean outdated;
    private volatile boolean closed;

    /** How it stands with a backup. */
    public sealed interface State {
        /** None is there. */
        record Idle() implements State { }

        /** One is being made. */
        record Making(Progress.Stage stage, long done, long of) implements State { }

        /**
         * One can be fetched.
         *
         * @param name for the file
         * @param until when it is taken away, in time lived
         */
        record Ready(String name, Backup.Made made, Duration until) implements State { }

        /** The last one came to nothing. @param why in one sentence */
        record Failed(String why) implements State { }
    }

    /** @param program the version of the program, for the backup to tell */
    public Backups(Path folder, Settings settings, BoardTime clock, ZoneId zone, String program) {
        this.folder = folder.toAbsolutePath().normalize();
        this.last = new LastBackup(settings);
        this.clock = clock;
        this.zone = zone;
        this.backup = Backup.ofOpenBoard(this.folder, program);
        clear();
        Draft.sweep(this.folder);
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

    /** The names of the folders in it that hold copies of damaged files. */
    public List<String> kept() {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(file -> file.getFileName().toString())
                    .filter(name -> name.matches("(kept|replaced)-\\d+")).sorted().toList();
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

    /** When one was last made, on a page or by the command. */
    public Optional<Instant> last() {
        return last.at();
    }

    public synchronized State state() {
        if (state instanceof State.Ready ready && clock.lived().compareTo(ready.until()) > 0) {
            clear();
            state = new State.Idle();
        }
        return state;
    }

    /** The file of a backup that is ready under that name. */
    public synchronized Optional<Path> ready(String name) {
        return state() instanceof State.Ready ready && ready.name().equals(name) ? Optional.of(folder.resolve(OUTGOING))
                : Optional.empty();
    }

    /** Begins to make one, unless one is being made. */
    public synchronized void start() {
        if (closed || state instanceof State.Making) {
            return;
        }
        state = new State.Making(Progress.Stage.COPYING, 0, size());
        Thread thread = new Thread(this::make, "board-backup");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        work = Optional.of(thread);
        thread.start();
    }

    /** Words were erased that a copy may still have: one that lies there goes, and one under way is begun anew. */
    public synchronized void discard() {
        if (state instanceof State.Making) {
            outdated = true;
        } else if (state instanceof State.Ready) {
            clear();
            state = new State.Idle();
            notifyAll();
        }
    }

    private void make() {
        State became;
        do {
            outdated = false;
            became = attempt();
        } while (!stands(became));
        if (became instanceof State.Ready) {
            takeAwayInTime(became);
        }
    }

    private State attempt() {
        State became;
        try {
            Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
            Backup.Made made = backup.make(folder.resolve(OUTGOING), true, now, new Progress() {
                @Override public void at(Stage stage, long done, long of) {
                    is(new State.Making(stage, done, of));
                }

                @Override public boolean stopped() {
                    return closed || outdated;
                }
            });
            last.note(now);
            became = new State.Ready(Backup.suggestedName(now, zone), made, clock.lived().plus(FETCHABLE));
        } catch (StoreException e) {
            became = new State.Failed(e.getMessage());
            log(e);
        } catch (RuntimeException | Error e) {
            became = new State.Failed("");
            log(e);
        }
        return became;
    }

    private synchronized boolean stands(State became) {
        if (outdated && !closed) {
            clear();
            return false;
        }
        state = became;
        return true;
    }

    /** Until its time is over or another is made, so that it goes whether or not anybody asks. */
    private synchronized void takeAwayInTime(State ready) {
        try {
            while (!closed && state() == ready) {
                wait(LOOKS_EVERY_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void log(Throwable fault) {
        if (!closed && !outdated) {
            LOG.log(Level.WARNING, "a backup could not be made", fault);
        }
    }

    private synchronized void is(State now) {
        state = now;
    }

    /** Takes away what lies there to be fetched, and what a program that was killed had begun. */
    private void clear() {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> all = files.filter(file -> file.getFileName().toString().startsWith(OUTGOING)).toList();
            for (Path file : all) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            LOG.log(Level.WARNING, "a backup that was fetched lies there still", e);
        }
    }

    /** Gives up one that is being made, and takes away one that is there. */
    @Override public void close() {
        closed = true;
        Optional<Thread> making;
        synchronized (this) {
            making = work;
            notifyAll();
        }
        try {
            if (making.isPresent()) {
                making.get().join(LONGEST_GOODBYE_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        clear();
    }
}

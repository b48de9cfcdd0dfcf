package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.store.FileSweep;
import benchpace.store.sqlite.StoreException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Has the file written anew once words were erased, when it disturbs nobody: taps wait meanwhile. A small file takes a
 * fifth of a second and is written at once; a large one waits until no class runs.
 */
public final class Sweeping {
    /** 0.2 s on a small computer, where 90 MB (2,000 classes) took 1 s. */
    static final long AT_ONCE_BYTES = 16 << 20;
    /** So long after its last tap a class is taken to run. */
    static final Duration QUIET = Duration.ofMinutes(30);
    /** Then it is done all the same: words that are to be gone do not wait for a studio that never rests. */
    static final Duration LONGEST = Duration.ofHours(12);

    private final FileSweep file;
    private final Supplier<Collection<ClassBoard>> classes;
    private final BoardTime clock;
    private final long atOnceBytes;
    private Optional<Duration> waitsSince = Optional.empty();

    public Sweeping(FileSweep file, Supplier<Collection<ClassBoard>> classes, InstantSource clock) {
        this(file, classes, clock, AT_ONCE_BYTES);
    }

    Sweeping(FileSweep file, Supplier<Collection<ClassBoard>> classes, InstantSource clock, long atOnceBytes) {
        this.file = file;
        this.classes = classes;
        this.clock = BoardTime.of(clock);
        this.atOnceBytes = atOnceBytes;
    }

    /** Whether words were erased of which a copy may be left in the file. */
    public boolean owed() {
        return file.owed();
    }

    /** Does it, unless a class would wait for it. @return whether nothing is owed any more */
    public synchronized boolean sweep() {
        if (!file.owed()) {
            waitsSince = Optional.empty();
            return true;
        }
        if (disturbs()) {
            waitsSince = waitsSince.or(() -> Optional.of(clock.lived()));
            return false;
        }
        return file.sweep();
    }

    private boolean disturbs() {
        return file.bytes() > atOnceBytes && classes.get().stream().anyMatch(Sweeping::runs)
                && waitsSince.filter(since -> clock.lived().minus(since).compareTo(LONGEST) >= 0).isEmpty();
    }

    private static boolean runs(ClassBoard board) {
        return board.live().closedAt().isEmpty()
                && board.live().lastRecordedAt().plus(QUIET).isAfter(board.now());
    }

    /** The same, by itself. @throws StoreException if it cannot be done although it would disturb nobody */
    public synchronized void sweepBySelf() {
        if (!sweep() && !disturbs()) {
            throw new StoreException("The file is being read, so that what was erased cannot be cleared from it yet.");
        }
    }
}

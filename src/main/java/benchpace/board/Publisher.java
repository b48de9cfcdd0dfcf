package benchpace.board;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The one thread that derives views and fills mailboxes: after a command, and when the views themselves say that time
 * alone will change them. It never writes to a network, so no screen can hold it up.
 */
final class Publisher implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Publisher.class.getName());
    /** Also how soon a computer that woke, or a clock that was set, is noticed. */
    private static final Duration LONGEST_SLEEP = Duration.ofSeconds(10);
    private static final long LONGEST_GOODBYE_MILLIS = 500;
    private static final Duration SHORTEST_SLEEP = Duration.ofMillis(200);

    /** Taps that come faster than this are shown together: an eye follows no more, and drawing takes a processor. */
    private static final long ROUND_MILLIS = 100;

    private final Supplier<Collection<ClassBoard>> boards;
    private final Runnable before;
    private final Consumer<ClassBoard> afterwards;
    private final Thread thread = new Thread(this::run, "board-publisher");
    private long roundBegan = System.nanoTime() - TimeUnit.MILLISECONDS.toNanos(ROUND_MILLIS);
    private boolean woken;
    private boolean closed;

    /**
     * @param before     done first in each round
     * @param afterwards done with every class once screens have been told
     */
    Publisher(Supplier<Collection<ClassBoard>> boards, Runnable before, Consumer<ClassBoard> afterwards) {
        this.boards = boards;
        this.before = before;
        this.afterwards = afterwards;
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    synchronized void wake() {
        woken = true;
        notifyAll();
    }

    private void run() {
        boards.get().forEach(board -> carefully(board, "made ready", () -> {
            board.warm();
            return Optional.empty();
        }));
        try {
            while (sleep(publishAll())) {
                // goes round until closed
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** @return how long nothing changes by itself */
    private Duration publishAll() {
        try {
            before.run();
        } catch (Throwable e) {
            LOG.log(Level.ERROR, "the round could not be begun as it should", e);
        }
        Optional<Duration> next = boards.get().stream()
                .filter(board -> board.watched() || board.mayBeMended())
                .flatMap(board -> publish(board).stream())
                .min(Comparator.naturalOrder());
        boards.get().forEach(board -> carefully(board, "finished", () -> {
            afterwards.accept(board);
            return Optional.empty();
        }));
        Duration until = next.orElse(LONGEST_SLEEP);
        return until.compareTo(LONGEST_SLEEP) > 0 ? LONGEST_SLEEP
                : until.compareTo(SHORTEST_SLEEP) < 0 ? SHORTEST_SLEEP : until;
    }

    private static Optional<Duration> publish(ClassBoard board) {
        return carefully(board, "shown", () -> {
            if (board.stale()) {
                board.publish();
            }
            return board.unchanged();
        });
    }

    /** Whatever is wrong with one class, even an error of the machine, the others go on being published. */
    private static Optional<Duration> carefully(ClassBoard board, String what,
                                                Supplier<Optional<Duration>> work) {
        try {
            return work.get();
        } catch (Throwable e) {
            LOG.log(Level.ERROR, "class " + board.id() + " could not be " + what, e);
            return Optional.empty();
        }
    }

    private synchronized boolean sleep(Duration most) throws InterruptedException {
        if (!woken && !closed) {
            wait(Math.max(1, most.toMillis()));
        }
        for (long early = early(); early > 0 && !closed; early = early()) {
            wait(early);
        }
        roundBegan = System.nanoTime();
        woken = false;
        return !closed;
    }

    /** The first tap after a pause is shown at once. @return milliseconds until the next round may begin */
    private long early() {
        return ROUND_MILLIS - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - roundBegan);
    }

    /** Waits a moment for a round that is under way, as the store may be closed next. */
    @Override public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        try {
            thread.join(LONGEST_GOODBYE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

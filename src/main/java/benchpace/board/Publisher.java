package benchpace.board;

import benchpace.board.attempt.Faults;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Derives views and fills mailboxes: after a command, and when the views themselves say that time alone will change
 * them. A tap is shown in two breaths ({@link benchpace.board.view.ClassViews}): at once, on threads that compute
 * nothing, and whole, in rounds of the class's own, one at a time and so in order, on a few threads that all classes
 * share: one whose view takes long holds up no other. While taps pour in each has its first breath, and only the newest
 * has a second. It never writes to a network, so no screen can hold it up.
 */
final class Publisher implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Publisher.class.getName());
    /** So many classes may be slow at once before others wait for them. */
    private static final int THREADS = 4;
    private static final int THREADS_AT_ONCE = 2;
    /** Also how soon a computer that woke, or a clock that was set, is noticed. */
    private static final Duration LONGEST_SLEEP = Duration.ofSeconds(10);
    private static final long LONGEST_GOODBYE_MILLIS = 500;
    private static final Duration SHORTEST_SLEEP = Duration.ofMillis(200);

    /** Whole views that come faster than this are made together: an eye follows no more, and each costs. */
    private static final long ROUND_MILLIS = 100;
    /** So long the second breath waits for screens to draw the first: a small machine has one processor for both. */
    private static final long BREATH_MILLIS = 10;

    private final Runnable before;
    private final Consumer<ClassBoard> afterwards;
    private final Faults faults = new Faults();
    private final ScheduledThreadPoolExecutor threads = pool("board-publisher-", THREADS);
    private final ScheduledThreadPoolExecutor threadsAtOnce = pool("board-at-once-", THREADS_AT_ONCE);
    private final Map<ClassBoard, Rounds> rounds = new ConcurrentHashMap<>();

    /**
     * @param before     done first in each round of any class; may be done by several at once
     * @param afterwards done with a class once its screens have been told
     */
    Publisher(Runnable before, Consumer<ClassBoard> afterwards) {
        this.before = before;
        this.afterwards = afterwards;
        threadsAtOnce.prestartAllCoreThreads(); // so that no tap asks the system for one
    }

    private static ScheduledThreadPoolExecutor pool(String name, int threads) {
        AtomicInteger started = new AtomicInteger();
        ScheduledThreadPoolExecutor pool = new ScheduledThreadPoolExecutor(threads, work -> {
            Thread thread = new Thread(work, name + started.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        }, new ThreadPoolExecutor.DiscardPolicy()); // what still comes while it closes
        pool.setRemoveOnCancelPolicy(true);
        pool.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
        return pool;
    }

    /** Makes the classes that were there before ready, and publishes them from then on. */
    void start(Collection<ClassBoard> boards) {
        boards.forEach(board -> rounds.computeIfAbsent(board, b -> new Rounds(b, true)).wake());
    }

    /** Something happened in a class, or somebody began to look at it. */
    void wake(ClassBoard board) {
        if (board.isDeleted()) {
            return;
        }
        rounds.computeIfAbsent(board, b -> new Rounds(b, false)).wake();
    }

    /** A class is there no more. */
    void forget(ClassBoard board) {
        Optional.ofNullable(rounds.remove(board)).ifPresent(Rounds::stop);
    }

    /** The first breaths of one class: one at a time, and what comes meanwhile is shown together. */
    private final class AtOnce implements Runnable {
        private final ClassBoard board;
        private final AtomicInteger asked = new AtomicInteger();

        AtOnce(ClassBoard board) {
            this.board = board;
        }

        void wake() {
            if (asked.getAndIncrement() == 0) {
                threadsAtOnce.execute(this);
            }
        }

        @Override public void run() {
            int shown;
            do {
                shown = asked.get();
                if (board.watched()) {
                    carefully(board, "shown at once", () -> {
                        board.publishAtOnce();
                        return Optional.empty();
                    });
                }
            } while (!asked.compareAndSet(shown, 0));
        }
    }

    /** The rounds of one class. */
    private final class Rounds implements Runnable {
        private final ClassBoard board;
        private final AtOnce atOnce;
        private boolean cold;
        private boolean underWay;
        private boolean woken;
        private boolean stopped;
        private long began = System.nanoTime() - TimeUnit.MILLISECONDS.toNanos(ROUND_MILLIS);
        private Optional<ScheduledFuture<?>> next = Optional.empty();

        Rounds(ClassBoard board, boolean cold) {
            this.board = board;
            this.cold = cold;
            this.atOnce = new AtOnce(board);
        }

        void wake() {
            atOnce.wake();
            wakeRound();
        }

        private synchronized void wakeRound() {
            woken = true;
            if (!underWay) {
                plan(early());
            }
        }

        synchronized void stop() {
            stopped = true;
            next.ifPresent(planned -> planned.cancel(false));
        }

        private void plan(long millis) {
            if (stopped) {
                return;
            }
            next.ifPresent(planned -> planned.cancel(false));
            next = Optional.of(threads.schedule(this, millis, TimeUnit.MILLISECONDS));
        }

        /** Milliseconds until the next round may begin. */
        private long early() {
            return Math.max(BREATH_MILLIS,
                    ROUND_MILLIS - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began));
        }

        @Override public void run() {
            if (!begins()) {
                return;
            }
            carefully(board, "given the time", () -> {
                before.run();
                board.catchUp();
                return Optional.empty();
            });
            if (cold) {
                cold = false;
                carefully(board, "made ready", () -> {
                    board.warm();
                    return Optional.empty();
                });
            }
            Optional<Duration> unchanged = publish(board);
            if (board.views().isBehind()) { // what was computed is shown with what was tapped meanwhile
                atOnce.wake();
            }
            carefully(board, "finished", () -> {
                afterwards.accept(board);
                return Optional.empty();
            });
            ends(unchanged.orElse(LONGEST_SLEEP));
        }

        /** One woken in the very moment it began must not be made twice at once. */
        private synchronized boolean begins() {
            if (stopped) {
                return false;
            }
            if (underWay) {
                woken = true;
                return false;
            }
            underWay = true;
            woken = false;
            began = System.nanoTime();
            return true;
        }

        private synchronized void ends(Duration unchanged) {
            underWay = false;
            Duration sleep = unchanged.compareTo(LONGEST_SLEEP) > 0 ? LONGEST_SLEEP
                    : unchanged.compareTo(SHORTEST_SLEEP) < 0 ? SHORTEST_SLEEP : unchanged;
            if (woken || !board.isAtRest()) {
                plan(woken ? early() : sleep.toMillis());
            }
        }
    }

    private Optional<Duration> publish(ClassBoard board) {
        if (!board.watched() && !board.mayBeMended()) {
            return Optional.empty();
        }
        return carefully(board, "shown", () -> {
            if (board.views().stale()) {
                board.publish();
            }
            return board.views().unchanged();
        });
    }

    /** Whatever is wrong with one class, even an error of the machine, it and the others go on being published. */
    private Optional<Duration> carefully(ClassBoard board, String what, Supplier<Optional<Duration>> work) {
        try {
            return work.get();
        } catch (Throwable e) {
            if (faults.isNew(board.id() + " " + what, e)) {
                LOG.log(Level.ERROR, "class " + board.id() + " could not be " + what, e);
            }
            return Optional.empty();
        }
    }

    /** Waits a moment for rounds that are under way, as the store may be closed next. */
    @Override public void close() {
        threadsAtOnce.shutdown();
        threads.shutdown();
        try {
            threads.awaitTermination(LONGEST_GOODBYE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

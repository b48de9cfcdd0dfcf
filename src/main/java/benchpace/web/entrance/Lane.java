package benchpace.web.entrance;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Threads for one kind of lines, so that the other kind cannot take them; and within it each caller has a few of them
 * at once and its own queue for the rest, so that whoever asks for a thousand things holds up itself. What waits for a
 * thread holds none.
 */
final class Lane {
    private static final long IDLE_SECONDS = 30;

    private final ThreadPoolExecutor threads;
    private final int ofOneCaller;
    private final int mostWaiting;
    private final Map<String, Turns> callers = new HashMap<>();
    private int waiting;

    /** What one caller has asked for and was not answered yet; gone when there is nothing. */
    private static final class Turns {
        private final Queue<Runnable> waiting = new ArrayDeque<>();
        private int taken;
    }

    /**
     * @param ofOneCaller of the threads
     * @param waiting     beyond those that one caller may have; a half of them at most may be one caller's
     */
    Lane(String name, int threads, int ofOneCaller, int waiting) {
        this.ofOneCaller = ofOneCaller;
        this.mostWaiting = waiting;
        AtomicInteger number = new AtomicInteger();
        this.threads = new ThreadPoolExecutor(threads, threads, IDLE_SECONDS, TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(), work -> {
                    Thread thread = new Thread(work, name + "-" + number.incrementAndGet());
                    thread.setDaemon(true);
                    return thread;
                });
        this.threads.allowCoreThreadTimeOut(true);
    }

    /** @return false if too many wait already, or the board is closing */
    synchronized boolean take(String caller, Runnable work) {
        Turns turns = callers.computeIfAbsent(caller, c -> new Turns());
        if (turns.taken < ofOneCaller) {
            turns.taken++;
            return start(caller, turns, work);
        }
        if (waiting >= mostWaiting || turns.waiting.size() >= mostWaiting / 2) {
            return false;
        }
        waiting++;
        return turns.waiting.add(work);
    }

    private boolean start(String caller, Turns turns, Runnable work) {
        try {
            threads.execute(() -> {
                try {
                    work.run();
                } finally {
                    next(caller, turns);
                }
            });
            return true;
        } catch (RejectedExecutionException e) {
            return false;
        }
    }

    /** Behind what others wait for: whoever has asked for much has its turn as often as whoever asks for little. */
    private synchronized void next(String caller, Turns turns) {
        Runnable work = turns.waiting.poll();
        if (work != null) {
            waiting--;
            start(caller, turns, work);
        } else if (--turns.taken == 0) {
            callers.remove(caller);
        }
    }

    void close() {
        threads.shutdown();
    }
}

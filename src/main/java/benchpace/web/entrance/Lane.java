package benchpace.web.entrance;

import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Threads for one kind of lines, so that the other kind cannot take them. What waits for one holds none. */
final class Lane {
    private static final long IDLE_SECONDS = 30;

    private final ThreadPoolExecutor threads;

    Lane(String name, int threads, int waiting) {
        AtomicInteger number = new AtomicInteger();
        this.threads = new ThreadPoolExecutor(threads, threads, IDLE_SECONDS, TimeUnit.SECONDS,
                new LinkedBlockingQueue<>(waiting), work -> {
                    Thread thread = new Thread(work, name + "-" + number.incrementAndGet());
                    thread.setDaemon(true);
                    return thread;
                });
        this.threads.allowCoreThreadTimeOut(true);
    }

    /** @return false if too many wait already, or the board is closing */
    boolean take(Runnable work) {
        try {
            threads.execute(work);
            return true;
        } catch (RejectedExecutionException e) {
            return false;
        }
    }

    void close() {
        threads.shutdown();
    }
}

package benchpace.board;

import benchpace.board.time.BoardTime;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Does away with what is kept for some days only, by itself: when the board starts, and then every hour that it lives,
 * whether or not anybody opens a page. What fails is tried again after a minute, then after twice as long each time, up
 * to an hour.
 */
public final class Erasing implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Erasing.class.getName());
    static final Duration EVERY = Duration.ofHours(1);
    static final Duration FIRST_WAIT = Duration.ofMinutes(1);
    /** How often it is asked whether something is due, in real time: a computer that slept is not late by more. */
    private static final int LOOKS_EVERY_SECONDS = 10;
    private static final long LONGEST_GOODBYE_MILLIS = 500;

    private final BoardTime clock;
    private final List<Round> rounds;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "board-erasing");
        made.setDaemon(true);
        return made;
    });

    /**
     * What is kept for some days only.
     *
     * @param what in the middle of a sentence, in the plural; it is told to whoever asks, so it names nobody
     * @param work erases what is due of it, nothing while the clock is in doubt ({@link BoardTime#trusted}); may be
     *             asked at any time, and throws if it cannot
     */
    public record Part(String what, Runnable work) { }

    /** Erases what is due once before it returns, and goes on until it is closed. */
    public Erasing(BoardTime clock, List<Part> parts) {
        this.clock = clock;
        this.rounds = parts.stream().map(Round::new).toList();
        look();
        thread.scheduleWithFixedDelay(this::look, LOOKS_EVERY_SECONDS, LOOKS_EVERY_SECONDS, TimeUnit.SECONDS);
    }

    /** Erases what is due, if its time has come. */
    public synchronized void look() {
        Duration lived = clock.lived();
        rounds.forEach(round -> round.lookAt(lived));
    }

    /** What could not be erased when it was tried last, as it is called; it is tried again. */
    public synchronized List<String> failing() {
        return rounds.stream().filter(Round::failed).map(round -> round.part.what()).toList();
    }

    /** The rounds of one part: what fails of one holds up no other. */
    private static final class Round {
        private final Part part;
        /** In time lived; from the beginning. */
        private Duration due = Duration.ZERO;
        /** Zero while all is well. */
        private Duration wait = Duration.ZERO;

        Round(Part part) {
            this.part = part;
        }

        boolean failed() {
            return !wait.isZero();
        }

        void lookAt(Duration lived) {
            if (lived.compareTo(due) < 0) {
                return;
            }
            try {
                part.work().run();
                wait = Duration.ZERO;
                due = lived.plus(EVERY);
            } catch (RuntimeException e) {
                if (!failed()) {
                    LOG.log(Level.WARNING, "Cannot erase " + part.what() + " yet; it is tried again.", e);
                }
                wait = !failed() ? FIRST_WAIT : wait.multipliedBy(2).compareTo(EVERY) < 0 ? wait.multipliedBy(2)
                        : EVERY;
                due = lived.plus(wait);
            }
        }
    }

    /** Waits a moment for what is being erased, as the store may be closed next. */
    @Override public void close() {
        thread.shutdown();
        try {
            thread.awaitTermination(LONGEST_GOODBYE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

package benchpace.board.playback;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The evenings that are played back, a few at a time. They are kept in memory alone, beside the classes and never among
 * them: no list, no shelf, no lesson and no address that changes something meets one. Safe for use by many threads.
 */
public final class Playbacks implements AutoCloseable {
    /** One at the table, one for each of a few helpers who learn. */
    static final int MOST = 4;
    /** No id of a class has a dot, so none is ever taken for one. */
    private static final String PREFIX = "played.";
    /** An eye follows no more than that; a class minute takes a second at the highest speed. */
    private static final long ROUND_MILLIS = 150;
    private static final int THREADS = 2;

    private final Boards boards;
    private final Function<Optional<String>, PlaybackModels> models;
    private final Supplier<String> idEndings;
    private final Supplier<Duration> passing;
    private final AtomicInteger started = new AtomicInteger();
    private final ScheduledThreadPoolExecutor threads = new ScheduledThreadPoolExecutor(THREADS, this::thread,
            new ThreadPoolExecutor.DiscardPolicy());
    private final Map<String, Kept> kept = new LinkedHashMap<>();

    /** @param of the class as it was when it was opened; empty for one that is not in the store */
    private record Kept(Playback playback, Optional<LiveClass> of, Future<?> rounds) { }

    /**
     * By the time that passes while the computer is awake.
     *
     * @param models    what an evening is judged by, by the class it was; that of no class knows nothing of its room
     * @param idEndings makes the random endings of ids
     */
    public Playbacks(Boards boards, Function<Optional<String>, PlaybackModels> models, Supplier<String> idEndings) {
        this(boards, models, idEndings, () -> Duration.ofNanos(System.nanoTime()));
    }

    /** @param passing passing time, from an arbitrary beginning */
    public Playbacks(Boards boards, Function<Optional<String>, PlaybackModels> models, Supplier<String> idEndings,
                     Supplier<Duration> passing) {
        this.boards = boards;
        this.models = models;
        this.idEndings = idEndings;
        this.passing = passing;
        threads.setRemoveOnCancelPolicy(true);
    }

    private Thread thread(Runnable work) {
        Thread thread = new Thread(work, "playback-" + started.incrementAndGet());
        thread.setDaemon(true);
        return thread;
    }

    /** Whether there is an evening to be seen: it began, and is closed or was left open. */
    public static boolean isOver(ClassBoard board) {
        LiveClass live = board.live();
        return live.begun() && (live.closedAt().isPresent() || live.isLeftOpen(board.now()));
    }

    /** Opens a past class from its beginning. @param opener the mark of the device @return empty if it is not over */
    public Optional<Playback> open(ClassBoard board, String opener) {
        LiveClass live = board.live();
        return isOver(board)
                ? Optional.of(open(Optional.of(board.id()), Optional.of(live), live.log(), opener)) : Optional.empty();
    }

    /** Opens an evening that is in no store. @param log numbered from 1 without gaps; the first is the creation */
    public Playback open(List<Recorded> log, String opener) {
        return open(Optional.empty(), Optional.empty(), log, opener);
    }

    private synchronized Playback open(Optional<String> classId, Optional<LiveClass> of, List<Recorded> log,
                                       String opener) {
        Playback playback = new Playback(freeId(), classId, opener, log, models.apply(classId), passing);
        while (kept.size() >= MOST) {
            kept.values().stream().map(Kept::playback).min(Comparator.comparing(Playback::isWatched)
                    .thenComparing(Playback::lookedAt)).ifPresent(longest -> end(longest.id()));
        }
        Future<?> rounds = threads.scheduleWithFixedDelay(() -> round(playback), ROUND_MILLIS, ROUND_MILLIS,
                TimeUnit.MILLISECONDS);
        kept.put(playback.id(), new Kept(playback, of, rounds));
        return playback;
    }

    private void round(Playback playback) {
        find(playback.id()).ifPresent(Playback::round);
    }

    private String freeId() {
        String id;
        do {
            id = PREFIX + idEndings.get();
        } while (kept.containsKey(id));
        return id;
    }

    /**
     * One that is played. It ends when its class is deleted or is no longer as it was: what was taken out of the class
     * is in no playback of it either.
     */
    public Optional<Playback> find(String id) {
        Optional<Kept> found;
        synchronized (this) {
            found = Optional.ofNullable(kept.get(id));
        }
        if (found.filter(this::stands).isEmpty()) {
            found.ifPresent(gone -> end(id));
            return Optional.empty();
        }
        return found.map(Kept::playback);
    }

    private boolean stands(Kept one) {
        return one.of.isEmpty() || one.playback.classId().flatMap(boards::find)
                .filter(board -> board.live() == one.of.get()).isPresent();
    }

    /** Whether an id is that of a playback, of one that has ended, too. */
    public static boolean isOne(String id) {
        return id.startsWith(PREFIX);
    }

    /** Ends one; its screens say so. @return whether there was one */
    public synchronized boolean end(String id) {
        Optional<Kept> gone = Optional.ofNullable(kept.remove(id));
        gone.ifPresent(one -> {
            one.rounds.cancel(false);
            one.playback.end();
        });
        return gone.isPresent();
    }

    @Override public void close() {
        threads.shutdownNow();
    }
}

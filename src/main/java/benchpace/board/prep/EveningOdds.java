package benchpace.board.prep;

import benchpace.board.attempt.Faults;
import benchpace.cure.room.TrajectoryCache;
import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.WhatWouldHelp;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Simulates evenings on a thread of its own, beside the classes that run: whoever asks is told how far it is, and asks
 * again. The same setting is simulated once; what was asked for last comes first, and what nobody may want any more,
 * as somebody types one number of seats after the other, is given up.
 */
public final class EveningOdds implements AutoCloseable {
    private static final Logger LOG = System.getLogger(EveningOdds.class.getName());
    private static final long SEED = 1;
    private static final int MOST_KNOWN = 24;
    private static final int MOST_WAITING = 4;
    /** How often a screen is told of progress, in parts of the whole. */
    private static final int PARTS = 10;

    /** Simulates; told of progress. */
    public interface Work {
        Evenings of(Setting setting, TrajectoryCache cache, Evenings.Progress progress);
    }

    private final TrajectoryCache cache = new TrajectoryCache();
    private final Work work;
    private final Faults faults = new Faults();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread made = new Thread(task, "prep-odds");
        made.setDaemon(true);
        made.setPriority(Thread.MIN_PRIORITY);
        return made;
    });
    private final Map<Setting, Odds> known = new LinkedHashMap<>(MOST_KNOWN, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<Setting, Odds> eldest) {
            return size() > MOST_KNOWN;
        }
    };
    /** The newest first. */
    private final Deque<Asked> waiting = new ArrayDeque<>();

    /** Who asked for what. @param changed told when there is more to be seen */
    private record Asked(Setting setting, Runnable changed) { }

    /** As many evenings as usual, from the seed that all screens and commands share. */
    public EveningOdds() {
        this((setting, cache, progress) -> Evenings.of(setting, SEED, Evenings.USUAL, cache, progress));
    }

    public EveningOdds(Work work) {
        this.work = work;
    }

    /** How far it is; begins if nobody has asked before. @param changed run, on another thread, when it has come on */
    public synchronized Odds of(Setting setting, Runnable changed) {
        Odds odds = known.get(setting);
        if (odds == null) {
            odds = new Odds.UnderWay(0, Evenings.USUAL);
            known.put(setting, odds);
            waiting.push(new Asked(setting, changed));
            if (waiting.size() > MOST_WAITING) {
                known.remove(waiting.removeLast().setting());
            }
            thread.execute(this::next);
        }
        return odds;
    }

    /** What is known of it, without beginning anything. */
    public synchronized Odds known(Setting setting) {
        Odds odds = known.get(setting);
        return odds == null ? new Odds.UnderWay(0, Evenings.USUAL) : odds;
    }

    /** The same once it is no more under way, or as it is then. @param patience to wait at most */
    public synchronized Odds awaited(Setting setting, Duration patience) throws InterruptedException {
        long deadline = System.nanoTime() + patience.toNanos();
        Odds odds = of(setting, () -> { });
        for (long left = patience.toMillis(); odds instanceof Odds.UnderWay && left > 0;
                left = (deadline - System.nanoTime()) / 1_000_000) {
            wait(left);
            odds = of(setting, () -> { });
        }
        return odds;
    }

    private void next() {
        Asked asked;
        synchronized (this) {
            asked = waiting.poll();
        }
        if (asked != null) {
            simulate(asked);
        }
    }

    private void simulate(Asked asked) {
        try {
            Evenings evenings = work.of(asked.setting(), cache, (done, of) -> {
                if (done < of && done * PARTS / of != (done - 1) * PARTS / of) {
                    told(asked, new Odds.UnderWay(done, of));
                }
            });
            told(asked, new Odds.Told(evenings.timetable(), Optional.empty()));
            told(asked, new Odds.Told(evenings.timetable(), Optional.of(helps(asked, evenings))));
        } catch (RuntimeException | StackOverflowError e) {
            note(asked, e);
            told(asked, new Odds.Missing());
        }
    }

    /** None where the changed plans cannot be simulated: the timetable stands by itself. */
    private List<Effect> helps(Asked asked, Evenings evenings) {
        try {
            return WhatWouldHelp.of(evenings, cache, Evenings.Progress.UNTOLD);
        } catch (RuntimeException | StackOverflowError e) {
            note(asked, e);
            return List.of();
        }
    }

    private void note(Asked asked, Throwable fault) {
        if (faults.isNew(asked.setting().plan().id().value(), fault)) {
            LOG.log(Level.ERROR, "the evenings of plan " + asked.setting().plan().id() + " cannot be simulated", fault);
        }
    }

    private void told(Asked asked, Odds odds) {
        synchronized (this) {
            known.put(asked.setting(), odds);
            notifyAll();
        }
        asked.changed().run();
    }

    @Override public void close() {
        thread.shutdownNow();
    }
}

package benchpace.board;

import benchpace.board.view.NamesKept;
import benchpace.store.EventLog;
import benchpace.store.Forgotten;
import benchpace.store.KeptWords;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * The classes that are in the log and cannot be read back: they are left out and nobody can open them, and yet their
 * guests are to be forgotten like those of others, as far as what stands there can be told.
 */
public final class UnreadableClasses {
    private static final Logger LOG = System.getLogger(UnreadableClasses.class.getName());

    private final EventLog log;
    private final Set<String> ids = new ConcurrentSkipListSet<>();

    UnreadableClasses(EventLog log) {
        this.log = log;
    }

    void add(String id) {
        ids.add(id);
    }

    public Set<String> ids() {
        return Collections.unmodifiableSet(ids);
    }

    /** Those that hold words of guests, or may. */
    public List<NamesKept> withNames() {
        List<NamesKept> kept = new ArrayList<>();
        for (String id : ids) {
            try {
                KeptWords words = log.keptWords(id);
                if (words.erasable() + words.stuck() > 0) {
                    kept.add(new NamesKept(id, words.last(), words.until(), words.stuck() > 0));
                }
            } catch (StoreException e) {
                LOG.log(Level.WARNING, "nobody can tell what class " + id + " holds", e);
                kept.add(new NamesKept(id, Optional.empty(), Optional.empty(), true));
            }
        }
        return kept;
    }

    /** Completes what was asked for before they could not be read any more. @throws StoreException if one cannot be */
    void complete() {
        Map<String, Forgotten> asked = log.forgotten();
        ids.stream().filter(asked::containsKey).forEach(id -> log.forgetUnreadable(id, asked.get(id)));
    }

    /** The same of one that was just found to be so; if it cannot be done {@link #complete()} does it later. */
    void complete(String id, Forgotten asked) {
        try {
            log.forgetUnreadable(id, asked);
        } catch (StoreException e) {
            LOG.log(Level.WARNING, "the guests of class " + id + " cannot be forgotten yet; it is tried again", e);
        }
    }

    /**
     * Forgets the guests of those of which nothing was written down, and which were not to be held, for so long.
     *
     * @return whether there were any
     */
    boolean forgetDue(Duration kept, Instant now) {
        Forgotten byAge = new Forgotten(now.truncatedTo(ChronoUnit.MILLIS), true);
        Set<String> done = log.forgotten().keySet();
        List<String> due = ids.stream().filter(id -> !done.contains(id))
                .filter(id -> log.keptWords(id).until().filter(until -> !until.plus(kept).isAfter(now)).isPresent())
                .toList();
        due.forEach(id -> log.forgetUnreadable(id, byAge));
        return !due.isEmpty();
    }

    /** Deletes one for good, with all that was written down in it. @return whether it was there */
    boolean delete(String id, Instant now) {
        boolean there = ids.contains(id);
        if (there) {
            log.delete(id, now);
            log.erase(id);
            ids.remove(id);
        }
        return there;
    }
}

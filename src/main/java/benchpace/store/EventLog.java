package benchpace.store;

import benchpace.live.Recorded;
import benchpace.store.sqlite.StoreException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** The events of every class, in order, for good; but for the words of guests that are forgotten. */
public interface EventLog {
    /** No shop is shut for longer without somebody looking after its board's clock. */
    Duration QUIET_SEASON = Duration.ofDays(60);

    /** Every class there is, the earliest created first; none that is deleted. */
    List<String> classIds();

    /**
     * The classes that are closed for certain, told by the mere kinds of their events, and when each was: nothing after
     * its one close reaches back behind it.
     *
     * @param before only those of which nothing was written down since
     */
    default Map<String, Instant> closed(Instant before) {
        return Map.of();
    }

    /** Whether anything was written down in any class from then to then, both included. */
    boolean anyRecorded(Instant from, Instant until);

    /**
     * Whether a clock that shows such a time fits what was written down: nothing was, or something in the sixty days
     * before. A board that was off for longer may have a wrong clock.
     */
    default boolean fits(Instant now) {
        return anyRecorded(now.minus(QUIET_SEASON), now) || classIds().isEmpty();
    }

    /**
     * All events of a class, from 1 without gaps; empty if there is no such class.
     *
     * @throws StoreException if they cannot be read, or are not what was written
     */
    List<Recorded> read(String classId);

    /**
     * Keeps one event: when this returns it survives a power cut; when it throws nothing was kept.
     *
     * @param event its number is one above the last; its instants are whole milliseconds
     * @throws SeqTaken     if it does not follow the last event of the class
     * @throws CommandTaken if the class has an event of that command
     * @throws CannotBeKept if it would not be read back as it is; the caller's fault, not the store's
     * @throws StoreException if it cannot be kept, in one sentence; the log may be tried again afterwards
     */
    void append(String classId, Recorded event);

    /** The classes that are deleted, and when each was; what they hold may still be there. */
    default Map<String, Instant> deleted() {
        return Map.of();
    }

    /** A class is there no more. What it holds stays until {@link #erase}; when this throws it is as it was. */
    default void delete(String classId, Instant at) {
        throw new UnsupportedOperationException("this log keeps every class");
    }

    /** @return whether a class that was deleted is there again; not if it was erased */
    default boolean restore(String classId) {
        return false;
    }

    /** The classes whose guests are forgotten. */
    default Map<String, Forgotten> forgotten() {
        return Map.of();
    }

    /**
     * Forgets the guests of a class, at once or not at all: its events lose their words where they are written down.
     * Copies of those may stay in unused parts of the file until a {@link FileSweep}.
     *
     * @param nameless all its events, in order, as they are to be read from now on; nothing but words may differ
     */
    default void forgetGuests(String classId, Forgotten forgotten, List<Recorded> nameless) {
        throw new UnsupportedOperationException("this log keeps every word");
    }

    /** The same of a class that cannot be read back, as far as what stands there can be told. */
    default void forgetUnreadable(String classId, Forgotten forgotten) {
        throw new UnsupportedOperationException("this log keeps every word");
    }

    /** What a class that cannot be read back holds of words of its guests. */
    default KeptWords keptWords(String classId) {
        throw new UnsupportedOperationException("this log keeps every word");
    }

    /** Removes all that is kept of a class that is deleted, and of nothing else, at once or not at all. */
    default void erase(String classId) {
        throw new UnsupportedOperationException("this log keeps every class");
    }
}

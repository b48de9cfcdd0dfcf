package benchpace.store;

import benchpace.live.Recorded;
import java.time.Instant;
import java.util.List;

/** The events of every class, in order, for good. */
public interface EventLog {

    /** Every class there is, the earliest created first. */
    List<String> classIds();

    /** The last instant written down in any class; 1970 if there is none. */
    Instant lastRecorded();

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
}

package benchpace.board;

import benchpace.board.attempt.Faults;
import benchpace.store.Forgotten;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;

/**
 * The classes that were over when the board started and that nobody has looked at since. A studio has few classes
 * tonight and thousands behind it, so each is read when somebody first looks at it, once, however many look.
 */
final class PastClasses {
    /**
     * What is known of one without reading it.
     *
     * @param closedAt  as its own log tells
     * @param forgotten whether its guests are
     */
    record Unread(Instant closedAt, Optional<Forgotten> forgotten) { }

    private static final Logger LOG = System.getLogger(PastClasses.class.getName());

    private final Faults faults = new Faults();
    private final Map<String, Unread> unread;
    private volatile boolean closed;
    private final BiConsumer<String, Optional<Forgotten>> reading;

    /** @param reading puts a class among those that are there, or among those that cannot be read */
    PastClasses(Map<String, Unread> unread, BiConsumer<String, Optional<Forgotten>> reading) {
        this.unread = new ConcurrentHashMap<>(unread);
        this.reading = reading;
    }

    /** The store is closed next: what cannot be read from now on is nobody's concern. */
    void close() {
        closed = true;
    }

    boolean contains(String id) {
        return unread.containsKey(id);
    }

    /** Those that are left at this moment. */
    Set<String> ids() {
        return Set.copyOf(unread.keySet());
    }

    /** Those whose guests are known still, and that were closed by then. */
    List<String> withGuests(Instant closedBy) {
        return unread.entrySet().stream().filter(one -> one.getValue().forgotten().isEmpty()
                && !one.getValue().closedAt().isAfter(closedBy)).map(Map.Entry::getKey).toList();
    }

    /**
     * When this returns it is read, whoever did so; nothing if it is none of these.
     *
     * @throws StoreException if the file fails; it is read when it is asked for again
     */
    void read(String id) {
        unread.computeIfPresent(id, (of, known) -> {
            reading.accept(of, known.forgotten());
            return null;
        });
    }

    void readAll() {
        if (!unread.isEmpty()) {
            ids().parallelStream().forEach(this::readIfPossible);
        }
    }

    /** One that cannot be read just now keeps nobody from the others. @return whether it could be */
    boolean readIfPossible(String id) {
        try {
            read(id);
            return true;
        } catch (StoreException e) {
            if (!closed && faults.isNew("reading", e)) {
                LOG.log(Level.WARNING, "class " + id + " cannot be read just now; it is tried again", e);
            }
            return false;
        }
    }
}

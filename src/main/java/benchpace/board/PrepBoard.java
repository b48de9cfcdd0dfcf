package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.store.PrepTicks;
import benchpace.store.PrepTicks.Tick;
import benchpace.store.sqlite.Database;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is ticked off of the lists of the day before, and the one place where it changes. A tick is on disk before any
 * screen shows it; the same tick again changes nothing, so that two devices that tick one thing at once have ticked it
 * once.
 */
public final class PrepBoard {
    private final PrepTicks store;
    private final Boards boards;
    private final BoardTime clock;
    private final Map<String, Ticked> classes = new LinkedHashMap<>();
    private long revision;

    /**
     * All that is ticked off in a class.
     *
     * @param revision grows with every change while the board runs, over all classes
     * @param ticks    by item, in the order in which they were made
     */
    public record Ticked(long revision, Map<String, Tick> ticks) {
        static final Ticked NOTHING = new Ticked(0, Map.of());

        public Ticked {
            ticks = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(ticks));
        }

        public Optional<Tick> of(String item) {
            return Optional.ofNullable(ticks.get(item));
        }
    }

    /** Opens what the store holds. */
    public PrepBoard(Database database, Boards boards, InstantSource clock) {
        this.store = new PrepTicks(database);
        this.boards = boards;
        this.clock = BoardTime.of(clock);
        store.all().forEach((id, ticks) -> classes.put(id, new Ticked(0, ticks)));
    }

    public synchronized Ticked ticked(String classId) {
        return classes.getOrDefault(classId, Ticked.NOTHING);
    }

    /**
     * Ticks something off, or takes the tick away, durably.
     *
     * @param done whether it is ticked off from now on
     * @param by   "instructor", or a helper's initials, which may be empty
     * @return everything that is ticked off then
     */
    public Ticked set(String classId, String item, boolean done, String by) {
        Ticked after = changed(classId, item, done, by);
        boards.find(classId).ifPresent(ClassBoard::nudge);
        return after;
    }

    private synchronized Ticked changed(String classId, String item, boolean done, String by) {
        Ticked before = ticked(classId);
        if (before.of(item).isPresent() == done) {
            return before;
        }
        Map<String, Tick> ticks = new LinkedHashMap<>(before.ticks());
        if (done) {
            Tick tick = new Tick(item, by, clock.instant().truncatedTo(ChronoUnit.MILLIS));
            store.tick(classId, tick);
            ticks.put(item, tick);
        } else {
            store.untick(classId, item);
            ticks.remove(item);
        }
        Ticked after = new Ticked(++revision, ticks);
        classes.put(classId, after);
        return after;
    }

    /** The class is deleted, and its ticks with it. */
    public synchronized void forget(String classId) {
        store.forget(classId);
        classes.remove(classId);
    }
}

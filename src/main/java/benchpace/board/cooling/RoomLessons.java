package benchpace.board.cooling;

import benchpace.board.attempt.Faults;
import benchpace.cure.room.RoomFit;
import benchpace.live.LiveClass;
import benchpace.store.Rooms;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A room's memory: what a class starts from, and the lesson it leaves when it is closed. A lesson is drawn anew when
 * something is set right after the closing. Safe for use by many threads.
 */
public final class RoomLessons implements RoomCureClock.Priors {
    private static final Logger LOG = System.getLogger(RoomLessons.class.getName());
    /** No event has that number. */
    private static final long NEVER = 0;

    private final Rooms rooms;
    private final InstantSource clock;
    private final RoomCureClock cure = new RoomCureClock(this);
    private final Map<String, RoomFit> started = new ConcurrentHashMap<>();
    private final Map<String, Long> drawn = new ConcurrentHashMap<>();
    private final Faults faults = new Faults();

    public RoomLessons(Rooms rooms, InstantSource clock) {
        this.rooms = rooms;
        this.clock = clock;
        int unsound = rooms.unsound();
        if (unsound > 0) {
            LOG.log(Level.WARNING, "what rooms have taught cannot all be read: lessons passed over: " + unsound);
        }
    }

    /** The clock that starts every class from what its room has taught. */
    public RoomCureClock cureClock() {
        return cure;
    }

    /** Fixes what a class that has begun starts from, unless that is done; tried again with its next event. */
    public void begin(String classId, LiveClass live) {
        if (!live.plan().candles().isEmpty() && !started.containsKey(classId)) {
            try {
                started.put(classId, rooms.prior(classId, live.plan().place()));
            } catch (StoreException e) {
                log("what class " + classId + " starts from cannot be kept yet", e);
            }
        }
    }

    /**
     * Only reads: what was fixed when the class began, before that what it would start from. A screen must not go dark
     * because that cannot be read: then the class counts from an untaught room meanwhile.
     */
    @Override public RoomFit of(String classId, String room) {
        RoomFit known = started.get(classId);
        if (known != null) {
            return known;
        }
        try {
            return rooms.started(classId).orElseGet(() -> rooms.before(classId, room));
        } catch (StoreException e) {
            log("what the room has taught cannot be read", e);
            return RoomFit.untaught();
        }
    }

    /** Once: it is tried again many times. */
    private void log(String what, StoreException fault) {
        if (faults.isNew(what, fault)) {
            LOG.log(Level.ERROR, what, fault);
        }
    }

    /** Draws the lesson of a closed class, unless that is done. Only who has one to draw waits for another's. */
    public void draw(String classId, LiveClass live) {
        if (live.closedAt().isPresent() && !live.plan().candles().isEmpty()
                && !isSettled(drawn.getOrDefault(classId, NEVER), live)) {
            drawNow(classId, live);
        }
    }

    private static boolean isSettled(long until, LiveClass live) {
        return until == live.seq() || until == Rooms.FORGOTTEN;
    }

    private synchronized void drawNow(String classId, LiveClass live) {
        try {
            if (isSettled(drawn.computeIfAbsent(classId, rooms::lessonSeq), live)) {
                return;
            }
            String room = live.plan().place();
            rooms.prior(classId, room);
            Optional<RoomFit> lesson = cure.lesson(live, rooms.before(classId, room));
            rooms.learn(classId, room, lesson, live.seq(), clock.instant());
            drawn.put(classId, live.seq());
        } catch (StoreException e) {
            log("what class " + classId + " taught cannot be kept", e);
        }
    }

    /** What rooms have taught, by name. */
    public List<Rooms.Taught> taught() {
        return rooms.all();
    }

    /**
     * Forgets what a room has taught; classes that have begun keep what they began with, and closed ones that have
     * taught it teach it no more.
     */
    public synchronized boolean reset(String room) {
        boolean forgot = rooms.reset(room);
        drawn.clear();
        return forgot;
    }

    /** What the next class in a room would start from. */
    public RoomFit next(String room) {
        return rooms.before("", room);
    }
}

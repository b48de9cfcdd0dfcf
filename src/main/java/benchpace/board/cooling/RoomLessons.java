package benchpace.board.cooling;

import benchpace.board.attempt.Faults;
import benchpace.cure.room.RoomFit;
import benchpace.live.LiveClass;
import benchpace.store.RoomLesson;
import benchpace.store.Rooms;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;

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

    /** What each room has taught, class by class; by name. */
    public List<TaughtRoom> rooms() {
        Map<String, List<RoomLesson>> of = new LinkedHashMap<>();
        rooms.lessons().forEach(lesson -> of.computeIfAbsent(lesson.room(), room -> new ArrayList<>()).add(lesson));
        return of.values().stream().map(TaughtRoom::of).toList();
    }

    /**
     * Whether what a class taught its room counts, from the next class on. What later classes taught is drawn anew from
     * their own records, as if the room had known no more than that; those that have begun keep what they began with.
     *
     * @param looked  asked whether the room is as it was when the organiser looked ({@link TaughtRoom#tag})
     * @param classes finds a class whose record can be read
     */
    public synchronized Decided decide(String classId, boolean counts, Predicate<String> looked,
                                       Function<String, Optional<LiveClass>> classes) {
        Optional<TaughtRoom> found = rooms().stream().filter(room -> room.lessons().stream()
                .anyMatch(row -> row.lesson().classId().equals(classId))).findFirst();
        if (found.isEmpty()) {
            return Decided.NOTHING_TAUGHT;
        }
        if (!looked.test(found.get().tag())) {
            return Decided.STALE;
        }
        if (counts && classes.apply(classId).isEmpty()) {
            return Decided.UNREADABLE;
        }
        List<RoomLesson> lessons = rooms.lessons().stream().filter(l -> l.room().equals(found.get().room())).toList();
        decide(lessons, classId, counts, classes);
        return Decided.DONE;
    }

    /** How a decision about what was taught ended. */
    public enum Decided {
        DONE,
        /** What is decided about has changed since somebody looked. */
        STALE,
        /** The class's own record cannot be read just now, so it cannot be counted. */
        UNREADABLE,
        /** There is nothing to decide about. */
        NOTHING_TAUGHT
    }

    /** Accepts what was not looked at yet of a room. */
    public synchronized Decided accept(String room, Predicate<String> looked) {
        Optional<TaughtRoom> found = rooms().stream().filter(taught -> taught.room().equals(room)).findFirst();
        if (found.isEmpty()) {
            return Decided.NOTHING_TAUGHT;
        }
        if (!looked.test(found.get().tag())) {
            return Decided.STALE;
        }
        found.get().lessons().stream().map(TaughtRoom.Row::lesson)
                .filter(lesson -> lesson.state() == RoomLesson.State.NEW)
                .forEach(lesson -> rooms.decide(lesson.classId(), said(lesson, true), Map.of()));
        return Decided.DONE;
    }

    private RoomLesson.Said said(RoomLesson lesson, boolean counts) {
        return new RoomLesson.Said(counts, lesson.seq(), clock.instant());
    }

    /** @param lessons of one room, in the order in which classes ended */
    private void decide(List<RoomLesson> lessons, String classId, boolean counts,
                        Function<String, Optional<LiveClass>> classes) {
        Map<String, Optional<RoomFit>> redrawn = new LinkedHashMap<>();
        RoomFit before = RoomFit.untaught();
        boolean changed = false;
        for (RoomLesson lesson : lessons) {
            boolean here = lesson.classId().equals(classId);
            changed = changed || here && lesson.counts() != counts;
            boolean teaches = here ? counts : lesson.counts();
            if (teaches && changed) {
                RoomFit from = before;
                redrawn.put(lesson.classId(), classes.apply(lesson.classId()).flatMap(c -> cure.lesson(c, from)));
            }
            Optional<RoomFit> fit = redrawn.getOrDefault(lesson.classId(), Optional.of(lesson.fit()));
            before = teaches ? fit.map(RoomFit::forNextClass).orElse(before) : before;
        }
        RoomLesson asked = lessons.stream().filter(l -> l.classId().equals(classId)).findFirst().orElseThrow();
        rooms.decide(classId, said(asked, counts), redrawn);
        redrawn.keySet().forEach(drawn::remove);
    }

    /** What the next class in a room would start from. */
    public RoomFit next(String room) {
        return rooms.before("", room);
    }
}

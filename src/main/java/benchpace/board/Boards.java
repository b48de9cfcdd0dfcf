package benchpace.board;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.store.EventLog;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Every class in the store, and the one thread that tells their screens what has changed. */
public final class Boards implements AutoCloseable {
    private final EventLog log;
    private final InstantSource clock;
    private final ViewMaker maker;
    private final Supplier<String> idEndings;
    private final Map<String, ClassBoard> boards = new ConcurrentHashMap<>();
    private final Optional<RoomLessons> lessons;
    private final Publisher publisher;

    /**
     * Opens every class that the log holds.
     *
     * @param idEndings makes the short random endings of class ids
     */
    public Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings) {
        this(log, clock, maker, idEndings, Optional.empty());
    }

    /** The same, and draws each closed class's lesson about its room, on the one publishing thread. */
    public Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings,
                  RoomLessons lessons) {
        this(log, clock, maker, idEndings, Optional.of(lessons));
    }

    private Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings,
                   Optional<RoomLessons> lessons) {
        this.log = log;
        this.lessons = lessons;
        this.clock = clock;
        this.maker = maker;
        this.idEndings = idEndings;
        this.publisher = new Publisher(this::all, clock,
                board -> lessons.ifPresent(l -> l.draw(board.id(), board.live())));
        log.classIds().forEach(id -> boards.put(id, board(id, LiveClass.of(log.read(id)))));
        publisher.start();
    }

    /** The last instant written down in any class. */
    public static Instant lastRecorded(EventLog log) {
        return log.classIds().stream()
                .map(id -> log.read(id))
                .filter(h -> !h.isEmpty())
                .map(h -> h.get(h.size() - 1).recordedAt())
                .max(Comparator.naturalOrder())
                .orElse(Instant.EPOCH);
    }

    private ClassBoard board(String id, LiveClass live) {
        return new ClassBoard(id, live, log, clock, maker, publisher::wake);
    }

    /** Sets a class up. */
    public ClassBoard create(Plan plan, String name, Instant startsAt, List<ClassEvent.Place> seats, String by) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        String id = freeId(plan.id().value());
        Recorded created = new Recorded(1, "create", by, now, now,
                new ClassEvent.ClassCreated(plan, name, startsAt.truncatedTo(ChronoUnit.MILLIS), seats));
        LiveClass live = LiveClass.of(List.of(created));
        log.append(id, created);
        ClassBoard board = board(id, live);
        boards.put(id, board);
        publisher.wake();
        return board;
    }

    private synchronized String freeId(String stem) {
        String id;
        do {
            id = stem + "-" + idEndings.get();
        } while (boards.containsKey(id));
        return id;
    }

    public Optional<ClassBoard> find(String id) {
        return Optional.ofNullable(boards.get(id));
    }

    public Collection<ClassBoard> all() {
        return boards.values();
    }

    /** What rooms have taught, where the board computes the cure. */
    public Optional<RoomLessons> lessons() {
        return lessons;
    }

    @Override public void close() {
        publisher.close();
    }
}

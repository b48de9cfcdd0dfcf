package benchpace.board;

import benchpace.board.attempt.Missing;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.StepLessons;
import benchpace.board.time.BoardTime;
import benchpace.board.time.ImpossibleClock;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ViewMaker;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Setup;
import benchpace.plan.Plan;
import benchpace.store.CannotBeReadBack;
import benchpace.store.EventLog;
import benchpace.store.Forgotten;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every class in the store, and the publisher that tells their screens what has changed. */
public final class Boards implements AutoCloseable {
    private static final Logger LOG = System.getLogger(Boards.class.getName());

    /** For so long a class that was deleted before it began can be had back. */
    private static final Duration RESTORABLE = Duration.ofDays(1);

    private final EventLog log;
    private final BoardTime clock;
    private final ViewMaker maker;
    private final Supplier<String> idEndings;
    private final Map<String, ClassBoard> boards = new ConcurrentHashMap<>();
    private final PastClasses past;
    private final UnreadableClasses unreadable;
    private final Optional<LeavingEarly> leaving;
    private final Taught taught;
    private final ClockBoard clocks;
    private final Publisher publisher;

    /**
     * Opens every class that the log holds, but for those that are over, which are opened when they are looked at.
     * What cannot be read is left out.
     *
     * @param idEndings makes the short random endings of class ids
     */
    public Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings) {
        this(log, clock, maker, idEndings, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The same, with a shelf that follows what happens in the classes. */
    public Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings,
                  LeavingEarly leaving) {
        this(log, clock, maker, idEndings, Optional.of(leaving), Optional.empty(), Optional.empty());
    }

    /**
     * The same, and draws each closed class's lesson about its room, once its screens have been told.
     *
     * @param steps what past classes taught about steps, for those who ask
     */
    public Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings,
                  LeavingEarly leaving, RoomLessons lessons, StepLessons steps) {
        this(log, clock, maker, idEndings, Optional.of(leaving), Optional.of(lessons), Optional.of(steps));
    }

    private Boards(EventLog log, InstantSource clock, ViewMaker maker, Supplier<String> idEndings,
                   Optional<LeavingEarly> leaving, Optional<RoomLessons> lessons, Optional<StepLessons> steps) {
        this.log = log;
        this.unreadable = new UnreadableClasses(log);
        this.leaving = leaving;
        this.taught = new Taught(lessons, steps);
        this.clock = BoardTime.of(clock);
        this.maker = maker;
        this.idEndings = idEndings;
        this.clocks = new ClockBoard(this.clock, this::atHand);
        this.publisher = new Publisher(clocks::mend, taught::draw);
        Map<String, Forgotten> forgotten = log.forgotten();
        Map<String, Instant> closed = log.closed(this.clock.instant().minus(ClassBoard.STIRS));
        List<String> ids = log.classIds();
        this.past = new PastClasses(ids.stream().filter(closed::containsKey).collect(Collectors.toMap(id -> id,
                id -> new PastClasses.Unread(closed.get(id), Optional.ofNullable(forgotten.get(id))))), this::openPast);
        ids.parallelStream().filter(id -> !closed.containsKey(id))
                .forEach(id -> open(id, Optional.ofNullable(forgotten.get(id))));
        atHand().forEach(taught::begin);
        publisher.start(atHand());
    }

    /** What follows outside of a class from what it wrote down. */
    private Answer.Recorded after(ClassBoard board, Answer.Recorded recorded) {
        taught.begin(board);
        return leaving.map(l -> new Answer.Recorded(recorded.seq(), recorded.duplicate(),
                l.after(board, recorded.seq()))).orElse(recorded);
    }

    /** What classes begin with, and what they teach. */
    Taught taught() {
        return taught;
    }

    /** One class that cannot be read must not keep the others from their evening. */
    private void open(String id, Optional<Forgotten> forgotten) {
        try {
            put(id, forgotten);
        } catch (RuntimeException e) {
            leaveOut(id, e);
        }
    }

    private void put(String id, Optional<Forgotten> forgotten) {
        boards.putIfAbsent(id, board(id, LiveClass.of(log.read(id)), false, forgotten));
    }

    private void leaveOut(String id, RuntimeException why) {
        LOG.log(Level.ERROR, "class " + id + " cannot be read and is left out", why);
        unreadable.add(id);
    }

    /**
     * The same of a class that is over, while the board runs.
     *
     * @throws StoreException if the file failed, which tells nothing of the class: it may be read later
     */
    private void openPast(String id, Optional<Forgotten> forgotten) {
        try {
            put(id, forgotten);
            taught.begin(boards.get(id));
        } catch (RuntimeException e) {
            leaveOut(id, CannotBeReadBack.or(e));
        }
        if (!boards.containsKey(id) && forgotten.isPresent()) {
            unreadable.complete(id, forgotten.get());
        }
    }

    private ClassBoard board(String id, LiveClass live, boolean created, Optional<Forgotten> forgotten) {
        return new ClassBoard(id, live, created, log, new Guests(id, log, forgotten), clock, clocks.writing(), maker,
                publisher::wake, this::after);
    }

    /**
     * Sets a class up.
     *
     * @throws ImpossibleClock if there is no telling what day it is
     * @throws benchpace.store.CannotBeKept if it could not be read back at the next start
     */
    public ClassBoard create(Setup setup, String by) {
        clocks.forNew();
        clocks.writing().lock();
        try {
            return created(setup, by);
        } finally {
            clocks.writing().unlock();
        }
    }

    /** The same, with nothing said beyond the plan. */
    public ClassBoard create(Plan plan, String name, Instant startsAt, List<ClassEvent.Place> seats, String by) {
        return create(new Setup(plan, name, startsAt.truncatedTo(ChronoUnit.MILLIS), seats), by);
    }

    private ClassBoard created(Setup setup, String by) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        String id = freeId(setup.plan().id().value());
        Recorded created = new Recorded(1, Command.own("create"), by, now, now,
                new ClassEvent.ClassCreated(setup));
        LiveClass live = LiveClass.of(List.of(created)); // first, so that what cannot be added up is never durable
        log.append(id, created);
        ClassBoard board = board(id, live, true, Optional.empty());
        boards.put(id, board);
        publisher.wake(board);
        return board;
    }

    /**
     * Deletes a class that was set up by mistake; the shelf keeps its candles.
     *
     * @param typed the class's name, which is asked for once it has begun
     * @throws ClassDeleted if somebody else did so meanwhile
     */
    public Deletion delete(ClassBoard board, String typed) {
        clocks.writing().lock();
        try {
            Deletion deletion = board.delete(typed);
            if (deletion instanceof Deletion.Done done) {
                boards.remove(board.id(), board);
                publisher.forget(board);
                if (!done.restorable()) {
                    log.erase(board.id());
                }
            }
            return deletion;
        } finally {
            clocks.writing().unlock();
        }
    }

    /**
     * Forgets the guests of a class that is over; asked again it does so again.
     *
     * @param byAge by the setting; else somebody asked for it
     * @return whether it is over, so that they are forgotten
     * @throws ClassDeleted if it was deleted meanwhile
     */
    boolean forgetGuests(ClassBoard board, boolean byAge) {
        clocks.writing().lock();
        try {
            return board.forgetGuests(byAge);
        } finally {
            clocks.writing().unlock();
        }
    }

    /** The class that was deleted is there again; empty if it was erased, or never deleted. */
    public Optional<ClassBoard> restore(String id) {
        clocks.writing().lock();
        try {
            if (log.restore(id)) {
                open(id, Optional.ofNullable(log.forgotten().get(id)));
                find(id).ifPresent(publisher::wake);
            }
            return find(id);
        } finally {
            clocks.writing().unlock();
        }
    }

    /** Whether there was a class of that id, which was deleted. */
    public boolean wasDeleted(String id) {
        return log.deleted().containsKey(id);
    }

    /** Erases what can be had back no more; nothing while the clock is in doubt. */
    public void eraseDeleted() {
        if (clock.trusted()) {
            Instant over = clock.instant().minus(RESTORABLE);
            log.deleted().forEach((id, at) -> {
                if (at.isBefore(over)) {
                    log.erase(id);
                }
            });
        }
    }

    private synchronized String freeId(String stem) {
        String id;
        do {
            id = stem + "-" + idEndings.get();
        } while (boards.containsKey(id) || past.contains(id) || unreadable.ids().contains(id) || wasDeleted(id));
        return id;
    }

    /** @throws StoreException if it is over, was not looked at yet, and the file cannot be read just now */
    public Optional<ClassBoard> find(String id) {
        past.read(id);
        return Optional.ofNullable(boards.get(id));
    }

    /** Every class; those that are over are read for it, all that were not yet and can be just now. */
    public Collection<ClassBoard> all() {
        past.readAll();
        return boards.values();
    }

    /** The classes that need not be read first; all others were closed more than a day before the start. */
    public Collection<ClassBoard> atHand() {
        return boards.values();
    }

    /** Every class, those at hand first; of the others no more are read than are asked for, one after the other. */
    public Stream<ClassBoard> oneByOne() {
        Set<String> unread = past.ids();
        return Stream.concat(boards.values().stream().filter(board -> !unread.contains(board.id())),
                unread.stream().filter(past::readIfPossible).map(boards::get).filter(Objects::nonNull));
    }

    /** Those at hand, and of the others those whose guests are not forgotten and that were closed by then. */
    Collection<ClassBoard> withGuests(Instant closedBy) {
        past.withGuests(closedBy).forEach(past::read);
        return boards.values();
    }

    /** What each is like now, by its id. */
    public Map<String, LiveClass> classes() {
        return all().stream().collect(Collectors.toMap(ClassBoard::id, ClassBoard::live));
    }

    /** The classes that are in the log and cannot be read back; they are left out, and left as they are. */
    public Set<String> unreadable() {
        past.readAll();
        return unreadable.ids();
    }

    /** What may be done about those. */
    public UnreadableClasses unreadableClasses() {
        past.readAll();
        return unreadable;
    }

    /**
     * Deletes one of those for good, with all that was written down in it; the shelf keeps its candles.
     *
     * @return whether there is such a class
     */
    public boolean deleteUnreadable(String id) {
        past.read(id);
        clocks.writing().lock();
        try {
            return unreadable.delete(id, clock.instant().truncatedTo(ChronoUnit.MILLIS));
        } finally {
            clocks.writing().unlock();
        }
    }

    /** Completes the forgetting of guests in those. @throws StoreException if it cannot be done in one */
    void completeUnreadable() {
        clocks.writing().lock();
        try {
            unreadable.complete();
        } finally {
            clocks.writing().unlock();
        }
    }

    /** Forgets the guests of those that were over for so long. @return whether there were any */
    boolean forgetUnreadableDue(Duration kept, Instant now) {
        clocks.writing().lock();
        try {
            return unreadable.forgetDue(kept, now);
        } finally {
            clocks.writing().unlock();
        }
    }

    /** The classes whose guests are forgotten, those that cannot be read too, by their ids. */
    Map<String, Forgotten> forgotten() {
        return log.forgotten();
    }

    /** What cannot be computed just now, of each class of which something cannot, by the class's id. */
    public SortedMap<String, Missing> missing() {
        SortedMap<String, Missing> missing = new TreeMap<>();
        boards.forEach((id, board) -> missing.put(id, board.missing()));
        missing.values().removeIf(Missing.NOTHING::equals);
        return missing;
    }

    /**
     * A class looked back on with models that are thrown away: nothing of it is kept, and nobody who looks at the class
     * waits for it.
     *
     * @param live as it is to be looked back on
     */
    ClassReport lookBackAside(ClassBoard board, LiveClass live) {
        ClassModels aside = maker.models(board.id());
        return maker.report(board.id(), live, maker.view(board.id(), live, aside, board.now()), aside);
    }

    /** Where the board's time is set. */
    public ClockBoard clocks() {
        return clocks;
    }

    /** What rooms have taught, where the board computes the cure. */
    public Optional<RoomLessons> lessons() {
        return taught.rooms();
    }

    /** What past classes taught about steps, where that is kept. */
    public Optional<StepLessons> stepLessons() {
        return taught.steps();
    }

    @Override public void close() {
        past.close();
        publisher.close();
    }
}

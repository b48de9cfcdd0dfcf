package benchpace.board;

import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.Plausible;
import benchpace.board.pacing.StepLessons;
import benchpace.board.time.BoardTime;
import benchpace.board.time.ClassTime;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassViews;
import benchpace.board.view.Computed.Moment;
import benchpace.board.view.LookBack;
import benchpace.board.view.Stages;
import benchpace.board.view.ViewMaker;
import benchpace.live.ClassEvent;
import benchpace.live.ClockShifts;
import benchpace.live.Command;
import benchpace.live.Decision;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.store.CannotBeKept;
import benchpace.store.EventLog;
import benchpace.store.Forgotten;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.locks.Lock;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * One running class: the only place where its rules, its log and the time meet. Every command passes under one lock,
 * which is held for deciding and for the durable append and never while rendering or writing to a network.
 */
public final class ClassBoard implements Watched {
    private static final Logger LOG = System.getLogger(ClassBoard.class.getName());

    static final Duration STIRS = Duration.ofDays(1); // after it was closed; till then it is read at the start, too
    private final String id;
    private final EventLog log;
    private final Guests guests;
    private final ClassTime time;
    private final Lock writing;
    private final ViewMaker maker;
    private final Consumer<ClassBoard> changed;
    private final BiFunction<ClassBoard, Answer.Recorded, Answer.Recorded> after;
    private final ClassModels models;
    private final Mailboxes mailboxes = new Mailboxes(() -> { });
    private volatile LiveClass live;
    private final ClassViews views;
    /** Nothing of its past has still to be planned: it is new, or was made ready since the start. */
    private volatile boolean ready;
    /** The number of the first event that this run of the program writes. */
    private final long firstHere;
    /** From which event on its times are moved, once they were. */
    private OptionalLong movedFrom = OptionalLong.empty();
    /** How far its times are still to move, because the log took nothing when the board's time was set right. */
    private volatile Duration owed = Duration.ZERO;
    private volatile boolean leftAhead;
    private volatile boolean deleted;

    /**
     * @param created whether it is set up just now, and not read back
     * @param after   does elsewhere what follows from a command that was written down, and adds to its answer
     */
    ClassBoard(String id, LiveClass live, boolean created, EventLog log, Guests guests, BoardTime clock, Lock writing,
               ViewMaker maker, Consumer<ClassBoard> changed,
               BiFunction<ClassBoard, Answer.Recorded, Answer.Recorded> after) {
        this.id = id;
        this.live = live;
        this.log = log;
        this.guests = guests;
        this.time = new ClassTime(clock, live.lastRecordedAt());
        this.writing = writing;
        this.firstHere = created ? 1 : live.seq() + 1;
        this.maker = maker;
        this.changed = changed;
        this.after = after;
        this.models = maker.models(id);
        this.views = new ClassViews(maker.making(id, () -> models, () -> new Moment(this.live, now())),
                () -> this.live.seq(), this::now);
        this.ready = live.seq() == 1;
    }

    @Override public String id() {
        return id;
    }

    @Override public LiveClass live() {
        return live;
    }

    /**
     * Decides and, if the rules agree, records durably before anyone can see it. A command whose id is known has its
     * first answer if it wishes for the same, whenever it now says it was tapped, and is refused if not.
     *
     * @throws CannotBeKept if it could not be read back at the next start, or the class does not add up with it
     * @throws StoreException if it, or what follows from it at the shelf, cannot be written; the same sent again does
     *     what is missing
     */
    public Answer submit(Command wished) {
        return submit(wished, live.clocks());
    }

    /**
     * The same for one that waited.
     *
     * @param clocks how often the class's clock had been set right when it was made ({@link LiveClass#clocks})
     */
    public Answer submit(Command wished, int clocks) {
        Answer answer = written(wished, clocks);
        return answer instanceof Answer.Recorded recorded ? after.apply(this, recorded) : answer;
    }

    private Answer written(Command wished, int clocks) {
        writing.lock();
        try {
            return decide(wished, clocks);
        } finally {
            writing.unlock();
        }
    }

    private synchronized Answer decide(Command made, int clocks) {
        ClassDeleted.unless(!deleted, id);
        return guests.known(live, made).orElseGet(() -> decideAnew(made, clocks));
    }

    private Answer decideAnew(Command made, int clocks) {
        moveWhatIsOwed(); // or what is written now would move along
        Command wished = made.at(made.at().plus(live.setRightSince(clocks)));
        Instant now = now();
        // of all models plausibility alone is asked under the lock; where it fails the tap stands
        Decision decision = guests.decide(live, wished, now, (state, wish) -> models.attempts().of(Model.PLAUSIBILITY,
                state.seq(), now, () -> Plausible.refusal(state, wish), Optional::empty));
        if (decision instanceof Decision.Refused refused) {
            return new Answer.Refused(refused.reason());
        }
        Instant tapped = wished.at().truncatedTo(ChronoUnit.MILLIS);
        Recorded recorded = new Recorded(live.seq() + 1, wished.id(), wished.by(), wished.device(),
                tapped.isAfter(now) ? now : tapped, now, ((Decision.Accepted) decision).event());
        keep(recorded, added(recorded)); // added up first, so that what cannot be is never durable
        return new Answer.Recorded(recorded.seq(), false);
    }

    private void keep(Recorded recorded, LiveClass next) {
        log.append(id, recorded);
        live = next;
        time.wrote(recorded.recordedAt());
        changed.accept(this);
    }

    private LiveClass added(Recorded recorded) {
        try {
            return live.apply(recorded);
        } catch (RuntimeException e) {
            LOG.log(Level.ERROR, "class " + id + " cannot be added up with a command", e);
            throw new CannotBeKept("It cannot be kept: the class does not add up with it. It goes on without.", e);
        }
    }

    /** What of the class cannot be computed just now, as far as somebody has asked for it. */
    public Missing missing() {
        return models.attempts().now(live.seq());
    }

    /** The class's time: the board's, or its own, where it has records from later than that. */
    @Override public Instant now() {
        return time.now();
    }

    /** How far the class's time is ahead of the board's; zero if it goes by the board's. */
    public Duration ahead() {
        return time.ahead();
    }

    /** Whether somebody should be told that it is ahead. */
    public boolean tellsAhead() {
        return !leftAhead && !ahead().isZero();
    }

    /** Somebody was told, and left it so. */
    public void leaveAhead() {
        leftAhead = true;
    }

    /**
     * The board's time was set right: what was written here by it moves along. A class that wrote nothing since the
     * start wrote nothing by it.
     *
     * @param by    how far the board's time was moved
     * @param ahead how far the class's own was ahead of it before
     */
    synchronized void follow(Duration by, Duration ahead) {
        if (!owed.isZero()) {
            owed = owed.plus(by);
        } else if (live.seq() >= firstHere && by.compareTo(ahead) != 0
                && (ahead.isZero() || by.compareTo(ahead) > 0)) {
            owed = by.minus(ahead);
            movedFrom = movedFrom.isPresent() || ahead.isZero() ? movedFrom : OptionalLong.of(firstHere);
        }
        try {
            moveWhatIsOwed();
        } catch (StoreException e) {
            LOG.log(Level.ERROR, "the times of class " + id + " are not set right yet", e);
        }
    }

    /** Tries again what could not be written down when the board's time was set right. */
    void catchUp() {
        if (!owed.isZero()) {
            writing.lock();
            try {
                moveWhatIsOwed();
            } finally {
                writing.unlock();
            }
        }
    }

    private synchronized void moveWhatIsOwed() {
        if (!owed.isZero()) {
            setRight(owed);
        }
    }

    /**
     * Moves the times of the class, by a clock that was wrong, to where they belong.
     *
     * @return whether they could be
     * @throws StoreException if the log takes nothing just now
     */
    synchronized boolean setRight(Duration by) {
        long from = movedFrom.orElseGet(
                () -> ClockShifts.first(live.history(), Math.min(firstHere, live.seq()), by));
        Instant last = live.lastRecordedAt().plus(by);
        Instant now = time.board().isBefore(last) ? last : time.board();
        Recorded recorded = new Recorded(live.seq() + 1, Command.own("clock." + (live.seq() + 1)), "instructor", now,
                now, new ClassEvent.ClockShifted(from, by));
        try {
            LiveClass next = added(recorded);
            boolean possible = ClockShifts.isPossible(next);
            if (possible) {
                keep(recorded, next);
                movedFrom = OptionalLong.of(from);
            }
            owed = Duration.ZERO;
            return possible;
        } catch (CannotBeKept e) {
            LOG.log(Level.ERROR, "the times of class " + id + " cannot be set right", e);
            owed = Duration.ZERO;
            return false;
        }
    }

    /** Takes the class off the board, and ends all its screens. @param typed as {@link Deletion#of} asks for it */
    synchronized Deletion delete(String typed) {
        ClassDeleted.unless(!deleted, id);
        Deletion deletion = Deletion.of(live, typed);
        if (deletion instanceof Deletion.Done) {
            log.delete(id, time.board());
            deleted = true;
            mailboxes.close();
        }
        return deletion;
    }

    /** Takes the words of its guests out of a class that is over, and off all screens. @return whether it is over */
    synchronized boolean forgetGuests(boolean byAge) {
        ClassDeleted.unless(!deleted, id);
        if (Guests.overSince(live, now()).isEmpty()) {
            return false;
        }
        live = guests.forget(live, time.board(), byAge);
        lookAgain();
        return true;
    }

    public Optional<Forgotten> forgotten() {
        return guests.forgotten();
    }

    @Override public boolean isDeleted() {
        return deleted;
    }

    /** Lets every screen be made anew: time did not go on as it was foreseen. */
    void lookAgain() {
        views.forget();
        changed.accept(this);
    }

    /** The events after a number, in order, as they were written. */
    public List<Recorded> eventsAfter(long seq) {
        return live.log().stream().skip(Math.max(0, Math.min(seq, live.seq()))).toList();
    }

    /** How far the class is; cheap, for lists of classes. */
    public ClassView.Stage stage() {
        return Stages.of(live, now());
    }

    /** The class as it is; up to 5 s old while nothing has happened and nothing was due to change. */
    @Override public ClassView view() {
        ClassView view = views.latest().view();
        ready = true;
        return view;
    }

    /** The same for lists of classes: nothing while a long past is still being planned after a start. */
    public Optional<ClassView> viewIfReady() {
        return ready ? Optional.of(view()) : Optional.empty();
    }

    /** The class looked back on, as far as it has come. */
    public ClassReport report() {
        return lookBack().report();
    }

    public LookBack lookBack() {
        return new LookBack(() -> live, this::view, maker, models);
    }

    /** What past classes taught about the steps of this one's plan. @param all every class, for those of the plan */
    public Optional<StepLessons.Lesson> lesson(StepLessons lessons, List<LiveClass> all) {
        LiveClass asked = live;
        return models.attempts().of(Model.LESSON, asked.seq(), now(),
                () -> Optional.of(lessons.lesson(asked.plan().id().value(), asked.plan().place(), all)),
                Optional::empty);
    }

    /** A seat's candle cut open as it should be this instant, where that is computed. */
    @Override public Optional<CutAway> cutAway(int seat) {
        return maker.cutAway(id, live, new SeatNumber(seat), now(), models.attempts());
    }

    /** A screen's own mailbox; it holds the newest view at once. */
    @Override public Mailbox subscribe() {
        Mailbox mailbox = mailboxes.open(() -> {
            ClassDeleted.unless(!deleted, id);
            return views.shown();
        });
        changed.accept(this);  // the first screen of a class: from now on somebody sees what time alone changes
        return mailbox;
    }

    /** What screens show beside the class has changed, the class itself has not. */
    public void nudge() {
        mailboxes.nudge();
    }

    /** What its screens are shown. */
    ClassViews views() {
        return views;
    }

    /** The first breath: hands what was tapped to every screen, before the rest is computed. One caller at a time. */
    void publishAtOnce() {
        views.atOnce().ifPresent(mailboxes::show);
    }

    /** The second: derives the view anew, whole, and hands it to every screen. One caller at a time. */
    void publish() {
        views.publish().ifPresent(mailboxes::show);
        ready = true;
    }

    /** Something could not be computed, and something has happened since: it may be well again. */
    boolean mayBeMended() {
        return !missing().models().isEmpty() && views.isBehind();
    }

    /** Plans and forecasts what was missed while the board was off, before somebody looks. */
    void warm() {
        if (live.closedAt().isEmpty() && !live.isLeftOpen(now())) {
            view();
        }
        ready = true;
    }

    boolean watched() {
        return !mailboxes.isEmpty();
    }

    /** Over for so long that nothing of it changes by itself, and nobody looks. */
    boolean isAtRest() {
        return !watched() && owed.isZero() && missing().models().isEmpty()
                && live.closedAt().filter(at -> at.plus(STIRS).isBefore(now())).isPresent();
    }
}

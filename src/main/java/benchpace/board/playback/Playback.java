package benchpace.board.playback;

import benchpace.board.Mailbox;
import benchpace.board.Mailboxes;
import benchpace.board.Watched;
import benchpace.board.attempt.Faults;
import benchpace.board.cooling.CutAway;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassViews;
import benchpace.board.view.Computed.Moment;
import benchpace.board.view.Playing;
import benchpace.board.view.ViewMaker;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One evening that is played back. At each instant its screens show the class as it was then: the same fold of the log
 * so far, the same models, the same views as of any class. Safe for use by many threads.
 */
public final class Playback implements Watched {
    public static final int SLOWEST = PlaybackTime.SLOWEST;
    public static final int FASTEST = PlaybackTime.FASTEST;
    private static final Duration LONGEST_STEP = Duration.ofMinutes(3);
    private static final Logger LOG = System.getLogger(Playback.class.getName());

    private final String id;
    private final Optional<String> classId;
    private final String opener;
    private final PlayedClass played;
    private final PlaybackTime time;
    private final PlaybackModels models;
    private final ViewMaker maker;
    private final Supplier<Duration> passing;
    private final ClassViews views;
    private final Mailboxes mailboxes = new Mailboxes(this::looked);
    private final Faults faults = new Faults();
    private ClassModels kept;
    private Instant made = Instant.MIN;
    /** Of the last view; none that there is when its screens are to be brought to its time at once. */
    private volatile long turn;
    private int told;
    private final Object judging = new Object();
    private List<Mark> marks = List.of();
    private volatile Duration lookedAt;
    private volatile boolean ended;

    /** @param passing passing time, from an arbitrary beginning */
    Playback(String id, Optional<String> classId, String opener, List<Recorded> log, PlaybackModels models,
             Supplier<Duration> passing) {
        this.id = id;
        this.classId = classId;
        this.opener = opener;
        this.played = new PlayedClass(log);
        this.models = models;
        this.maker = models.maker();
        this.kept = maker.models(id);
        this.passing = passing;
        this.time = new PlaybackTime(played.from(), played.until(), passing);
        this.views = new ClassViews(maker.making(id, () -> kept, this::moment), () -> live().seq(), this::now);
        this.lookedAt = passing.get();
    }

    @Override public String id() {
        return id;
    }

    @Override public LiveClass live() {
        return played.at(now());
    }

    @Override public Instant now() {
        return time.instant();
    }

    @Override public ClassView view() {
        lookedAt = passing.get();
        return views.latest().view();
    }

    /** One at a time ({@link ClassViews}). What was planned of a future that is to come again is planned again. */
    private Moment moment() {
        PlaybackTime.State state = time.state();
        Instant now = shown(state);
        if (now.isBefore(made)) {
            kept = maker.models(id);
        }
        made = now;
        turn = state.turn();
        return new Moment(played.at(now), now);
    }

    /** On a slow machine screens come after in steps, and do not stand still until all is planned that has passed. */
    private Instant shown(PlaybackTime.State state) {
        Instant step = turn == state.turn() ? made.plus(LONGEST_STEP) : Instant.MAX;
        return step.isBefore(state.at()) && state.at().isBefore(time.until()) ? step : state.at();
    }

    @Override public Optional<CutAway> cutAway(int seat) {
        Instant now = now();
        return maker.cutAway(id, played.at(now), new SeatNumber(seat), now, maker.models(id).attempts());
    }

    @Override public Mailbox subscribe() {
        Mailbox mailbox = mailboxes.open(views::shown);
        if (ended) {
            mailbox.close();
        }
        return mailbox;
    }

    private void looked() {
        lookedAt = passing.get();
    }

    @Override public boolean isDeleted() {
        return ended;
    }

    @Override public Optional<Playing> playing() {
        PlaybackTime.State state = time.state();
        return Optional.of(new Playing(classId, opener, time.from(), time.until(), state.at(), state.speed(),
                state.paused(), state.turn()));
    }

    // ---- how it goes on

    /**
     * What somebody wants of it.
     *
     * @param at     where to go on from, within the evening
     * @param speed  from {@value #SLOWEST} to {@value #FASTEST}
     * @param paused whether it stands still
     */
    public record Wish(Optional<Instant> at, Optional<Integer> speed, Optional<Boolean> paused) { }

    /** Does as wished, and tells every screen at once. @throws IllegalArgumentException if it cannot be */
    public synchronized void set(Wish wish) {
        wish.at().ifPresent(time::moveTo);
        wish.speed().ifPresent(time::speed);
        wish.paused().ifPresent(time::pause);
        lookedAt = passing.get();
        mailboxes.nudge();
    }

    /** What there is to see in it, in order; worked out when somebody first asks. */
    public List<Mark> marks() {
        synchronized (judging) { // takes a while, and its controls wait for nobody
            if (marks.isEmpty()) {
                Marks found = new Marks(id, new PlayedClass(played.events()), models.cure(), models.pace().get());
                try {
                    marks = found.all();
                } catch (RuntimeException | StackOverflowError e) { // who was flagged is not known; what happened is
                    note("judged", e);
                    marks = found.happened();
                }
            }
            return List.copyOf(marks);
        }
    }

    // ---- its rounds

    /** Brings its screens up to its time. One that is slow skips what has passed meanwhile; time waits for nobody. */
    void round() {
        try {
            if (mailboxes.isEmpty()) {
                turn = 0;
                return;
            }
            lookedAt = passing.get();
            if (views.stale()) {
                views.publish().ifPresent(mailboxes::show);
            }
            int rate = playing().orElseThrow().rate();
            if (rate != told) { // its end stops the clocks
                told = rate;
                mailboxes.nudge();
            }
        } catch (RuntimeException | Error e) { // this moment is not shown; it plays on
            note("shown", e);
        }
    }

    private void note(String what, Throwable fault) {
        if (faults.isNew(what, fault)) {
            LOG.log(Level.ERROR, "playback " + id + " could not be " + what, fault);
        }
    }

    /** When somebody last looked at it or moved it, in passing time. */
    Duration lookedAt() {
        return lookedAt;
    }

    boolean isWatched() {
        return !mailboxes.isEmpty();
    }

    Optional<String> classId() {
        return classId;
    }

    void end() {
        ended = true;
        mailboxes.close();
    }
}

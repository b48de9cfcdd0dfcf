package benchpace.board.view;

import benchpace.board.view.Computed.Moment;
import benchpace.board.view.MadeView.Order;
import benchpace.live.LiveClass;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The latest views of one class, each shown to many. A tap is shown in two breaths: {@link #atOnce} what it changed,
 * with what was computed before as far as that still holds, and {@link #publish} the whole view of it. Whole views are
 * made one at a time, and no tap waits for one: nothing here is under the class's lock. Safe for use by many threads.
 */
public final class ClassViews {
    /** A view so young is shown again while nothing has happened: many that look in cost no more than one. */
    private static final Duration YOUNG = Duration.ofSeconds(5);

    private final Making making;
    private final LongSupplier seq;
    private final Supplier<Instant> clock;
    private final Object counting = new Object();
    private long wholes;
    private long atOnces;
    private LiveClass begun;
    /** Raised whenever all are to be made anew, also those that are under way. */
    private long epoch;
    private volatile Numbered computed;
    private volatile MadeView made;
    private volatile MadeView published;
    private volatile MadeView shownAtOnce;

    /** How views of one class come about. */
    public interface Making {
        /** The class as it is. */
        Moment moment();

        /** All that takes time. */
        Computed compute(Moment of);

        /** Takes next to none. @param computed for that moment, or for an earlier one */
        ClassView view(Moment at, Computed computed);
    }

    private record Begun(Order order, Moment moment, long epoch) { }

    private record Made(MadeView view, long epoch) { }

    private record Numbered(long number, Computed what) { }

    /**
     * @param seq   the number of the class's last event
     * @param clock the class's time
     */
    public ClassViews(Making making, LongSupplier seq, Supplier<Instant> clock) {
        this.making = making;
        this.seq = seq;
        this.clock = clock;
    }

    /** Up to 5 s old while nothing has happened and nothing was due to change. */
    public MadeView latest() {
        MadeView latest = made;
        if (isYoung(latest)) {
            return latest;
        }
        synchronized (this) {
            latest = made; // which may be forgotten in between
            return isYoung(latest) ? latest : make().view();
        }
    }

    /** What every screen shows already, if that still holds. */
    public MadeView shown() {
        MadeView shown = published;
        return holds(shown) ? shown : latest();
    }

    /** A new one, whole, to be shown on every screen; empty if all were to be made anew while it was made. */
    public Optional<MadeView> publish() {
        Made whole;
        synchronized (this) {
            whole = make();
        }
        synchronized (counting) {
            if (whole.epoch() != epoch) {
                return Optional.empty();
            }
            published = whole.view();
        }
        return Optional.of(whole.view());
    }

    /**
     * What has happened since the last publication, to be shown on every screen before the rest of it is computed.
     * Asked for by one thread at a time.
     *
     * @return empty if there is nothing that was not shown yet, or nothing was ever computed
     */
    public Optional<MadeView> atOnce() {
        Numbered known = computed;
        if (known == null || isShown(known)) {
            return Optional.empty();
        }
        Begun begun = beginAtOnce();
        if (!known.what().mayCarry(begun.moment().live())) {
            return Optional.empty();
        }
        MadeView view = new MadeView(begun.order(), Math.min(known.number(), begun.order().whole()),
                making.view(begun.moment(), known.what()));
        synchronized (counting) {
            if (begun.epoch() != epoch) {
                return Optional.empty();
            }
            shownAtOnce = view;
        }
        return Optional.of(view);
    }

    /** Whether the class's last event was shown: whole, or at once beside what is known. */
    private boolean isShown(Numbered known) {
        long last = seq.getAsLong();
        return tells(published, last) || tells(shownAtOnce, last)
                && (shownAtOnce.computed() >= known.number() || known.what().of().live().seq() == last);
    }

    private static boolean tells(MadeView view, long event) {
        return view != null && view.view().seq() == event;
    }

    private Made make() {
        Begun begun = beginWhole();
        Computed now = making.compute(begun.moment());
        MadeView view = MadeView.whole(begun.order().whole(), making.view(begun.moment(), now));
        synchronized (counting) {
            if (begun.epoch() == epoch) {
                computed = new Numbered(begun.order().whole(), now);
                made = view;
            }
        }
        return new Made(view, begun.epoch());
    }

    /** In one step with looking, so that no later one knows less. */
    private Begun beginWhole() {
        synchronized (counting) {
            Moment moment = making.moment();
            begun = moment.live();
            return new Begun(new Order(++wholes, 0), moment, epoch);
        }
    }

    private Begun beginAtOnce() {
        synchronized (counting) {
            Moment moment = making.moment();
            return new Begun(new Order(moment.live() == begun ? wholes - 1 : wholes, ++atOnces), moment, epoch);
        }
    }

    /** Whether what screens show may have changed since the last publication. */
    public boolean stale() {
        return !holds(published);
    }

    /** How long until the last published view changes by itself. */
    public Optional<Duration> unchanged() {
        MadeView shown = published;
        return shown == null ? Optional.empty()
                : shown.view().nextChange().map(t -> Duration.between(clock.get(), t));
    }

    /** Whether something has happened since the last whole one was begun. */
    public boolean isBehind() {
        MadeView latest = made;
        return latest == null || latest.view().seq() != seq.getAsLong();
    }

    /** All are to be made anew: time did not go on as it was foreseen. */
    public void forget() {
        synchronized (counting) {
            epoch++;
            published = null;
            made = null;
            computed = null;
            shownAtOnce = null;
            begun = null;
        }
    }

    private boolean isYoung(MadeView made) {
        return holds(made) && made.view().now().plus(YOUNG).isAfter(clock.get());
    }

    /** Whether nothing has happened since or is due to change. One from the future was made by a wrong clock. */
    private boolean holds(MadeView made) {
        Instant now = clock.get();
        return made != null && made.view().seq() == seq.getAsLong() && !made.view().now().isAfter(now)
                && made.view().nextChange().filter(t -> !t.isAfter(now)).isEmpty();
    }
}

package benchpace.board.view;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The latest views of one class, made one at a time and shown to many: not under the class's lock, so that taps go on
 * meanwhile. Safe for use by many threads.
 */
public final class ClassViews {
    /** A view so young is shown again while nothing has happened: many that look in cost no more than one. */
    private static final Duration YOUNG = Duration.ofSeconds(5);

    private final Supplier<ClassView> maker;
    private final LongSupplier seq;
    private final Supplier<Instant> clock;
    private long count;
    private volatile MadeView made;
    private volatile MadeView published;

    /**
     * @param maker makes a view of this instant
     * @param seq   the number of the class's last event
     * @param clock the class's time
     */
    public ClassViews(Supplier<ClassView> maker, LongSupplier seq, Supplier<Instant> clock) {
        this.maker = maker;
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
            return isYoung(latest) ? latest : make();
        }
    }

    /** What every screen shows already, if that still holds. */
    public MadeView shown() {
        MadeView shown = published;
        return holds(shown) ? shown : latest();
    }

    /** A new one, to be shown on every screen. */
    public MadeView publish() {
        MadeView view;
        synchronized (this) {
            view = make();
        }
        published = view;
        return view;
    }

    private MadeView make() {
        MadeView view = new MadeView(++count, maker.get());
        made = view;
        return view;
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

    /** Whether something has happened since the last was made. */
    public boolean isBehind() {
        MadeView latest = made;
        return latest == null || latest.view().seq() != seq.getAsLong();
    }

    /** All are to be made anew: time did not go on as it was foreseen. */
    public void forget() {
        published = null;
        made = null;
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

package benchpace.board.waiting;

import benchpace.board.cooling.CureClock;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The plannings of one class's wait, each resting on the one before: after every event, and at every full minute while
 * somebody waits. Which plannings there are follows from the log and the instant alone, so a board that was started
 * anew goes through them again and comes to the same plan, with the same announcements. The last one is kept.
 *
 * <p>Not under the lock of the class: planning holds up nobody's tap.
 */
public final class WaitChain {
    /** Enough to go back by when an event turns out to be older than a minute already planned. */
    private static final int KEPT = 8;

    private final String classId;
    private final CureClock cureClock;
    private final Deque<WaitLink> links = new ArrayDeque<>();
    private LiveClass known;
    private WaitView shown;
    private WaitLink shownLink;

    public WaitChain(String classId, CureClock cureClock) {
        this.classId = classId;
        this.cureClock = cureClock;
    }

    /**
     * The wait as it is planned at an instant; the same answer, at once, until an event or a full minute passes.
     *
     * @throws IllegalStateException if the latest planning failed; the next one rests on the last that did not
     */
    public synchronized WaitView at(LiveClass live, Instant now) {
        if (plansNothing(live)) {
            return WaitViews.unplanned(live, now);
        }
        WaitLink link = soundLink(live, now);
        if (shown == null || link != shownLink) {
            shown = new WaitViews(link.seq() == live.seq() ? live : known, link).view();
            shownLink = link;
        }
        return shown;
    }

    /**
     * How the wait of every seat that has had one stood when it was planned last: what there was to do in it, as far
     * as it was tapped or planned. Also of a class that is closed.
     *
     * @return by seat; empty if the plan has nothing to do in the wait
     * @throws IllegalStateException if the latest planning failed
     */
    synchronized Map<SeatNumber, SeatPast> past(LiveClass live, Instant now) {
        if (live.plan().activities().isEmpty()) {
            return Map.of();
        }
        return soundLink(live, now).past();
    }

    private static boolean plansNothing(LiveClass live) {
        return live.closedAt().isPresent() || live.plan().activities().isEmpty();
    }

    /** When a view of it changes by itself: with the next full minute, while somebody waits. */
    public synchronized Optional<Instant> nextChange(LiveClass live, Instant now) {
        return plansNothing(live) || links.isEmpty() || !links.getLast().active()
                || leftOpen(links.getLast(), now) ? Optional.empty()
                : Optional.of(now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES));
    }

    private WaitLink soundLink(LiveClass live, Instant now) {
        WaitLink link = link(live, now);
        if (link.fault().isPresent()) {
            throw new IllegalStateException("the wait cannot be planned after event " + link.seq(), link.fault().get());
        }
        return link;
    }

    private WaitLink link(LiveClass live, Instant now) {
        if (!links.isEmpty() && live.history().stream().skip(links.getLast().seq())
                .anyMatch(r -> r.event() instanceof ClassEvent.ClockShifted)) {
            links.clear(); // planned by a clock that was wrong
            known = null;
        }
        rewind(minute -> minute.isAfter(now)); // a clock was set back
        if (!links.isEmpty() && links.getLast().seq() < live.seq()) {
            Instant next = live.recorded(links.getLast().seq() + 1).orElseThrow().recordedAt();
            rewind(minute -> !minute.isBefore(next)); // it had been recorded before they passed
        }
        if (links.isEmpty()) {
            links.add(WaitLink.idle(live.history().get(0).recordedAt(), firstPour(live) - 1));
        }
        while (links.getLast().seq() < live.seq()) {
            Recorded event = live.recorded(links.getLast().seq() + 1).orElseThrow();
            ticks(event.recordedAt(), false);
            LiveClass then = event.seq() == live.seq() ? live
                    : LiveClass.of(live.history().subList(0, (int) event.seq()));
            known = then;
            add(plan(base(live, event), then, event.recordedAt(), false));
        }
        if (known == null) {
            known = live;
        }
        ticks(now, true);
        return links.getLast();
    }

    /** Takes back the latest minutes that turn out to have been planned too early. */
    private void rewind(Predicate<Instant> tooEarly) {
        while (!links.isEmpty() && links.getLast().tick() && tooEarly.test(links.getLast().at())) {
            links.removeLast();
        }
    }

    private void ticks(Instant until, boolean inclusive) {
        while (links.getLast().active()) {
            Instant minute = links.getLast().at().truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES);
            if (minute.isAfter(until) || !inclusive && minute.equals(until) || leftOpen(links.getLast(), minute)) {
                return;
            }
            add(plan(links.getLast(), known, minute, true));
        }
    }

    private boolean leftOpen(WaitLink link, Instant at) {
        return known != null && known.seq() == link.seq() && known.isLeftOpen(at);
    }

    private WaitLink plan(WaitLink base, LiveClass live, Instant at, boolean tick) {
        try {
            WaitProblems problems = new WaitProblems(live, cureClock.clocksOf(classId, live, at), at);
            return base.next(problems, at, live.seq(), tick);
        } catch (RuntimeException | Error e) { // one planning; the chain goes on
            return base.failed(at, live.seq(), tick, e);
        }
    }

    /**
     * What the planning after an event rests on: the last one; after the undoing of a decision about an activity the
     * last one before that decision, as far as it is kept, so that what it moved goes back.
     */
    private WaitLink base(LiveClass live, Recorded event) {
        if (event.event() instanceof ClassEvent.Undone undone) {
            ClassEvent what = live.recorded(undone.seq()).orElseThrow().event();
            if (what instanceof ClassEvent.ActivityMoved || what instanceof ClassEvent.ActivityExtended
                    || what instanceof ClassEvent.ActivitySkipped || what instanceof ClassEvent.ActivityOpened) {
                return links.stream().filter(l -> l.seq() < undone.seq()).reduce((first, second) -> second)
                        .orElse(links.getLast());
            }
        }
        return links.getLast();
    }

    private void add(WaitLink link) {
        links.add(link);
        if (links.size() > KEPT) {
            links.removeFirst();
        }
    }

    /** The number of the first event that may be a pour; before it nothing is planned. */
    private static long firstPour(LiveClass live) {
        Plan plan = live.plan();
        int pour = plan.pour().map(p -> plan.indexOf(p.id())).orElse(Integer.MAX_VALUE);
        List<Recorded> history = live.history();
        return history.stream().filter(r -> r.event() instanceof ClassEvent.StepFinished e
                        && plan.indexOf(e.step()) >= pour || r.event() instanceof ClassEvent.PouredAgain)
                .findFirst().map(Recorded::seq).orElse(live.seq() + 1);
    }
}

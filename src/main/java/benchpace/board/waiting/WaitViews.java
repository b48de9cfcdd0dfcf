package benchpace.board.waiting;

import benchpace.board.cooling.ReadyWindow;
import benchpace.board.cooling.SaidRange;
import benchpace.board.waiting.WaitView.ActivityView;
import benchpace.board.waiting.WaitView.CallState;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.board.waiting.WaitView.ChangeView;
import benchpace.board.waiting.WaitView.PartView;
import benchpace.board.waiting.WaitView.StripView;
import benchpace.board.waiting.WaitView.Wave;
import benchpace.breaks.Assignment;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.Unplaced;
import benchpace.breaks.WaitEvent;
import benchpace.breaks.WaitPlan;
import benchpace.live.ActivityRun;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Derives what screens show of the wait from one planning. Pure. */
public final class WaitViews {
    /** How long a screen goes on saying that something has begun. */
    private static final Duration JUST_BEGUN = Duration.ofMinutes(4);

    private final LiveClass live;
    private final WaitLink link;
    private final WaitPlan plan;

    WaitViews(LiveClass live, WaitLink link) {
        this.live = live;
        this.link = link;
        this.plan = link.plan();
    }

    /** The activities as they were tapped, none of them planned. */
    public static WaitView unplanned(LiveClass live, Instant now) {
        return new WaitViews(live, WaitLink.idle(now, live.seq())).view();
    }

    /**
     * A wait that was planned before more events: its activities are as they were tapped since, and nothing is offered
     * to a seat that has gone to one. When what begins is planned anew.
     */
    public static WaitView carried(WaitView planned, LiveClass live, Instant now) {
        WaitView tapped = unplanned(live, now);
        if (live.closedAt().isPresent() || planned.plannedAt().isEmpty()) {
            return tapped;
        }
        List<ActivityView> activities = tapped.activities().stream().map(a -> planned.activities().stream()
                .filter(was -> was.id().equals(a.id())).findFirst().map(a::planned).orElse(a)).toList();
        return new WaitView(planned.plannedAt(), activities, planned.strips(),
                planned.calls().stream().filter(call -> isForSomebody(live, call)).toList(), planned.changes(),
                planned.leisure().stream().filter(o -> isAtLeisure(live, o.seat())).toList(), planned.idle(),
                planned.unplaced(), planned.late().stream().filter(seat -> isHere(live, seat)).toList());
    }

    /** Nobody is called who has gone; one of several is named until it is planned anew. */
    private static boolean isForSomebody(LiveClass live, CallView call) {
        return call.event().seats().isEmpty() || call.event().seats().stream().anyMatch(seat -> isHere(live, seat));
    }

    private static boolean isHere(LiveClass live, SeatNumber seat) {
        return live.seat(seat).filter(Seat::present).isPresent();
    }

    private static boolean isAtLeisure(LiveClass live, int seat) {
        return live.seat(new SeatNumber(seat)).filter(s -> s.present() && s.activity().isEmpty()).isPresent();
    }

    WaitView view() {
        List<ActivityView> activities = live.plan().activities().stream().map(this::activity).toList();
        if (link.problem().isEmpty() || live.closedAt().isPresent()) {
            return WaitView.unplanned(activities);
        }
        WaitPlan unplanned = link.counterfactual();
        List<StripView> strips = plan.strips().stream().map(s -> strip(s, unplanned)).toList();
        return new WaitView(Optional.of(link.at()), activities, strips, calls(), changes(activities),
                plan.leisure().stream().map(l -> new WaitView.OfferView(l.seat().value(), l.until(),
                        l.offers().stream().map(this::name).toList())).toList(),
                idle(strips), unplaced(), plan.pastPromisedEnd().stream().filter(this::farPastTheEnd).toList());
    }

    private static WaitView.Idle idle(List<StripView> strips) {
        return new WaitView.Idle(strips.stream().mapToInt(StripView::wholeIdle).sum(),
                strips.stream().mapToInt(StripView::idleUnplanned).sum(),
                strips.stream().mapToInt(StripView::wholeIdle).max().orElse(0),
                strips.stream().mapToInt(StripView::idleUnplanned).max().orElse(0),
                strips.stream().mapToInt(StripView::idleSoFar).sum());
    }

    private String name(ActivityId id) {
        return live.plan().activity(id).map(Activity::name).orElse(id.value());
    }

    private ActivityView activity(Activity activity) {
        ActivityRun run = live.activity(activity.id());
        List<Integer> tapped = live.seats().stream()
                .filter(s -> s.activity().filter(j -> j.activity().equals(activity.id())).isPresent())
                .map(s -> s.number().value()).toList();
        List<Integer> now = new ArrayList<>();
        Instant last = null;
        TreeMap<Instant, List<Integer>> waves = new TreeMap<>();
        Instant expected = null;
        for (SeatStrip strip : plan.strips()) {
            for (Assignment part : strip.parts()) {
                if (part.activity().equals(activity.id()) && part.status() == Assignment.Status.UNDER_WAY) {
                    now.add(strip.seat().value());
                    last = last == null || part.until().isAfter(last) ? part.until() : last;
                } else if (part.activity().equals(activity.id()) && part.status() == Assignment.Status.PLANNED) {
                    waves.computeIfAbsent(part.from(), at -> new ArrayList<>()).add(strip.seat().value());
                } else if (part.activity().equals(activity.id()) && part.status() == Assignment.Status.EXPECTED) {
                    expected = expected == null || part.from().isBefore(expected) ? part.from() : expected;
                }
            }
        }
        Optional<Wave> next = Optional.ofNullable(waves.firstEntry()).map(w -> new Wave(w.getKey(), w.getValue()));
        return new ActivityView(activity.id().value(), activity.name(), activity.kind(),
                activity.audience() == Activity.Audience.WHOLE_CLASS, activity.where(), activity.cue(),
                activity.caution(), activity.places(), run.open(), run.skipped(),
                run.openedAt().filter(at -> run.open()), (int) run.extension().toMinutes(), tapped, now,
                Optional.ofNullable(last), next, expected != null,
                Optional.ofNullable(expected).filter(at -> !hangsOnTheHandTest()));
    }

    private boolean hangsOnTheHandTest() {
        return plan.events().stream().anyMatch(e -> e instanceof WaitEvent.WrappingFrom w && w.due());
    }

    private StripView strip(SeatStrip strip, WaitPlan unplanned) {
        SeatWait wait = link.problem().orElseThrow().seats().stream().filter(s -> s.seat().equals(strip.seat()))
                .findFirst().orElseThrow();
        List<PartView> parts = strip.parts().stream().map(this::part).toList();
        ReadyWindow ready = new ReadyWindow(wait.ready().p10(), wait.ready().p50(), wait.ready().p90(),
                ReadyWindow.Basis.COMPUTED);
        return new StripView(strip.seat().value(), parts, wait.freeFrom(), ready,
                link.poured().contains(strip.seat()), strip.waitUntil(),
                strip.idleMinutes(), strip.idleMinutesSoFar(),
                strip.idleMinutesSoFar() + unplanned.strip(strip.seat()).map(SeatStrip::idleMinutes).orElse(0));
    }

    private PartView part(Assignment part) {
        ActivityKind kind = live.plan().activity(part.activity()).map(Activity::kind).orElse(ActivityKind.BROWSING);
        return new PartView(part.activity().value(), name(part.activity()), kind, part.from(), part.until(),
                part.status());
    }

    // ---- what to call out

    private List<CallView> calls() {
        List<CallView> calls = new ArrayList<>(begun());
        for (WaitEvent event : plan.events().stream().flatMap(e -> sure(e).stream()).toList()) {
            boolean told = !event.seats().isEmpty() && !event.at().isAfter(link.at().plus(WaitLink.LEAD));
            CallState state = event instanceof WaitEvent.Boxes ? CallState.BEGUN : CallState.AHEAD;
            calls.add(new CallView(state, event, told));
        }
        return calls;
    }

    /** What of it does not hang on candles still to be poured. */
    private Optional<WaitEvent> sure(WaitEvent event) {
        if (event instanceof WaitEvent.WrappingFrom e) { // an estimate, as every screen says it
            return Optional.of(new WaitEvent.WrappingFrom(SaidRange.latest(e.at()), e.activity(), e.name(), e.where(),
                    e.due()));
        }
        if (link.allPoured() || event instanceof WaitEvent.Boxes) {
            return Optional.of(event);
        }
        if (event instanceof WaitEvent.ClassBreak) {
            return Optional.empty();
        }
        List<SeatNumber> seats = event.seats().stream().filter(link.poured()::contains).toList();
        if (event instanceof WaitEvent.Opens e) {
            return seats.isEmpty() ? Optional.empty()
                    : Optional.of(new WaitEvent.Opens(e.at(), e.activity(), e.name(), e.where(), seats));
        }
        return Optional.of(event);
    }

    /** Breaks of the class while they last, everything else for some minutes. */
    private List<CallView> begun() {
        Map<Begun, List<SeatNumber>> groups = new LinkedHashMap<>();
        for (SeatStrip strip : plan.strips()) {
            for (Assignment part : strip.parts()) {
                Activity activity = live.plan().activity(part.activity()).orElseThrow();
                boolean together = activity.isClassBreak();
                if (activity.isWrapping() && !judgedSet(strip, part)) {
                    continue; // it folds its box, which the plan calls out
                }
                if (part.status() == Assignment.Status.UNDER_WAY
                        && (together || part.from().plus(JUST_BEGUN).isAfter(link.at()))) {
                    Begun begun = new Begun(part.activity(), part.from(), together ? part.until() : part.from());
                    groups.computeIfAbsent(begun, b -> new ArrayList<>()).add(strip.seat());
                }
            }
        }
        List<CallView> begun = new ArrayList<>();
        groups.forEach((b, seats) -> begun.add(begun(b, seats)));
        begun.sort(Comparator.comparing((CallView c) -> -c.seats().size()).thenComparing(CallView::at));
        return begun;
    }

    private boolean judgedSet(SeatStrip strip, Assignment part) {
        return link.problem().orElseThrow().seats().stream().filter(s -> s.seat().equals(strip.seat()))
                .anyMatch(s -> s.handTest().passedBy(part.from()));
    }

    private record Begun(ActivityId activity, Instant from, Instant until) { }

    private CallView begun(Begun begun, List<SeatNumber> seats) {
        Activity activity = live.plan().activity(begun.activity()).orElseThrow();
        WaitEvent event = activity.isClassBreak()
                ? new WaitEvent.ClassBreak(begun.from(), begun.until(), activity.id(), activity.name(),
                        activity.where(), seats, List.of())
                : activity.isWrapping()
                ? new WaitEvent.Wrapping(begun.from(), activity.id(), activity.name(), activity.where(), seats)
                : new WaitEvent.Opens(begun.from(), activity.id(), activity.name(), activity.where(), seats);
        return new CallView(CallState.BEGUN, event, true);
    }

    // ---- what does not hold, and what could not be done

    /** What one cause changed at one instant. */
    private record Cause(Instant at, BrokenAnnouncement.Reason why, Optional<ActivityId> other,
                         Optional<ActivityId> own) { }

    /** Changes that read the same but for the seat. */
    private record Same(ActivityId activity, Instant was, Optional<Instant> now) { }

    /** The newest first; all that one cause changed at once is one of them. */
    private List<ChangeView> changes(List<ActivityView> activities) {
        Map<Cause, Map<Same, List<SeatNumber>>> causes = new LinkedHashMap<>();
        for (WaitLink.Change change : link.changes()) {
            BrokenAnnouncement what = change.what();
            Optional<Instant> now = what instanceof BrokenAnnouncement.Moved m ? Optional.of(m.nowFrom())
                    : Optional.empty();
            causes.computeIfAbsent(cause(change.at(), what), c -> new LinkedHashMap<>())
                    .computeIfAbsent(new Same(what.was().activity(), what.was().from(), now), s -> new ArrayList<>())
                    .add(what.was().seat());
        }
        List<ChangeView> views = new ArrayList<>();
        causes.forEach((cause, changes) -> {
            List<WaitView.Told> told = new ArrayList<>();
            changes.forEach((same, seats) ->
                    told.add(new WaitView.Told(name(same.activity()), same.was(), same.now(), seats)));
            views.add(new ChangeView(cause.at(), cause.why(), cause.other().map(this::name), cause.own()
                    .flatMap(id -> activities.stream().filter(a -> a.id().equals(id.value())).findFirst()), told));
        });
        views.sort(Comparator.comparing(ChangeView::at).reversed());
        return views;
    }

    /** What was done to an activity itself is told of each activity apart. */
    private static Cause cause(Instant at, BrokenAnnouncement what) {
        boolean itself = what.why() == BrokenAnnouncement.Reason.NOT_OFFERED
                || what.why() == BrokenAnnouncement.Reason.INSTRUCTOR_MOVED_IT;
        return new Cause(at, what.why(), what.other(), itself ? Optional.of(what.was().activity()) : Optional.empty());
    }

    private List<Unplaced> unplaced() {
        boolean anybodyWaits = plan.strips().stream().anyMatch(s -> s.waitUntil().isAfter(s.waitFrom()));
        return anybodyWaits ? plan.unplaced() : List.of();
    }

    private boolean farPastTheEnd(SeatNumber seat) {
        Instant promised = link.problem().orElseThrow().promisedEnd();
        return plan.strip(seat).stream().flatMap(s -> s.parts().stream())
                .anyMatch(p -> p.until().isAfter(promised.plus(WaitView.LATE)));
    }
}

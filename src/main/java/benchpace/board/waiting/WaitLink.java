package benchpace.board.waiting;

import benchpace.breaks.Announced;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.breaks.search.FirstComeFirstServed;
import benchpace.breaks.search.WaitPlanner;
import benchpace.plan.Activity;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One planning of a class's wait; the next one rests on it.
 *
 * @param seq     the number of the last event it knows
 * @param tick    a minute passed, no event
 * @param poured  the seats whose candle is poured; the others only expect to, and are told nothing
 * @param told    what guests have been told and is still to come
 * @param changes what they were told and did not hold, of the last minutes, oldest first
 * @param past    how the wait of every seat that ever had one stood when it was planned last
 * @param fault   why it could not be planned; then it carries on what the last planning had, for the next to rest on
 */
record WaitLink(Instant at, long seq, boolean tick, Optional<WaitProblem> problem, WaitPlan plan,
                Set<SeatNumber> poured, List<Announced> told, List<Change> changes,
                Map<SeatNumber, SeatPast> past, Optional<Throwable> fault) {
    /** How far ahead screens name the seats; common practice, no source: time to finish a cup and walk over. */
    static final Duration LEAD = Duration.ofMinutes(15);
    /** How long a change is shown. */
    private static final Duration SHOWN = Duration.ofMinutes(10);

    /** Something that changed. */
    record Change(Instant at, BrokenAnnouncement what) { }

    static WaitLink idle(Instant at, long seq) {
        return new WaitLink(at, seq, false, Optional.empty(), WaitPlan.NONE, Set.of(), List.of(), List.of(), Map.of(),
                Optional.empty());
    }

    WaitLink {
        poured = Set.copyOf(poured);
        told = List.copyOf(told);
        changes = List.copyOf(changes);
        past = Map.copyOf(past);
    }

    /** Plans anew. The same link and problem always give the same next one. */
    WaitLink next(WaitProblems problems, Instant now, long last, boolean minute) {
        if (problems.closed()) {
            return new WaitLink(now, last, false, problem, plan, poured, told, changes, past, Optional.empty());
        }
        if (!problems.waits()) {
            return idle(now, last);
        }
        WaitProblem problem = problems.problem(plan, told);
        WaitPlan next = WaitPlanner.plan(problem);
        Set<SeatNumber> seats = problems.poured();
        List<Announced> tellNow = new ArrayList<>(next.announcedWithin(LEAD));
        tellNow.removeIf(a -> !mayTell(problem, seats, a));
        next.changes().forEach(c -> {
            if (c instanceof BrokenAnnouncement.Moved m) {
                tellNow.add(new Announced(m.was().seat(), m.was().activity(), m.nowFrom()));
            }
        });
        return new WaitLink(now, last, minute, Optional.of(problem), next, seats,
                tellNow.stream().distinct().toList(), changes(next, now), SeatPast.after(past, next, now),
                Optional.empty());
    }

    /** What stands in for the next one where it cannot be planned. */
    WaitLink failed(Instant now, long last, boolean minute, Throwable why) {
        return new WaitLink(now, last, minute, problem, plan, poured, told, changes, past, Optional.of(why));
    }

    /** A break of the class is told once every candle is poured: a pour that is late moves it. */
    private static boolean mayTell(WaitProblem problem, Set<SeatNumber> poured, Announced told) {
        boolean together = problem.activities().stream().filter(a -> a.id().equals(told.activity()))
                .anyMatch(Activity::isClassBreak);
        return together ? problem.seats().stream().allMatch(s -> poured.contains(s.seat()))
                : poured.contains(told.seat());
    }

    private List<Change> changes(WaitPlan next, Instant now) {
        List<Change> all = new ArrayList<>(changes);
        all.removeIf(c -> c.at().plus(SHOWN).isBefore(now));
        for (BrokenAnnouncement change : next.changes()) {
            if (change.why() == BrokenAnnouncement.Reason.GUEST_AWAY
                    || change.why() == BrokenAnnouncement.Reason.DONE_OTHERWISE) {
                continue;
            }
            Optional<Announced> first = all.stream().map(Change::what).filter(c -> leadsTo(c, change.was()))
                    .map(BrokenAnnouncement::was).findFirst();
            all.removeIf(c -> leadsTo(c.what(), change.was()));
            Optional.of(since(first.orElse(change.was()), change)).filter(c -> !backAgain(c))
                    .ifPresent(c -> all.add(new Change(now, c)));
        }
        return all;
    }

    /** Moved twice is moved once, from what was told first. */
    private static BrokenAnnouncement since(Announced first, BrokenAnnouncement change) {
        return change instanceof BrokenAnnouncement.Moved m
                ? new BrokenAnnouncement.Moved(first, m.nowFrom(), m.why(), m.other())
                : new BrokenAnnouncement.Dropped(first, change.why(), change.other());
    }

    private static boolean leadsTo(BrokenAnnouncement earlier, Announced told) {
        return earlier instanceof BrokenAnnouncement.Moved m && m.was().seat().equals(told.seat())
                && m.was().activity().equals(told.activity()) && m.nowFrom().equals(told.from());
    }

    private static boolean backAgain(BrokenAnnouncement change) {
        return change instanceof BrokenAnnouncement.Moved m && Objects.equals(m.was().from(), m.nowFrom());
    }

    /** Whether the passing of a minute may change it. */
    boolean active() {
        return fault.isPresent() || plan.strips().stream().anyMatch(s -> s.waitUntil().isAfter(at)
                || s.parts().stream().anyMatch(p -> p.until().isAfter(at)));
    }

    boolean allPoured() {
        return problem.isPresent() && problem.get().seats().stream().allMatch(s -> poured.contains(s.seat()));
    }

    /** The counterfactual: how it would go on from here first come, first served; what has been is the same. */
    WaitPlan counterfactual() {
        return problem.map(FirstComeFirstServed::plan).orElse(WaitPlan.NONE);
    }
}

package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitProblem;
import benchpace.live.ActivityRun;
import benchpace.live.Stint;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a seat has done and is doing, from taps where there are any and otherwise from the plan: what was planned
 * counts as having happened, unless a tap, the pour or the instructor says otherwise. Untapped ends are expected at
 * the typical length, and after that at the longest.
 */
final class SeatHistory {
    private final WaitProblem problem;
    private final Map<ActivityId, Activity> activities;

    SeatHistory(WaitProblem problem, Map<ActivityId, Activity> activities) {
        this.problem = problem;
        this.activities = activities;
    }

    /** The parts begun by now, in order, not overlapping; at most the last is under way. */
    List<Assignment> of(SeatWait seat) {
        List<Assignment> parts = tapped(seat);
        for (Activity activity : problem.activities()) {
            begunTogether(seat, activity, parts).ifPresent(parts::add);
        }
        problem.previous().strip(seat.seat()).ifPresent(strip -> {
            for (Assignment part : strip.parts()) {
                if (!part.from().isAfter(problem.now())) {
                    assumed(seat, part, parts).ifPresent(parts::add);
                }
            }
        });
        parts.sort(Comparator.comparing(Assignment::from));
        return parts;
    }

    private List<Assignment> tapped(SeatWait seat) {
        List<Stint> stints = seat.tapped().stream().filter(s -> !s.from().isAfter(problem.now()))
                .filter(s -> s.until().isAfter(s.from()))
                .filter(s -> activities.containsKey(s.activity())).sorted(Comparator.comparing(Stint::from)).toList();
        List<Assignment> parts = new ArrayList<>();
        for (int i = 0; i < stints.size(); i++) {
            Stint stint = stints.get(i);
            Instant end = stint.open() ? expectedEnd(stint) : stint.until();
            if (i + 1 < stints.size()) {
                end = earlier(end, stints.get(i + 1).from());
            }
            parts.add(part(stint.activity(), stint.from(), end));
        }
        return parts;
    }

    private Instant expectedEnd(Stint stint) {
        Activity activity = activities.get(stint.activity());
        ActivityRun run = problem.run(stint.activity());
        Instant typically = stint.from().plus(activity.typical()).plus(run.extension());
        Instant atLongest = stint.from().plus(activity.longest()).plus(run.extension());
        return cut(run, stint.from(), problem.now().isBefore(typically) ? typically : atLongest);
    }

    private Optional<Assignment> begunTogether(SeatWait seat, Activity activity, List<Assignment> known) {
        ActivityRun run = problem.run(activity.id());
        boolean here = seat.presence() instanceof Presence.Here || seat.presence() instanceof Presence.LeavingAt;
        if (!activity.isClassBreak() || !run.begunBy(problem.now()) || !here
                || run.openedAt().filter(seat.freeFrom()::isAfter).isPresent()) {
            return Optional.empty();
        }
        Instant from = run.openedAt().orElseThrow();
        Instant end = cut(run, from, from.plus(activity.typical()).plus(run.extension()));
        if (known.stream().anyMatch(p -> p.overlaps(from, end))) {
            return Optional.empty();
        }
        return Optional.of(part(activity.id(), from, end));
    }

    private Optional<Assignment> assumed(SeatWait seat, Assignment planned, List<Assignment> known) {
        ActivityId id = planned.activity();
        ActivityRun run = problem.run(id);
        Activity activity = activities.get(id);
        if (activity == null || activity.isClassBreak() && run.begunBy(problem.now())
                || planned.from().isBefore(seat.freeFrom()) || didNotBegin(run, planned.from())
                || activity.isWrapping() && WrappingTurns.callsFrom(run, seat.handTest())
                        .filter(from -> !planned.from().isBefore(from)).isEmpty()) {
            return Optional.empty();
        }
        boolean again = activity.kind().onceOnly() && known.stream().anyMatch(p -> p.activity().equals(id)
                && (!activity.isWrapping() || seat.handTest().passedBy(p.from())));
        Instant end = planned.until();
        if (planned.status() != Assignment.Status.DONE) {
            end = end.plus(run.extensionSince(problem.previous().at()));
        }
        return again ? Optional.empty()
                : besideWhatIsKnown(id, planned.from(), cut(run, planned.from(), end), known);
    }

    /** A tap in the middle of a planned part ends it; what had not run for half its length then is not counted. */
    private Optional<Assignment> besideWhatIsKnown(ActivityId id, Instant from, Instant planned,
                                                  List<Assignment> known) {
        Instant end = planned;
        for (Assignment other : known) {
            if (other.overlaps(from, end)) {
                if (!other.from().isAfter(from)) {
                    return Optional.empty();
                }
                end = other.from();
            }
        }
        Duration half = Duration.between(from, planned).dividedBy(2);
        return Duration.between(from, end).compareTo(half) < 0 ? Optional.empty() : Optional.of(part(id, from, end));
    }

    private Assignment part(ActivityId id, Instant from, Instant end) {
        return new Assignment(id, from, end,
                end.isAfter(problem.now()) ? Assignment.Status.UNDER_WAY : Assignment.Status.DONE);
    }

    /** Whether what was planned for this moment had been withdrawn, or moved to a later time, before. */
    private static boolean didNotBegin(ActivityRun run, Instant planned) {
        return run.withdrawnAt().filter(at -> !planned.isBefore(at)).isPresent()
                || run.move().filter(m -> !planned.isBefore(m.at()) && planned.isBefore(m.to())).isPresent();
    }

    private static Instant cut(ActivityRun run, Instant from, Instant end) {
        return run.withdrawnAt().filter(at -> at.isAfter(from)).map(at -> earlier(end, at)).orElse(end);
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}

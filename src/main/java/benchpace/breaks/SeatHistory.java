package benchpace.breaks;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;

/**
 * What a seat has done and is doing, from taps where there are any and otherwise from the plan: what was planned
 * counts as having happened, unless a tap, the pour or the instructor says otherwise. Untapped ends are expected at
 * the typical length, and after that at the longest.
 */
final class SeatHistory {
    private final WaitProblem problem;
    private final Map<ActivityId, Activity> activities;
    private final Map<ActivityId, Standing> standings;

    SeatHistory(WaitProblem problem, Map<ActivityId, Activity> activities, Map<ActivityId, Standing> standings) {
        this.problem = problem;
        this.activities = activities;
        this.standings = standings;
    }

    /** The parts begun by now, in order, not overlapping; at most the last is under way. */
    List<StripPart> of(SeatWait seat) {
        List<StripPart> parts = tapped(seat);
        for (Activity activity : problem.activities()) {
            begunTogether(seat, activity, parts).ifPresent(parts::add);
        }
        problem.previous().strip(seat.seat()).ifPresent(strip -> {
            for (StripPart part : strip.parts()) {
                if (!part.from().isAfter(problem.now())) {
                    assumed(seat, part, parts).ifPresent(parts::add);
                }
            }
        });
        parts.sort(Comparator.comparing(StripPart::from));
        return parts;
    }

    private List<StripPart> tapped(SeatWait seat) {
        List<Stint> stints = seat.tapped().stream().filter(s -> !s.from().isAfter(problem.now()))
                .filter(s -> activities.containsKey(s.activity())).sorted(Comparator.comparing(Stint::from)).toList();
        List<StripPart> parts = new ArrayList<>();
        for (int i = 0; i < stints.size(); i++) {
            Stint stint = stints.get(i);
            Instant end = stint.until().equals(Stint.OPEN) ? expectedEnd(stint) : stint.until();
            if (i + 1 < stints.size()) {
                end = earlier(end, stints.get(i + 1).from());
            }
            parts.add(part(stint.activity(), stint.from(), end));
        }
        return parts;
    }

    private Instant expectedEnd(Stint stint) {
        Activity activity = activities.get(stint.activity());
        Standing standing = standing(stint.activity());
        Instant typically = stint.from().plus(activity.typical()).plus(standing.extension());
        Instant atLongest = stint.from().plus(activity.longest()).plus(standing.extension());
        return cut(standing, stint.from(), problem.now().isBefore(typically) ? typically : atLongest);
    }

    private Optional<StripPart> begunTogether(SeatWait seat, Activity activity, List<StripPart> known) {
        Standing standing = standing(activity.id());
        boolean here = seat.presence() instanceof Presence.Here || seat.presence() instanceof Presence.LeavingAt;
        if (!isClassBreak(activity) || !standing.begunBy(problem.now()) || !here
                || seat.freeFrom().isAfter(standing.begunAt())) {
            return Optional.empty();
        }
        Instant from = standing.begunAt();
        Instant end = cut(standing, from, from.plus(activity.typical()).plus(standing.extension()));
        if (known.stream().anyMatch(p -> p.overlaps(from, end))) {
            return Optional.empty();
        }
        return Optional.of(part(activity.id(), from, end));
    }

    private Optional<StripPart> assumed(SeatWait seat, StripPart planned, List<StripPart> known) {
        ActivityId id = planned.activity();
        Standing standing = standing(id);
        Activity activity = activities.get(id);
        if (activity == null || isClassBreak(activity) && standing.begunBy(problem.now())
                || planned.from().isBefore(seat.freeFrom()) || !planned.from().isBefore(standing.closedAt())
                || standing.movedAwayFrom(planned.from()) || activity.kind() == ActivityKind.WRAPPING
                && standing.callsFrom(seat.handTest()).filter(from -> !planned.from().isBefore(from)).isEmpty()) {
            return Optional.empty();
        }
        boolean again = activity.kind().onceOnly() && known.stream().anyMatch(p -> p.activity().equals(id)
                && (activity.kind() != ActivityKind.WRAPPING || seat.handTest().passedBy(p.from())));
        Instant end = planned.until();
        if (planned.progress() != StripPart.Progress.DONE) {
            end = end.plus(Standing.extensionSince(problem.decisions(), id, problem.previous().at()));
        }
        return again ? Optional.empty()
                : besideWhatIsKnown(id, planned.from(), cut(standing, planned.from(), end), known);
    }

    /** A tap in the middle of a planned part ends it; what had not run for half its length then is not counted. */
    private Optional<StripPart> besideWhatIsKnown(ActivityId id, Instant from, Instant planned,
                                                  List<StripPart> known) {
        Instant end = planned;
        for (StripPart other : known) {
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

    private StripPart part(ActivityId id, Instant from, Instant end) {
        return new StripPart(id, from, end,
                end.isAfter(problem.now()) ? StripPart.Progress.UNDER_WAY : StripPart.Progress.DONE);
    }

    private Standing standing(ActivityId id) {
        return standings.getOrDefault(id, Standing.AS_PLANNED);
    }

    static boolean isClassBreak(Activity activity) {
        return activity.audience() == Activity.Audience.WHOLE_CLASS && activity.kind() != ActivityKind.WRAPPING;
    }

    private static Instant cut(Standing standing, Instant from, Instant end) {
        return standing.closedAt().isAfter(from) ? earlier(end, standing.closedAt()) : end;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}

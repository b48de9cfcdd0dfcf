package benchpace.breaks;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;

/** Compares what guests were told with the plan, and finds out why something could not stay. */
final class AnnouncementCheck {
    private final Timeline line;
    private final List<SeatStrip> strips;

    AnnouncementCheck(Timeline line, List<SeatStrip> strips) {
        this.line = line;
        this.strips = strips;
    }

    /** What changed about one announcement; empty when it stays. */
    Optional<AnnouncedChange> of(Announced told) {
        List<StripPart> parts = strips.stream().filter(s -> s.seat().equals(told.seat()))
                .flatMap(s -> s.parts().stream()).filter(p -> p.activity().equals(told.activity())).toList();
        if (parts.stream().anyMatch(p -> p.from().equals(told.from())
                && p.progress() != StripPart.Progress.EXPECTED)) {
            return Optional.empty();
        }
        AnnouncedChange.Reason why = reason(told);
        return Optional.of(parts.stream().filter(p -> p.progress() == StripPart.Progress.PLANNED).findFirst()
                .<AnnouncedChange>map(p -> new AnnouncedChange.Moved(told, p.from(), why))
                .orElseGet(() -> new AnnouncedChange.Dropped(told, why)));
    }

    private AnnouncedChange.Reason reason(Announced told) {
        Optional<SeatWait> seat = line.problem.seats().stream().filter(s -> s.seat().equals(told.seat())).findFirst();
        Optional<Activity> activity = activity(told.activity());
        if (seat.isEmpty() || !Timeline.isHere(seat.get())) {
            return AnnouncedChange.Reason.GUEST_AWAY;
        }
        Standing standing = Standing.fold(line.problem.decisions())
                .getOrDefault(told.activity(), Standing.AS_PLANNED);
        if (activity.isEmpty() || !standing.offered()) {
            return AnnouncedChange.Reason.NOT_OFFERED;
        }
        if (standing.begunBy(line.problem.now()) && SeatHistory.isClassBreak(activity.get())
                || standing.pinned() && told.from().isBefore(standing.notBefore())) {
            return AnnouncedChange.Reason.INSTRUCTOR_MOVED_IT;
        }
        return reason(told, seat.get(), Task.of(activity.get(), standing, 0));
    }

    private AnnouncedChange.Reason reason(Announced told, SeatWait seat, Task task) {
        boolean wrapping = task.activity().kind() == ActivityKind.WRAPPING;
        Instant end = told.from().plusSeconds(60L * task.shortest());
        List<StripPart> history = line.histories.get(told.seat());
        if (history.stream().anyMatch(p -> p.activity().equals(told.activity()))
                && task.activity().kind().onceOnly()) {
            return AnnouncedChange.Reason.DONE_OTHERWISE;
        }
        if (told.from().isBefore(line.instant(line.freeFrom(seat)))) {
            boolean elsewhere = !told.from().isAfter(line.problem.now())
                    && history.stream().anyMatch(p -> p.overlaps(told.from(), end));
            return elsewhere ? AnnouncedChange.Reason.DONE_OTHERWISE : AnnouncedChange.Reason.NOT_FREE_IN_TIME;
        }
        if (wrapping && !line.wrapping.mayBeCalled(seat)) {
            return AnnouncedChange.Reason.NOT_JUDGED_SET;
        }
        if (wrapping) {
            return told.from().isBefore(seat.ready().p50()) ? AnnouncedChange.Reason.CANDLE_LATER : leavesOr(seat, end);
        }
        Instant longestEnd = told.from().plusSeconds(60L * task.mustHave());
        Lane lane = line.lanes.stream().filter(l -> l.seat().equals(told.seat())).findFirst().orElseThrow();
        if (task.mustHave() > 0 && longestEnd.isAfter(line.instant(lane.mustEndBy()))
                || end.isAfter(line.instant(lane.until()))) {
            return leavesOr(seat, longestEnd.isAfter(end) ? longestEnd : end) == AnnouncedChange.Reason.GUEST_AWAY
                    ? AnnouncedChange.Reason.GUEST_AWAY : AnnouncedChange.Reason.CANDLE_TOO_EARLY;
        }
        return AnnouncedChange.Reason.NO_PLACE;
    }

    private static AnnouncedChange.Reason leavesOr(SeatWait seat, Instant end) {
        return seat.presence() instanceof Presence.LeavingAt leaving && end.isAfter(leaving.at())
                ? AnnouncedChange.Reason.GUEST_AWAY : AnnouncedChange.Reason.NO_PLACE;
    }

    private Optional<Activity> activity(ActivityId id) {
        return line.problem.activities().stream().filter(a -> a.id().equals(id)).findFirst();
    }
}

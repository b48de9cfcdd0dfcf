package benchpace.breaks.search;

import benchpace.breaks.Announced;
import benchpace.breaks.Assignment;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Compares what guests were told with the plan, and finds out why something could not stay. */
final class AnnouncementCheck {
    private final Timeline line;
    private final List<SeatStrip> strips;

    AnnouncementCheck(Timeline line, List<SeatStrip> strips) {
        this.line = line;
        this.strips = strips;
    }

    /** What changed about one announcement; empty when it stays. */
    Optional<BrokenAnnouncement> of(Announced told) {
        List<Assignment> parts = strips.stream().filter(s -> s.seat().equals(told.seat()))
                .flatMap(s -> s.parts().stream()).filter(p -> p.activity().equals(told.activity())).toList();
        if (parts.stream().anyMatch(p -> p.from().equals(told.from())
                && p.status() != Assignment.Status.EXPECTED)) {
            return Optional.empty();
        }
        Cause cause = cause(told);
        return Optional.of(parts.stream().filter(p -> p.status() == Assignment.Status.PLANNED).findFirst()
                .<BrokenAnnouncement>map(p -> new BrokenAnnouncement.Moved(told, p.from(), cause.why(), cause.other()))
                .orElseGet(() -> new BrokenAnnouncement.Dropped(told, cause.why(), cause.other())));
    }

    private record Cause(BrokenAnnouncement.Reason why, Optional<ActivityId> other) {
        static Cause of(BrokenAnnouncement.Reason why) {
            return new Cause(why, Optional.empty());
        }
    }

    private Cause cause(Announced told) {
        Optional<SeatWait> seat = line.problem.seats().stream().filter(s -> s.seat().equals(told.seat())).findFirst();
        Optional<Activity> activity = activity(told.activity());
        if (seat.isEmpty() || !Timeline.isHere(seat.get())) {
            return Cause.of(BrokenAnnouncement.Reason.GUEST_AWAY);
        }
        ActivityRun run = line.problem.run(told.activity());
        if (activity.isEmpty() || !run.offered()) {
            return Cause.of(BrokenAnnouncement.Reason.NOT_OFFERED);
        }
        if (run.begunBy(line.problem.now()) && activity.get().isClassBreak()
                || run.move().filter(m -> told.from().isBefore(m.to())).isPresent()) {
            return Cause.of(BrokenAnnouncement.Reason.INSTRUCTOR_MOVED_IT);
        }
        Task task = Task.of(activity.get(), run, 0);
        if (activity.get().isWrapping() && !line.wrapping.mayBeCalled(seat.get())) {
            return Cause.of(BrokenAnnouncement.Reason.NOT_JUDGED_SET);
        }
        return held(told, seat.get(), task).or(() -> meets(told, task))
                .orElseGet(() -> Cause.of(reason(told, seat.get(), task)));
    }

    /** What keeps its hands busy then. */
    private Optional<Cause> held(Announced told, SeatWait seat, Task task) {
        if (!told.from().isBefore(line.instant(line.freeFrom(seat)))) {
            return Optional.empty();
        }
        if (seat.freeFrom().isAfter(told.from())) {
            return Optional.of(Cause.of(BrokenAnnouncement.Reason.NOT_FREE_IN_TIME));
        }
        Instant end = told.from().plusSeconds(60L * task.shortest());
        return line.histories.get(told.seat()).stream().filter(p -> !p.activity().equals(told.activity()))
                .filter(p -> p.overlaps(told.from(), end)).findFirst().map(p -> {
                    if (line.problem.run(p.activity()).begunBy(line.problem.now())
                            && activity(p.activity()).filter(Activity::isClassBreak).isPresent()) {
                        return new Cause(BrokenAnnouncement.Reason.OTHER_STARTED, Optional.of(p.activity()));
                    }
                    return told.from().isAfter(line.problem.now())
                            ? new Cause(BrokenAnnouncement.Reason.STILL_AT_OTHER, Optional.of(p.activity()))
                            : Cause.of(BrokenAnnouncement.Reason.DONE_OTHERWISE);
                });
    }

    /** The break of the class that is planned over it now. */
    private Optional<Cause> meets(Announced told, Task task) {
        Instant end = told.from().plusSeconds(60L * task.shortest());
        return strips.stream().filter(s -> s.seat().equals(told.seat())).flatMap(s -> s.planned().stream())
                .filter(p -> !p.activity().equals(told.activity()) && p.overlaps(told.from(), end))
                .filter(p -> activity(p.activity()).filter(Activity::isClassBreak).isPresent()).findFirst()
                .map(p -> new Cause(BrokenAnnouncement.Reason.OTHER_AT_THAT_TIME, Optional.of(p.activity())));
    }

    private BrokenAnnouncement.Reason reason(Announced told, SeatWait seat, Task task) {
        boolean wrapping = task.activity().isWrapping();
        Instant end = told.from().plusSeconds(60L * task.shortest());
        List<Assignment> history = line.histories.get(told.seat());
        if (history.stream().anyMatch(p -> p.activity().equals(told.activity()))
                && task.activity().kind().onceOnly()) {
            return BrokenAnnouncement.Reason.DONE_OTHERWISE;
        }
        if (wrapping) {
            return told.from().isBefore(seat.ready().p50()) ? BrokenAnnouncement.Reason.CANDLE_LATER
                    : leavesOr(seat, end);
        }
        Instant longestEnd = told.from().plusSeconds(60L * task.mustHave());
        SeatWindow window = line.windows.stream().filter(l -> l.seat().equals(told.seat())).findFirst().orElseThrow();
        if (task.mustHave() > 0 && longestEnd.isAfter(line.instant(window.mustEndBy()))
                || end.isAfter(line.instant(window.until()))) {
            return leavesOr(seat, longestEnd.isAfter(end) ? longestEnd : end) == BrokenAnnouncement.Reason.GUEST_AWAY
                    ? BrokenAnnouncement.Reason.GUEST_AWAY : BrokenAnnouncement.Reason.CANDLE_TOO_EARLY;
        }
        return task.activity().isClassBreak() ? BrokenAnnouncement.Reason.NOT_TOGETHER
                : BrokenAnnouncement.Reason.NO_PLACE;
    }

    private static BrokenAnnouncement.Reason leavesOr(SeatWait seat, Instant end) {
        return seat.presence() instanceof Presence.LeavingAt leaving && end.isAfter(leaving.at())
                ? BrokenAnnouncement.Reason.GUEST_AWAY : BrokenAnnouncement.Reason.NO_PLACE;
    }

    private Optional<Activity> activity(ActivityId id) {
        return line.problem.activities().stream().filter(a -> a.id().equals(id)).findFirst();
    }
}

package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.SetJudgement;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Looks at a plan from outside, knowing only the rules, and lists what is wrong with it. */
public final class PlanFaults {
    private PlanFaults() { }

    public static List<String> of(WaitProblem problem, WaitPlan plan) {
        Map<ActivityId, Activity> activities =
                problem.activities().stream().collect(Collectors.toMap(Activity::id, Function.identity()));
        List<String> faults = new ArrayList<>();
        for (SeatStrip strip : plan.strips()) {
            SeatWait seat = problem.seats().stream().filter(s -> s.seat().equals(strip.seat())).findFirst()
                    .orElseThrow();
            seatFaults(problem, seat, strip, activities, faults);
        }
        capacityFaults(problem, plan, activities, faults);
        classBreakFaults(problem, plan, activities, faults);
        return faults;
    }

    private static void seatFaults(WaitProblem problem, SeatWait seat, SeatStrip strip,
                                   Map<ActivityId, Activity> activities, List<String> faults) {
        String who = "seat " + seat.seat() + ": ";
        boolean cleaned = activities.values().stream().noneMatch(a -> a.kind() == ActivityKind.CLEAN_UP
                && a.audience() == Activity.Audience.OWN_PACE && isOffered(problem, a.id()));
        Assignment before = null;
        for (Assignment part : strip.parts()) {
            Activity activity = activities.get(part.activity());
            if (before != null && part.from().isBefore(before.until())) {
                faults.add(who + "two things at once at " + part.from());
            }
            if (part.status() == Assignment.Status.PLANNED || part.status() == Assignment.Status.EXPECTED) {
                plannedFaults(seat, part, activity, who, faults);
                boolean classBreak = activity.audience() == Activity.Audience.WHOLE_CLASS;
                if (activity.needs().contains(Activity.Need.TABLE_CLEAR) && !cleaned && !classBreak
                        && activity.kind() != ActivityKind.CLEAN_UP) {
                    faults.add(who + activity.id() + " before the table is clear");
                }
                if (before != null && before.activity().equals(part.activity())) {
                    faults.add(who + activity.id() + " twice in a row");
                }
            }
            cleaned |= activity.kind() == ActivityKind.CLEAN_UP;
            before = part;
        }
        for (Activity activity : activities.values()) {
            long times = strip.parts().stream().filter(p -> p.activity().equals(activity.id())).count();
            if (times > (activity.kind().onceOnly() || activity.audience() == Activity.Audience.WHOLE_CLASS ? 1 : 2)) {
                faults.add(who + activity.id() + " " + times + " times");
            }
        }
        int idle = 0;
        for (Instant t = strip.waitFrom(); t.isBefore(strip.waitUntil()); t = t.plusSeconds(60)) {
            Instant minute = t;
            boolean tried = !t.isBefore(seat.ready().p50()) && t.isBefore(tried(problem, seat));
            idle += tried || strip.parts().stream().anyMatch(p -> p.overlaps(minute, minute.plusSeconds(60))) ? 0 : 1;
        }
        if (idle != strip.idleMinutes()) {
            faults.add(who + "says " + strip.idleMinutes() + " idle minutes, has " + idle);
        }
    }

    private static Instant tried(WaitProblem problem, SeatWait seat) {
        boolean wrapped = problem.activities().stream().anyMatch(a -> a.kind() == ActivityKind.WRAPPING);
        return wrapped ? seat.ready().p50().plus(seat.handTest().finishing()) : seat.ready().p50();
    }

    private static boolean isOffered(WaitProblem problem, ActivityId id) {
        return problem.run(id).offered();
    }

    private static void plannedFaults(SeatWait seat, Assignment part, Activity activity, String who,
                                      List<String> faults) {
        if (part.from().isBefore(seat.freeFrom())) {
            faults.add(who + activity.id() + " before its hands are free");
        }
        if (activity.kind() == ActivityKind.WRAPPING) {
            boolean judged = seat.handTest() instanceof SetJudgement.Given;
            if (!judged && part.status() != Assignment.Status.EXPECTED) {
                faults.add(who + "called to the wrapping before the hand test");
            }
            if (!judged && part.from().isBefore(seat.ready().p50().plus(seat.handTest().finishing()))) {
                faults.add(who + "wrapped before its candle is tried and trimmed");
            }
            if (seat.handTest() instanceof SetJudgement.Given p && p.wrapFrom().filter(f -> part.from().isBefore(f))
                    .isPresent()) {
                faults.add(who + "wrapped before its candle is trimmed");
            }
            return;
        }
        if (!activity.interruptible()
                && part.from().plus(activity.longest()).isAfter(seat.ready().p10())) {
            faults.add(who + activity.id() + " outlasts its candle");
        }
        if (part.until().isAfter(seat.mustBeBackBy())) {
            faults.add(who + activity.id() + " when it must be back");
        }
        if (seat.presence() instanceof Presence.LeavingAt leaving && part.until().isAfter(leaving.at())) {
            faults.add(who + activity.id() + " after it left");
        }
        boolean elastic = activity.interruptible() && !activity.kind().onceOnly()
                && activity.audience() == Activity.Audience.OWN_PACE;
        if (part.length().compareTo(activity.typical()) != 0 && !(elastic
                && part.length().compareTo(activity.typical()) <= 0
                && part.length().multipliedBy(2).compareTo(activity.typical()) >= 0)) {
            faults.add(who + activity.id() + " for " + part.length());
        }
    }

    private static SeatNumber candle(WaitProblem problem, SeatNumber seat) {
        return problem.seats().stream().filter(s -> s.seat().equals(seat)).findFirst().orElseThrow().candle();
    }

    private static void capacityFaults(WaitProblem problem, WaitPlan plan,
                                       Map<ActivityId, Activity> activities, List<String> faults) {
        List<Assignment> parts = plan.strips().stream().flatMap(s -> s.parts().stream())
                .filter(p -> p.status() != Assignment.Status.DONE).toList();
        for (Assignment begins : parts) {
            long there = plan.strips().stream().filter(s -> s.parts().stream().anyMatch(p -> parts.contains(p)
                    && p.activity().equals(begins.activity())
                    && !p.from().isAfter(begins.from()) && p.until().isAfter(begins.from())))
                    .map(s -> activities.get(begins.activity()).kind() == ActivityKind.WRAPPING
                            ? candle(problem, s.seat()) : s.seat()).distinct().count();
            if (there > activities.get(begins.activity()).places()) {
                faults.add(there + " at " + begins.activity() + " at " + begins.from());
            }
        }
    }

    private static void classBreakFaults(WaitProblem problem, WaitPlan plan, Map<ActivityId, Activity> activities,
                                         List<String> faults) {
        for (Activity activity : activities.values()) {
            if (activity.audience() != Activity.Audience.WHOLE_CLASS || activity.kind() == ActivityKind.WRAPPING) {
                continue;
            }
            List<Instant> starts = plan.strips().stream().flatMap(s -> s.planned().stream())
                    .filter(p -> p.activity().equals(activity.id())).map(Assignment::from).toList();
            boolean pinned = problem.runs().containsKey(activity.id());
            long waiting = plan.strips().stream().filter(s -> s.waitUntil().isAfter(s.waitFrom())).count();
            if (starts.stream().distinct().count() > 1) {
                faults.add(activity.id() + " begins at " + starts);
            }
            if (!starts.isEmpty() && !pinned && starts.size() != waiting) {
                faults.add(activity.id() + " with " + starts.size() + " of " + waiting + " seats");
            }
        }
    }
}

package benchpace.breaks;

import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Everything the wait plan depends on.
 *
 * @param now         the present instant
 * @param activities  what can be done in the wait, in the order the instructor listed it; at most {@value #MOST}
 * @param seats       the seats of the class, each once
 * @param runs        what the instructor decided so far; nothing about an activity that is not in it
 * @param promisedEnd when guests were told they can go home; class breaks end by then
 * @param previous    the plan before this one; {@link WaitPlan#NONE} at first
 * @param announced   what guests have been told; it moves only if it must
 */
public record WaitProblem(Instant now, List<Activity> activities, List<SeatWait> seats,
                          Map<ActivityId, ActivityRun> runs, Instant promisedEnd, WaitPlan previous,
                          List<Announced> announced) {
    /** More activities than anybody runs in one wait; bounds the search. */
    public static final int MOST = 20;

    public WaitProblem {
        activities = List.copyOf(activities);
        seats = List.copyOf(seats);
        runs = Map.copyOf(runs);
        announced = List.copyOf(announced);
        if (activities.size() > MOST) {
            throw new IllegalArgumentException("a wait has at most " + MOST + " activities, not " + activities.size());
        }
        requireDistinct("activity", activities.stream().map(Activity::id).toList());
        requireDistinct("seat", seats.stream().map(SeatWait::seat).toList());
        if (promisedEnd == null || previous == null) {
            throw new IllegalArgumentException("the promised end or the previous plan is missing");
        }
    }

    /** The first planning of a wait: nothing decided, announced or planned yet. */
    public static WaitProblem first(Instant now, List<Activity> activities, List<SeatWait> seats,
                                    Instant promisedEnd) {
        return new WaitProblem(now, activities, seats, Map.of(), promisedEnd, WaitPlan.NONE, List.of());
    }

    /** What the instructor decided about an activity. */
    public ActivityRun run(ActivityId activity) {
        return runs.getOrDefault(activity, ActivityRun.UNTOUCHED);
    }

    private static void requireDistinct(String what, List<?> keys) {
        Set<Object> seen = new HashSet<>();
        for (Object key : keys) {
            if (!seen.add(key)) {
                throw new IllegalArgumentException("the same " + what + " is listed twice: " + key);
            }
        }
    }
}

package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatStrip;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitProblem;
import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The problem in whole minutes. Slot 0 is the first whole minute not before now; what must have happened is rounded
 * up and what must not be passed is rounded down, so that a plan in slots holds in the room to the second.
 */
final class Timeline {
    /** Nobody is planned for further ahead than this. */
    private static final Duration FURTHEST = Duration.ofHours(8);

    final WaitProblem problem;
    final Instant origin;
    final List<Task> tasks = new ArrayList<>();
    final List<Task> classBreaks = new ArrayList<>();
    final List<SeatWindow> windows = new ArrayList<>();
    final Map<SeatNumber, List<Assignment>> histories = new LinkedHashMap<>();
    final WrappingTurns wrapping;
    final int slots;
    final int promisedEnd;
    final Capacity capacity;
    /** By task, {@link Task#lengths}. */
    final int[][] lengths;

    Timeline(WaitProblem problem) {
        this.problem = problem;
        this.origin = Instant.ofEpochSecond(Math.floorDiv(problem.now().getEpochSecond()
                + (problem.now().getNano() > 0 ? 1 : 0) + 59, 60L) * 60L);
        this.promisedEnd = floor(problem.promisedEnd());
        Map<ActivityId, Activity> activities = new HashMap<>();
        problem.activities().forEach(a -> activities.put(a.id(), a));
        SeatHistory history = new SeatHistory(problem, activities);
        problem.seats().stream().filter(s -> !(s.presence() instanceof Presence.Left))
                .sorted(Comparator.comparing(SeatWait::seat)).forEach(s -> histories.put(s.seat(), history.of(s)));
        this.wrapping = new WrappingTurns(this, sortTasks());
        addWindows();
        this.slots = 1 + windows.stream().mapToInt(SeatWindow::until).max().orElse(0);
        this.capacity = capacityNow();
        this.lengths = tasks.stream().map(Task::lengths).toArray(int[][]::new);
    }

    Instant instant(int slot) {
        return origin.plusSeconds(60L * slot);
    }

    /** The first slot not before an instant, 0 at least. */
    int ceil(Instant at) {
        Duration since = fromOrigin(at);
        long secondsUp = since.getSeconds() + (since.getNano() > 0 ? 1 : 0);
        return (int) Math.max(0, Math.floorDiv(secondsUp + 59, 60L));
    }

    /** The last slot not after an instant; below 0 for what has passed. */
    int floor(Instant at) {
        return (int) Math.floorDiv(fromOrigin(at).getSeconds(), 60L);
    }

    /** The slot that begins at exactly this instant, or -1. */
    int exactly(Instant at) {
        int slot = floor(at);
        return slot >= 0 && instant(slot).equals(at) ? slot : -1;
    }

    /** The places free at every task while the present occupants stay as long as expected. */
    private Capacity capacityNow() {
        return Capacity.of(tasks, slots).less(histories.values().stream().flatMap(List::stream)
                .filter(p -> p.status() == Assignment.Status.UNDER_WAY && taskOf(p.activity()) >= 0)
                .map(p -> new Booking(taskOf(p.activity()), 0, ceil(p.until()))).toList());
    }

    /** The task that clears the table, or -1. */
    int cleanUp() {
        int clean = -1;
        for (int k = 0; k < tasks.size(); k++) {
            clean = tasks.get(k).isCleanUp() ? k : clean;
        }
        return clean;
    }

    int taskOf(ActivityId id) {
        for (int k = 0; k < tasks.size(); k++) {
            if (tasks.get(k).activity().id().equals(id)) {
                return k;
            }
        }
        return -1;
    }

    /** When this seat can begin something: its hands free, and what it is in over. */
    int freeFrom(SeatWait seat) {
        int from = ceil(seat.freeFrom());
        for (Assignment part : histories.get(seat.seat())) {
            if (part.status() == Assignment.Status.UNDER_WAY) {
                from = Math.max(from, ceil(part.until()));
            }
        }
        return from;
    }

    static boolean isHere(SeatWait seat) {
        return seat.presence() instanceof Presence.Here || seat.presence() instanceof Presence.LeavingAt;
    }

    private Duration fromOrigin(Instant at) {
        Instant furthest = origin.plus(FURTHEST);
        Instant earliest = origin.minus(FURTHEST);
        return Duration.between(origin, at.isAfter(furthest) ? furthest : at.isBefore(earliest) ? earliest : at);
    }

    private Task sortTasks() {
        Task wrap = null;
        for (Activity activity : problem.activities()) {
            ActivityRun run = problem.run(activity.id());
            if (!run.offered()) {
                continue;
            }
            Task task = Task.of(activity, run, run.move().map(m -> ceil(m.to())).orElse(0));
            if (activity.isWrapping()) {
                wrap = wrap == null ? task : wrap;
            } else if (activity.audience() == Activity.Audience.OWN_PACE) {
                tasks.add(task);
            } else if (histories.values().stream().flatMap(List::stream)
                    .noneMatch(p -> p.activity().equals(activity.id())) && !run.begunBy(problem.now())) {
                classBreaks.add(task);
            }
        }
        return wrap;
    }

    private void addWindows() {
        Map<SeatNumber, Integer> turns = wrapping.turns();
        for (SeatWait seat : problem.seats().stream().sorted(Comparator.comparing(SeatWait::seat)).toList()) {
            if (isHere(seat)) {
                windows.add(window(seat, turns.getOrDefault(seat.seat(), -1)));
            }
        }
    }

    private SeatWindow window(SeatWait seat, int turn) {
        List<Assignment> history = histories.get(seat.seat());
        int from = freeFrom(seat);
        boolean wrapped = wrapping.alreadyWrapped(seat);
        int tried = wrapping.triedFrom(seat);
        boolean waits = !wrapped && !seat.handTest().passedBy(problem.now()) && ceil(seat.ready().p50()) > from;
        int until = !waits ? from : turn >= 0 ? turn : ceil(seat.ready().p50());
        int mustEndBy = Math.min(floor(seat.ready().p10()), floor(seat.mustBeBackBy()));
        until = Math.min(until, floor(seat.mustBeBackBy()));
        if (seat.presence() instanceof Presence.LeavingAt leaving) {
            until = Math.min(until, floor(leaving.at()));
            mustEndBy = Math.min(mustEndBy, floor(leaving.at()));
        }
        int[] uses = new int[tasks.size()];
        int last = -1;
        for (int k = 0; k < uses.length; k++) {
            uses[k] = tasks.get(k).uses();
        }
        for (Assignment part : history) {
            last = taskOf(part.activity());
            if (last >= 0) {
                uses[last] = Math.max(0, uses[last] - 1);
            }
        }
        until = Math.max(from, until);
        return new SeatWindow(seat.seat(), from, until, mustEndBy, turn, wrapping.mayBeCalled(seat),
                tried, tried + wrapping.finishing(seat), uses, last, told(seat, from), planned(seat, from), history);
    }

    private int[][] told(SeatWait seat, int from) {
        int[][] told = new int[tasks.size()][];
        for (int k = 0; k < told.length; k++) {
            ActivityId id = tasks.get(k).activity().id();
            told[k] = problem.announced().stream()
                    .filter(a -> a.seat().equals(seat.seat()) && a.activity().equals(id))
                    .mapToInt(a -> exactly(a.from())).filter(s -> s >= from).distinct().toArray();
        }
        return told;
    }

    private int[][] planned(SeatWait seat, int from) {
        int[][] planned = new int[tasks.size()][];
        List<Assignment> parts = problem.previous().strip(seat.seat()).map(SeatStrip::parts).orElse(List.of());
        for (int k = 0; k < planned.length; k++) {
            ActivityId id = tasks.get(k).activity().id();
            planned[k] = parts.stream().filter(p -> p.activity().equals(id))
                    .mapToInt(p -> exactly(p.from())).filter(s -> s >= from).distinct().toArray();
        }
        return planned;
    }
}

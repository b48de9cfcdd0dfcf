package benchpace.breaks.search;

import benchpace.breaks.Announced;
import benchpace.breaks.SeatWait;
import benchpace.breaks.WaitProblem;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Tries every plan of a tiny class, minute by minute, with no bound and no cleverness, and keeps the best by the
 * stated aims: class breaks placed, announcements kept, labels and clean-ups not missed, total idle minutes, most idle
 * minutes of a seat.
 * Nothing is shared with the planner but the statement of the problem.
 */
final class EveryPlan {
    /** Aims in order; less is better. */
    record Aims(int unplaced, int broken, int missed, int idle, int mostIdle) {
        boolean betterThan(Aims o) {
            if (unplaced != o.unplaced) {
                return unplaced < o.unplaced;
            }
            if (broken != o.broken) {
                return broken < o.broken;
            }
            if (missed != o.missed) {
                return missed < o.missed;
            }
            return idle != o.idle ? idle < o.idle : mostIdle < o.mostIdle;
        }
    }

    private record Strip(int[][] used, int kept, int missed, int idle) { }

    private final List<Activity> own = new ArrayList<>();
    private final List<Activity> together = new ArrayList<>();
    private final List<int[]> windows = new ArrayList<>();
    private final int end;
    private int tableClearer = -1;
    /** At most so many kept, and at least so much of the others. */
    private record Rest(int kept, int missed, int idle, int mostIdle) { }

    private Aims best = new Aims(99, 0, 0, 0, 0);
    private final WaitProblem problem;
    private int[][] taken;
    private List<List<Strip>> strips;
    private List<Rest> rests;
    private SeatWait seat;

    EveryPlan(WaitProblem problem) {
        this.problem = problem;
        Activity wrap = null;
        for (Activity a : problem.activities()) {
            if (a.kind() == ActivityKind.WRAPPING) {
                wrap = a;
            } else if (a.audience() == Activity.Audience.WHOLE_CLASS) {
                together.add(a);
            } else {
                own.add(a);
            }
        }
        for (int k = 0; k < own.size(); k++) {
            if (own.get(k).kind() == ActivityKind.CLEAN_UP) {
                tableClearer = k;
            }
        }
        TreeMap<Integer, Integer> busyWrapping = new TreeMap<>();
        List<SeatWait> byReady = problem.seats().stream().sorted(Comparator
                .comparing((SeatWait s) -> s.ready().p50()).thenComparing(SeatWait::seat)).toList();
        Map<Integer, Integer> turn = new HashMap<>();
        for (SeatWait s : byReady) {
            int t = minute(problem, s.ready().p50());
            while (wrap != null && busyWrapping.getOrDefault(t, 0) >= wrap.places()) {
                t++;
            }
            turn.put(s.seat().value(), t);
            // equal turns in order of readiness: a place free at t stays free for the whole turn
            for (int u = t; wrap != null && u < t + wrap.typical().toMinutes(); u++) {
                busyWrapping.merge(u, 1, Integer::sum);
            }
        }
        int last = 0;
        for (SeatWait s : problem.seats()) {
            int until = turn.get(s.seat().value());
            windows.add(new int[] {minute(problem, s.freeFrom()), until, minute(problem, s.ready().p10())});
            last = Math.max(last, until);
        }
        end = last;
    }

    private static int minute(WaitProblem problem, Instant at) {
        return (int) Duration.between(problem.now(), at).toMinutes();
    }

    Aims best() {
        boolean placed = false;
        for (int start = 0; !together.isEmpty() && start < end; start++) {
            if (everybodyCan(together.get(0), start)) {
                placed = true;
                tryWith(start, (int) together.get(0).typical().toMinutes(), 0);
            }
        }
        if (!placed) {
            tryWith(0, 0, together.size());
        }
        return best;
    }

    private boolean everybodyCan(Activity a, int start) {
        int longest = a.interruptible() ? 0 : (int) a.longest().toMinutes();
        return windows.stream().allMatch(w -> start >= w[0] && start + a.typical().toMinutes() <= w[1]
                && (longest == 0 || start + longest <= w[2]));
    }

    private void tryWith(int breakFrom, int breakLength, int unplaced) {
        strips = new ArrayList<>();
        for (int i = 0; i < windows.size(); i++) {
            int[] w = windows.get(i);
            seat = problem.seats().get(i);
            Map<String, Strip> found = new HashMap<>();
            grow(w, w[0], -1, new int[own.size()], new int[own.size()][end], breakFrom, breakFrom + breakLength, 0, 0,
                    found);
            strips.add(found.values().stream().sorted(Comparator.comparingInt(Strip::missed)
                    .thenComparingInt(Strip::idle)).toList());
        }
        taken = new int[own.size()][end];
        rests = rests(strips);
        combine(0, unplaced, problem.announced().size(), 0, 0, 0);
    }

    private void grow(int[] w, int t, int last, int[] times, int[][] used, int breakFrom, int breakUntil, int kept,
                      int idle, Map<String, Strip> found) {
        if (t >= w[1]) {
            int missed = 0;
            for (int k = 0; k < own.size(); k++) {
                boolean wanted = own.get(k).kind() == ActivityKind.LABELS
                        || own.get(k).kind() == ActivityKind.CLEAN_UP;
                missed += wanted && times[k] == 0 ? 1 : 0;
            }
            int[][] copy = new int[used.length][];
            for (int k = 0; k < used.length; k++) {
                copy[k] = used[k].clone();
            }
            found.put(Arrays.deepToString(copy) + missed + "/" + idle + "/" + kept,
                    new Strip(copy, kept, missed, idle));
            return;
        }
        if (t >= breakFrom && t < breakUntil) {
            grow(w, t + 1, last, times, used, breakFrom, breakUntil, kept, idle, found);
            return;
        }
        grow(w, t + 1, last, times, used, breakFrom, breakUntil, kept, idle + 1, found);
        for (int k = 0; k < own.size(); k++) {
            Activity a = own.get(k);
            int most = a.kind().onceOnly() ? 1 : 2;
            boolean clear = tableClearer < 0 || k == tableClearer || times[tableClearer] > 0;
            if (times[k] >= most || last == k || a.needs().contains(Activity.Need.TABLE_CLEAR) && !clear
                    || !a.interruptible() && t + a.longest().toMinutes() > w[2]) {
                continue;
            }
            int typical = (int) a.typical().toMinutes();
            int least = a.interruptible() && !a.kind().onceOnly() ? (typical + 1) / 2 : typical;
            for (int length = least; length <= typical; length++) {
                boolean meetsBreak = t < breakUntil && breakFrom < t + length && breakUntil > breakFrom;
                if (t + length > w[1] || meetsBreak) {
                    continue;
                }
                times[k]++;
                Arrays.fill(used[k], t, t + length, 1);
                int more = announced(k, t) ? 1 : 0;
                grow(w, t + length, k, times, used, breakFrom, breakUntil, kept + more, idle, found);
                Arrays.fill(used[k], t, t + length, 0);
                times[k]--;
            }
        }
    }

    private boolean announced(int k, int minute) {
        return problem.announced().contains(new Announced(seat.seat(), own.get(k).id(),
                problem.now().plusSeconds(60L * minute)));
    }

    private void combine(int seat, int unplaced, int broken, int missed, int idle, int mostIdle) {
        if (seat == strips.size()) {
            Aims aims = new Aims(unplaced, broken, missed, idle, mostIdle);
            best = aims.betterThan(best) ? aims : best;
            return;
        }
        for (Strip strip : strips.get(seat)) {
            if (!atLeast(seat + 1, unplaced, broken - strip.kept(), missed + strip.missed(), idle + strip.idle(),
                    Math.max(mostIdle, strip.idle())).betterThan(best)) {
                continue;
            }
            if (add(strip, 1)) {
                combine(seat + 1, unplaced, broken - strip.kept(), missed + strip.missed(), idle + strip.idle(),
                        Math.max(mostIdle, strip.idle()));
            }
            add(strip, -1);
        }
    }

    /** What no plan that goes on so falls below, each aim by itself: where that is no better it need not go on. */
    private Aims atLeast(int next, int unplaced, int broken, int missed, int idle, int mostIdle) {
        Rest rest = rests.get(next);
        return new Aims(unplaced, broken - rest.kept(), missed + rest.missed(), idle + rest.idle(),
                Math.max(mostIdle, rest.mostIdle()));
    }

    /** Before each seat, and after the last, what those to come give at best. */
    private static List<Rest> rests(List<List<Strip>> strips) {
        List<Rest> rests = new ArrayList<>(List.of(new Rest(0, 0, 0, 0)));
        for (int i = strips.size() - 1; i >= 0; i--) {
            List<Strip> own = strips.get(i);
            Rest after = rests.get(0);
            int least = own.stream().mapToInt(Strip::idle).min().orElse(0);
            rests.add(0, new Rest(after.kept() + own.stream().mapToInt(Strip::kept).max().orElse(0),
                    after.missed() + own.stream().mapToInt(Strip::missed).min().orElse(0), after.idle() + least,
                    Math.max(after.mostIdle(), least)));
        }
        return rests;
    }

    private boolean add(Strip strip, int sign) {
        boolean fits = true;
        for (int k = 0; k < taken.length; k++) {
            for (int t = 0; t < end; t++) {
                taken[k][t] += sign * strip.used()[k][t];
                fits &= taken[k][t] <= own.get(k).places();
            }
        }
        return fits;
    }
}

package benchpace.breaks.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The best strip of one seat alone, given the capacity that is left, by dynamic programming over {@link StripState};
 * of what may be cut short three lengths are weighed.
 *
 * <p>Of all slots in which a booking of a given length could begin, only the first possible one matters, besides those
 * that were announced or planned before: moving a booking to an earlier possible slot covers the same minutes and takes
 * nothing from what follows. So a state leads to few others.
 *
 * <p>The states grow with two to the power of what may be done once. Of a plan with more activities than a wait has
 * room for not all are gone through: after {@value #MOST_WORK} transitions each state that is still open takes the
 * first way on that is better than stopping.
 */
final class StripSearch {
    /** Three times what most takes in evenings with seven activities (1,078 in 480 random classes; counted). */
    static final long MOST_WORK = 3_000;

    private final List<Task> tasks;
    private final SeatWindow window;
    private final StripRules rules;
    private final SearchWork work;
    private final int[][] run;
    private final int[][] lengths;
    private final int[][][] firstFit;
    private final int[] lastStart;
    private final long[] leastAfter;
    private final int[] uncoverable;
    private final long[] kept;
    private final Map<StripState, Way> known = new HashMap<>();

    StripSearch(Timeline line, SeatWindow window, Capacity left, boolean[] blocked, SearchWork work) {
        this.tasks = line.tasks;
        this.window = window;
        this.rules = new StripRules(line, window, blocked);
        this.work = work;
        this.run = new int[tasks.size()][line.slots + 1];
        this.lastStart = new int[tasks.size()];
        this.uncoverable = new int[line.slots + 1];
        this.kept = new long[line.slots + 1];
        this.leastAfter = new long[line.slots + 1];
        for (int k = 0; k < run.length; k++) {
            for (int t = window.until() - 1; t >= window.from(); t--) {
                run[k][t] = blocked[t] || !left.free(k, t) ? 0 : run[k][t + 1] + 1;
            }
        }
        this.lengths = line.lengths;
        this.firstFit = IntStream.range(0, run.length).mapToObj(this::firstFits).toArray(int[][][]::new);
        prepareBounds();
        work.add(line.slots);
    }

    /** By length and slot, the first slot from there on in which a task may begin, or -1. */
    private int[][] firstFits(int k) {
        Task task = tasks.get(k);
        int[][] first = new int[lengths[k].length][run[k].length];
        for (int n = 0; n < first.length; n++) {
            int next = -1;
            for (int t = window.until(); t >= window.from(); t--) {
                boolean fits = run[k][t] >= lengths[k][n] && t >= task.notBefore() && t <= rules.latestStart(task);
                next = fits ? t : next;
                first[n][t] = next;
            }
        }
        return first;
    }

    private void prepareBounds() {
        Arrays.fill(lastStart, -1);
        for (int t = window.until() - 1; t >= window.from(); t--) {
            int least = uncoverable[t + 1] + rules.idle(t, t + 1);
            kept[t] = kept[t + 1];
            for (int k = 0; k < run.length; k++) {
                kept[t] -= window.isTold(k, t) ? Cost.BROKEN_ANNOUNCEMENT : 0;
                Task task = tasks.get(k);
                if (t < task.notBefore() || run[k][t] < task.shortest() || t > rules.latestStart(task)) {
                    continue;
                }
                lastStart[k] = Math.max(lastStart[k], t);
                int longest = Math.min(task.length(), run[k][t]);
                for (int length = task.shortest(); length <= longest; length++) {
                    least = Math.min(least, uncoverable[t + length]);
                }
            }
            uncoverable[t] = least;
            leastAfter[t] = Cost.IDLE_MINUTE * least + kept[t];
        }
    }

    /** What to do next in a state, if anything, and the cost of the rest then. */
    private record Way(long cost, Optional<Booking> next) { }

    /** The seat's best strip. */
    Strip best() {
        long stopAt = work.done() + MOST_WORK;
        List<Booking> bookings = new ArrayList<>();
        StripState state = StripState.first(window);
        long cost = Cost.BROKEN_ANNOUNCEMENT * window.toldCount() + from(state, stopAt).cost();
        for (Way way = from(state, stopAt); way.next().isPresent(); way = from(state, stopAt)) {
            bookings.add(way.next().get());
            state = state.after(way.next().get());
        }
        return new Strip(cost, bookings);
    }

    /** The best that may follow a state. */
    private Way from(StripState state, long stopAt) {
        Way before = known.get(state);
        if (before != null) {
            return before;
        }
        Way best = new Way(rules.costOfStopping(state), Optional.empty());
        long goodEnough = leastFrom(state) + Cost.IDLE_MINUTE;
        List<Booking> ways = best.cost() < goodEnough ? List.of() : waysOn(state);
        for (Booking next : ways) {
            if (best.cost() < goodEnough || best.next().isPresent() && work.done() > stopAt) {
                break;
            }
            long spent = rules.cost(state.at(), next);
            StripState after = state.after(next);
            if (spent + leastAfter[next.until()] < best.cost() && spent + leastFrom(after) < best.cost()) {
                work.add(1);
                long through = spent + from(after, stopAt).cost();
                best = through < best.cost() ? new Way(through, Optional.of(next)) : best;
            }
        }
        known.put(state, best);
        return best;
    }

    /**
     * A bound from below for {@link #from}: minutes no task could cover even if all could be repeated, or that
     * all remaining tasks together are too short for; expected tasks it is too late for; every announcement kept.
     */
    private long leastFrom(StripState state) {
        int uncovered = rules.idle(state.at(), window.until());
        long missed = 0;
        for (int k = 0; k < run.length; k++) {
            int uses = state.uses(k);
            if (uses > 0 && lastStart[k] >= state.at()) {
                uncovered -= uses * tasks.get(k).length();
            } else if (uses > 0 && tasks.get(k).expected()) {
                missed += Cost.MISSED;
            }
        }
        return Cost.IDLE_MINUTE * Math.max(uncovered, uncoverable[state.at()]) + missed + kept[state.at()];
    }

    /** What may come next: what was told or planned before, and then the earliest of each task and length. */
    private List<Booking> waysOn(StripState state) {
        List<Booking> ways = new ArrayList<>();
        for (int k = 0; k < run.length; k++) {
            if (rules.mayFollow(state, k)) {
                addKept(window.told()[k], k, state.at(), ways);
                addKept(window.before()[k], k, state.at(), ways);
            }
        }
        for (int k = 0; k < run.length; k++) {
            for (int n = 0; n < lengths[k].length && rules.mayFollow(state, k); n++) {
                int start = firstFit[k][n][state.at()];
                if (start >= 0) {
                    ways.add(Booking.of(k, start, lengths[k][n]));
                }
            }
        }
        return ways;
    }

    private void addKept(int[] slots, int k, int at, List<Booking> ways) {
        for (int slot : slots) {
            for (int length : lengths[k]) {
                Booking kept = Booking.of(k, slot, length);
                if (slot >= at && rules.allows(kept) && run[k][slot] >= length) {
                    ways.add(kept);
                }
            }
        }
    }
}

package benchpace.breaks;

import java.util.Arrays;

/**
 * The best strip of one seat alone, given the places that are left: exact, by dynamic programming over (end of the
 * last part, what may still be done, last task).
 *
 * <p>Of all slots in which a part of a given length could begin, only the first possible one matters, besides those
 * that were announced or planned before: moving a part to an earlier possible slot covers the same minutes and takes
 * nothing from what follows. So a state leads to few others.
 *
 * <p>The states grow with two to the power of what may be done once. Of a plan with more activities than a wait has
 * room for not all are gone through: after {@value #MOST_WORK} transitions each state that is still open takes the
 * first way on that is better than stopping, and the search is not exact any more ({@link #cutShort}).
 */
final class StripSearch {
    /** Three times what an evening with seven activities and forty seats takes (2,206; counted). */
    static final long MOST_WORK = 7_000;
    private static final long NONE = Long.MIN_VALUE;

    private final Timeline line;
    private final boolean everyLength;
    private final int cleanUp;
    private final int[] fullLength;
    private final int[] shortest;
    private final int[] mustHave;
    private final int[] notBefore;
    private final boolean[] needsClear;
    private final boolean[] expected;
    private final int[][] run;
    private final int[] openBefore;
    private final int[] lastStart;
    private final int[] uncoverable;
    private final long[] reward;
    private long[] keys = new long[1 << 10];
    private long[] costs = new long[1 << 10];
    private int[] choices = new int[1 << 10];
    private int filled;
    private long bestCost;
    private int bestChoice;
    private SeatWindow window;
    private long floor;
    private long stopAt;
    private boolean cutShort;

    /** The work done so far, in transitions weighed or as costly; the core has no clock to limit it by. */
    long work;

    /** A search that weighs every length a part may have. */
    StripSearch(Timeline line) {
        this(line, true);
    }

    /** @param everyLength false to weigh only three lengths of what may be cut short; quicker, and not exact */
    StripSearch(Timeline line, boolean everyLength) {
        this.line = line;
        this.everyLength = everyLength;
        this.fullLength = line.tasks.stream().mapToInt(Task::length).toArray();
        this.shortest = line.tasks.stream().mapToInt(Task::shortest).toArray();
        this.mustHave = line.tasks.stream().mapToInt(Task::mustHave).toArray();
        this.notBefore = line.tasks.stream().mapToInt(Task::notBefore).toArray();
        this.needsClear = new boolean[fullLength.length];
        this.expected = new boolean[fullLength.length];
        this.run = new int[line.tasks.size()][line.slots + 1];
        this.openBefore = new int[line.slots + 1];
        this.uncoverable = new int[line.slots + 1];
        this.reward = new long[line.slots + 1];
        this.lastStart = new int[line.tasks.size()];
        int clean = -1;
        for (int k = 0; k < line.tasks.size(); k++) {
            needsClear[k] = line.tasks.get(k).needsClearTable();
            expected[k] = line.tasks.get(k).expected();
            clean = line.tasks.get(k).isCleanUp() ? k : clean;
        }
        this.cleanUp = clean;
        Arrays.fill(keys, NONE);
    }

    /** Takes up a seat; {@code blocked[t]} says that a class break holds it in slot t. */
    void begin(SeatWindow seat, Capacity left, boolean[] blocked) {
        window = seat;
        Arrays.fill(keys, NONE);
        filled = 0;
        work += line.slots;
        openBefore[0] = 0;
        for (int t = 0; t < line.slots; t++) {
            openBefore[t + 1] = openBefore[t] + (blocked[t] ? 0 : 1);
        }
        for (int k = 0; k < run.length; k++) {
            Arrays.fill(run[k], 0);
            for (int t = window.until() - 1; t >= window.from(); t--) {
                run[k][t] = blocked[t] || !left.free(k, t) ? 0 : run[k][t + 1] + 1;
            }
        }
        prepareBounds();
    }

    private void prepareBounds() {
        Arrays.fill(lastStart, -1);
        uncoverable[window.until()] = 0;
        reward[window.until()] = 0;
        for (int t = window.until() - 1; t >= window.from(); t--) {
            int least = uncoverable[t + 1] + idle(t, t + 1);
            reward[t] = reward[t + 1];
            for (int k = 0; k < run.length; k++) {
                reward[t] -= window.isTold(k, t) ? Cost.BROKEN_ANNOUNCEMENT : 0;
                if (!fits(k, t, shortest[k])) {
                    continue;
                }
                lastStart[k] = Math.max(lastStart[k], t);
                int longest = Math.min(fullLength[k], run[k][t]);
                for (int length = shortest[k]; length <= longest; length++) {
                    least = Math.min(least, uncoverable[t + length]);
                }
            }
            uncoverable[t] = least;
        }
    }

    /** Whether any search so far left something out for want of work, so that its best need not be the best. */
    boolean cutShort() {
        return cutShort;
    }

    /** The cost of the seat's best strip. */
    long best() {
        return Cost.BROKEN_ANNOUNCEMENT * window.toldCount() + bestFrom(window.from(), firstState());
    }

    /** The best strip, as packed parts in order. */
    int[] bestStrip() {
        int[] parts = new int[64];
        int count = 0;
        int t = window.from();
        long state = firstState();
        bestFrom(t, state);
        for (int part = choice(t, state); part >= 0; part = choice(t, state)) {
            parts[count++] = part;
            state = after(state, Booking.task(part));
            t = Booking.until(part);
        }
        return Arrays.copyOf(parts, count);
    }

    /** What a given strip of the seat costs, whoever made it. */
    long cost(int[] strip) {
        long cost = Cost.BROKEN_ANNOUNCEMENT * window.toldCount();
        int t = window.from();
        long state = firstState();
        for (int part : strip) {
            cost += Cost.IDLE_MINUTE * idle(t, Booking.from(part)) + startCost(Booking.task(part), Booking.from(part));
            state = after(state, Booking.task(part));
            t = Booking.until(part);
        }
        return cost + costOfStopping(t, state);
    }

    long firstState() {
        long state = window.last() + 1;
        for (int k = 0; k < run.length; k++) {
            state |= (long) window.uses()[k] << 5 + 2 * k;
        }
        return state;
    }

    static long after(long state, int task) {
        return (state & ~31L) - (1L << 5 + 2 * task) | task + 1;
    }

    /** Whether the rules of order let a seat in this state begin a task: uses left, table clear, not twice in a row. */
    boolean mayBegin(long state, int task) {
        if ((state >>> 5 + 2 * task & 3) == 0 || (state & 31) == task + 1) {
            return false;
        }
        return !needsClear[task] || cleanUp < 0 || cleanUp == task
                || (state >>> 5 + 2 * cleanUp & 3) == 0;
    }

    /** Whether places, class breaks, opening and the candle let a part be there. */
    boolean fits(int task, int start, int length) {
        return start >= window.from() && start >= notBefore[task] && start + length <= window.until()
                && run[task][start] >= length
                && (mustHave[task] == 0 || start + mustHave[task] <= window.mustEndBy());
    }

    int idle(int from, int until) {
        return openBefore[until] - openBefore[from];
    }

    long startCost(int task, int start) {
        return window.isTold(task, start) ? -Cost.BROKEN_ANNOUNCEMENT : window.wasPlanned(task, start) ? 0 : Cost.NEW_PART;
    }

    /** What stopping here costs: the rest of the wait idle, and whatever is expected of everybody and not done. */
    long costOfStopping(int t, long state) {
        long cost = Cost.IDLE_MINUTE * idle(t, window.until());
        for (int k = 0; k < run.length; k++) {
            if (expected[k] && (state >>> 5 + 2 * k & 3) != 0) {
                cost += Cost.MISSED;
            }
        }
        return cost;
    }

    /** The least further cost from the end of a part on. */
    long bestFrom(int t, long state) {
        stopAt = work + MOST_WORK;
        return explored(t, state);
    }

    private long explored(int t, long state) {
        long key = state << 10 | t;
        int at = find(key);
        if (keys[at] == key) {
            return costs[at];
        }
        long outerFloor = floor;
        floor = leastFrom(t, state) + Cost.IDLE_MINUTE;
        bestCost = costOfStopping(t, state);
        bestChoice = -1;
        for (int pass = 0; pass < 2; pass++) {
            for (int k = 0; k < run.length && bestCost >= floor && !enough(); k++) {
                if (mayBegin(state, k)) {
                    weigh(t, k, after(state, k), pass == 0);
                }
            }
        }
        long best = bestCost;
        floor = outerFloor;
        remember(key, best, bestChoice);
        return best;
    }

    /**
     * A bound from below for {@link #bestFrom}: minutes no task could cover even if all could be repeated, or that
     * all remaining tasks together are too short for; expected tasks it is too late for; every announcement kept.
     */
    private long leastFrom(int t, long state) {
        int uncovered = idle(t, window.until());
        long missed = 0;
        for (int k = 0; k < run.length; k++) {
            int uses = (int) (state >>> 5 + 2 * k & 3);
            if (uses > 0 && lastStart[k] >= t) {
                uncovered -= uses * fullLength[k];
            } else if (uses > 0 && expected[k]) {
                missed += Cost.MISSED;
            }
        }
        return Cost.IDLE_MINUTE * Math.max(uncovered, uncoverable[t]) + missed + reward[t];
    }

    /** Weighs ways of going on with one task: those that were told or planned before, or all others. */
    private void weigh(int t, int task, long next, boolean kept) {
        for (int length = fullLength[task]; length >= shortest[task]; length = shorter(task, length)) {
            if (kept) {
                weighKept(window.told()[task], t, task, length, next);
                weighKept(window.before()[task], t, task, length, next);
            } else {
                int start = firstFit(task, t, length);
                if (start >= 0) {
                    weigh(t, task, start, length, next);
                }
            }
            if (bestCost < floor || enough()) {
                return;
            }
        }
    }

    /** The work is spent, and there is a way on. */
    private boolean enough() {
        boolean enough = bestChoice >= 0 && work > stopAt;
        cutShort |= enough;
        return enough;
    }

    private int shorter(int task, int length) {
        return everyLength || length == shortest[task] ? length - 1
                : Math.max(shortest[task], length - (fullLength[task] - shortest[task] + 1) / 2);
    }

    private void weighKept(int[] kept, int t, int task, int length, long next) {
        for (int slot : kept) {
            if (slot >= t && fits(task, slot, length)) {
                weigh(t, task, slot, length, next);
            }
        }
    }

    private void weigh(int t, int task, int start, int length, long next) {
        long spent = Cost.IDLE_MINUTE * idle(t, start) + startCost(task, start);
        if (spent + Cost.IDLE_MINUTE * uncoverable[start + length] + reward[start + length] >= bestCost) {
            return;
        }
        work++;
        long cost = bestCost;
        int choice = bestChoice;
        long through = spent + explored(start + length, next);
        bestCost = Math.min(cost, through);
        bestChoice = through < cost ? Booking.of(task, start, start + length) : choice;
    }

    private int firstFit(int task, int t, int length) {
        int start = Math.max(t, notBefore[task]);
        int latest = window.until() - length;
        if (mustHave[task] > 0) {
            latest = Math.min(latest, window.mustEndBy() - mustHave[task]);
        }
        int[] free = run[task];
        while (start <= latest) {
            if (free[start] >= length) {
                return start;
            }
            start += free[start] + 1;
        }
        return -1;
    }

    private int choice(int t, long state) {
        return choices[find(state << 10 | t)];
    }

    private int find(long key) {
        int mask = keys.length - 1;
        long mixed = key * 0x9E3779B97F4A7C15L;
        int at = (int) (mixed >>> 40) & mask;
        while (keys[at] != NONE && keys[at] != key) {
            at = at + 1 & mask;
        }
        return at;
    }

    private void remember(long key, long cost, int choice) {
        if (2 * filled > keys.length) {
            grow();
        }
        int at = find(key);
        keys[at] = key;
        costs[at] = cost;
        choices[at] = choice;
        filled++;
    }

    private void grow() {
        long[] oldKeys = keys;
        long[] oldCosts = costs;
        int[] oldChoices = choices;
        keys = new long[2 * oldKeys.length];
        Arrays.fill(keys, NONE);
        costs = new long[keys.length];
        choices = new int[keys.length];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != NONE) {
                int at = find(oldKeys[i]);
                keys[at] = oldKeys[i];
                costs[at] = oldCosts[i];
                choices[at] = oldChoices[i];
            }
        }
    }
}

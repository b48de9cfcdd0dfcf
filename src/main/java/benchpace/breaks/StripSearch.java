package benchpace.breaks;

import java.util.Arrays;

/**
 * The best strip of one seat alone, given the places that are left: exact, by dynamic programming over (end of the
 * last part, what may still be done, last task).
 *
 * <p>Of all slots in which a part of a given length could begin, only the first possible one matters, besides those
 * that were announced or planned before: moving a part to an earlier possible slot covers the same minutes and takes
 * nothing from what follows. So a state leads to few others.
 */
final class StripSearch {
    private static final long NONE = Long.MIN_VALUE;

    private final Timeline line;
    private final int cleanUp;
    private final int[][] run;
    private final int[] openBefore;
    private long[] keys = new long[1 << 10];
    private long[] costs = new long[1 << 10];
    private int[] choices = new int[1 << 10];
    private int filled;
    private Lane lane;
    private Places places;

    /** Transitions weighed so far: the work done, as the core has no clock to limit it by. */
    long work;

    StripSearch(Timeline line) {
        this.line = line;
        this.run = new int[line.tasks.size()][line.slots + 1];
        this.openBefore = new int[line.slots + 1];
        int clean = -1;
        for (int k = 0; k < line.tasks.size(); k++) {
            if (line.tasks.get(k).isCleanUp()) {
                clean = k;
            }
        }
        this.cleanUp = clean;
        Arrays.fill(keys, NONE);
    }

    /** Takes up a seat; {@code blocked[t]} says that a class break holds it in slot t. */
    void begin(Lane seat, Places left, boolean[] blocked) {
        lane = seat;
        places = left;
        Arrays.fill(keys, NONE);
        filled = 0;
        openBefore[0] = 0;
        for (int t = 0; t < line.slots; t++) {
            openBefore[t + 1] = openBefore[t] + (blocked[t] ? 0 : 1);
        }
        for (int k = 0; k < run.length; k++) {
            Arrays.fill(run[k], 0);
            for (int t = lane.until() - 1; t >= lane.from(); t--) {
                run[k][t] = blocked[t] || !places.free(k, t) ? 0 : run[k][t + 1] + 1;
            }
        }
    }

    /** The cost of the seat's best strip. */
    long best() {
        return Cost.BROKEN_WORD * lane.toldCount() + bestFrom(lane.from(), firstState());
    }

    /** The best strip, as packed parts in order. */
    int[] bestStrip() {
        int[] parts = new int[64];
        int count = 0;
        int t = lane.from();
        long state = firstState();
        bestFrom(t, state);
        for (int part = choice(t, state); part >= 0; part = choice(t, state)) {
            parts[count++] = part;
            state = after(state, Part.task(part));
            t = Part.until(part);
        }
        return Arrays.copyOf(parts, count);
    }

    long firstState() {
        long state = lane.last() + 1;
        for (int k = 0; k < run.length; k++) {
            state |= (long) lane.uses()[k] << 5 + 2 * k;
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
        return !line.tasks.get(task).needsClearTable() || cleanUp < 0 || cleanUp == task
                || (state >>> 5 + 2 * cleanUp & 3) == 0;
    }

    /** Whether places, class breaks, opening and the candle let a part be there. */
    boolean fits(int task, int start, int length) {
        Task t = line.tasks.get(task);
        return start >= lane.from() && start >= t.notBefore() && start + length <= lane.until()
                && run[task][start] >= length && (t.mustHave() == 0 || start + t.mustHave() <= lane.mustEndBy());
    }

    int idle(int from, int until) {
        return openBefore[until] - openBefore[from];
    }

    long startCost(int task, int start) {
        return lane.isTold(task, start) ? -Cost.BROKEN_WORD : lane.wasPlanned(task, start) ? 0 : Cost.NEW_PART;
    }

    /** What stopping here costs: the rest of the wait idle, and whatever is expected of everybody and not done. */
    long costOfStopping(int t, long state) {
        long cost = Cost.IDLE_MINUTE * idle(t, lane.until());
        for (int k = 0; k < run.length; k++) {
            if (line.tasks.get(k).expected() && (state >>> 5 + 2 * k & 3) != 0) {
                cost += Cost.MISSED;
            }
        }
        return cost;
    }

    /** The least further cost from the end of a part on. */
    long bestFrom(int t, long state) {
        long key = state << 10 | t;
        int at = find(key);
        if (keys[at] == key) {
            return costs[at];
        }
        long best = costOfStopping(t, state);
        int choice = -1;
        for (int k = 0; k < run.length; k++) {
            if (!mayBegin(state, k)) {
                continue;
            }
            Task task = line.tasks.get(k);
            long next = after(state, k);
            for (int length = task.length(); length >= task.shortest(); length--) {
                int start = firstFit(k, t, length);
                long cost = start < 0 ? Long.MAX_VALUE : through(t, k, start, length, next);
                if (cost < best) {
                    best = cost;
                    choice = Part.of(k, start, start + length);
                }
                for (int[] kept : new int[][] {lane.told()[k], lane.before()[k]}) {
                    for (int slot : kept) {
                        if (slot >= t && slot != start && fits(k, slot, length)) {
                            cost = through(t, k, slot, length, next);
                            if (cost < best) {
                                best = cost;
                                choice = Part.of(k, slot, slot + length);
                            }
                        }
                    }
                }
            }
        }
        remember(key, best, choice);
        return best;
    }

    private long through(int t, int task, int start, int length, long next) {
        work++;
        return Cost.IDLE_MINUTE * idle(t, start) + startCost(task, start) + bestFrom(start + length, next);
    }

    private int firstFit(int task, int t, int length) {
        Task what = line.tasks.get(task);
        int start = Math.max(t, what.notBefore());
        int latest = lane.until() - length;
        if (what.mustHave() > 0) {
            latest = Math.min(latest, lane.mustEndBy() - what.mustHave());
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

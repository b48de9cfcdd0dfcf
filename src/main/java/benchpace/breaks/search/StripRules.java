package benchpace.breaks.search;

import java.util.List;

/** What one seat may do when, and what it costs, the places apart. */
final class StripRules {
    private final List<Task> tasks;
    private final SeatWindow window;
    private final int cleanUp;
    private final boolean[] needsClear;
    private final int[] openBefore;

    /** @param blocked by slot, whether a class break or the hand test holds the seat */
    StripRules(Timeline line, SeatWindow window, boolean[] blocked) {
        this.tasks = line.tasks;
        this.window = window;
        this.cleanUp = line.cleanUp();
        this.needsClear = new boolean[tasks.size()];
        for (int k = 0; k < needsClear.length; k++) {
            needsClear[k] = cleanUp >= 0 && cleanUp != k && tasks.get(k).needsClearTable();
        }
        this.openBefore = new int[line.slots + 1];
        for (int t = 0; t < line.slots; t++) {
            openBefore[t + 1] = openBefore[t] + (blocked[t] ? 0 : 1);
        }
    }

    /** Whether the order of things lets a task come next: uses left, table clear, not twice in a row. */
    boolean mayFollow(StripState state, int task) {
        return state.uses(task) > 0 && state.last() != task && (!needsClear[task] || state.uses(cleanUp) == 0);
    }

    /** Whether class breaks, opening and the candle let a booking be there. */
    boolean allows(Booking booking) {
        Task task = tasks.get(booking.task());
        return booking.from() >= Math.max(window.from(), task.notBefore()) && booking.until() <= window.until()
                && booking.from() <= latestStart(task)
                && idle(booking.from(), booking.until()) == booking.until() - booking.from();
    }

    /** The last slot in which what cannot be interrupted may begin. */
    int latestStart(Task task) {
        return task.mustHave() == 0 ? window.until() : window.mustEndBy() - task.mustHave();
    }

    /** The minutes between two slots that no class break or hand test fills. */
    int idle(int from, int until) {
        return openBefore[until] - openBefore[from];
    }

    /** What the way from the end of the last booking to the end of this one costs. */
    long cost(int at, Booking next) {
        long start = window.isTold(next.task(), next.from()) ? -Cost.BROKEN_ANNOUNCEMENT
                : window.wasPlanned(next.task(), next.from()) ? 0 : Cost.NEW_PART;
        return Cost.IDLE_MINUTE * idle(at, next.from()) + start;
    }

    /** What stopping here costs: the rest of the wait idle, and whatever is expected of everybody and not done. */
    long costOfStopping(StripState state) {
        long cost = Cost.IDLE_MINUTE * idle(state.at(), window.until());
        for (int k = 0; k < tasks.size(); k++) {
            cost += tasks.get(k).expected() && state.uses(k) != 0 ? Cost.MISSED : 0;
        }
        return cost;
    }

    /** A strip of these bookings, whoever made them. */
    Strip strip(List<Booking> bookings) {
        long cost = Cost.BROKEN_ANNOUNCEMENT * window.toldCount();
        StripState state = StripState.first(window);
        for (Booking next : bookings) {
            cost += cost(state.at(), next);
            state = state.after(next);
        }
        return new Strip(cost + costOfStopping(state), bookings);
    }
}

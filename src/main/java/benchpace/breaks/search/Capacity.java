package benchpace.breaks.search;

import java.util.Arrays;
import java.util.List;

/** How many places of each task are free in each slot. */
final class Capacity {
    private final int[][] free;

    private Capacity(int[][] free) {
        this.free = free;
    }

    /** Every place of every task free. */
    static Capacity of(List<Task> tasks, int slots) {
        int[][] free = new int[tasks.size()][slots];
        for (int k = 0; k < free.length; k++) {
            Arrays.fill(free[k], tasks.get(k).places());
        }
        return new Capacity(free);
    }

    boolean free(int task, int slot) {
        return free[task][slot] > 0;
    }

    /** Whether a place is free all the time; beyond the timeline nobody takes one. */
    boolean free(Booking booking) {
        for (int t = booking.from(); t < Math.min(booking.until(), free[booking.task()].length); t++) {
            if (free[booking.task()][t] <= 0) {
                return false;
            }
        }
        return true;
    }

    /** What is left when these are taken, as far as the timeline reaches. */
    Capacity less(List<Booking> taken) {
        return changed(taken, -1);
    }

    /** What is left when these are given back. */
    Capacity more(List<Booking> given) {
        return changed(given, 1);
    }

    private Capacity changed(List<Booking> bookings, int places) {
        int[][] changed = new int[free.length][];
        for (int k = 0; k < free.length; k++) {
            changed[k] = free[k].clone();
        }
        for (Booking booking : bookings) {
            int[] row = changed[booking.task()];
            int until = Math.min(booking.until(), row.length);
            for (int t = booking.from(); t < until; t++) {
                row[t] += places;
            }
        }
        return new Capacity(changed);
    }
}

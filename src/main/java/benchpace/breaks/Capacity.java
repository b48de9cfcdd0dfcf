package benchpace.breaks;

/** How many places of each task are free in each slot. */
final class Capacity {
    private final int[][] free;

    private Capacity(int[][] free) {
        this.free = free;
    }

    static Capacity of(int tasks, int slots) {
        return new Capacity(new int[tasks][slots]);
    }

    Capacity copy() {
        int[][] copy = new int[free.length][];
        for (int k = 0; k < free.length; k++) {
            copy[k] = free[k].clone();
        }
        return new Capacity(copy);
    }

    boolean free(int task, int slot) {
        return free[task][slot] > 0;
    }

    /** Whether a place is free all the time; beyond the timeline nobody takes one. */
    boolean free(int task, int from, int until) {
        for (int t = from; t < Math.min(until, free[task].length); t++) {
            if (free[task][t] <= 0) {
                return false;
            }
        }
        return true;
    }

    /** Adds places (negative: takes them) from a slot up to another, as far as the timeline reaches. */
    void add(int task, int from, int until, int places) {
        for (int t = Math.max(0, from); t < Math.min(until, free[task].length); t++) {
            free[task][t] += places;
        }
    }

    void take(int[] strip) {
        for (int part : strip) {
            add(Booking.task(part), Booking.from(part), Booking.until(part), -1);
        }
    }

    void giveBack(int[] strip) {
        for (int part : strip) {
            add(Booking.task(part), Booking.from(part), Booking.until(part), 1);
        }
    }
}

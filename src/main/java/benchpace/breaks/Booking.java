package benchpace.breaks;

/** A planned part packed into an int, as the search makes and drops millions of them: task, first slot, end slot. */
final class Booking {
    /** The longest timeline that fits: slots 0 to 1023. */
    static final int MOST_SLOTS = 1 << 10;

    private Booking() { }

    static int of(int task, int from, int until) {
        return task << 20 | from << 10 | until;
    }

    static int task(int part) {
        return part >>> 20;
    }

    static int from(int part) {
        return part >>> 10 & MOST_SLOTS - 1;
    }

    static int until(int part) {
        return part & MOST_SLOTS - 1;
    }
}

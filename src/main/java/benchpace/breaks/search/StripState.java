package benchpace.breaks.search;

/**
 * How far a seat's strip has come: all that the rest of it depends on.
 *
 * @param at       the end of the last booking
 * @param last     the task done last, or -1
 * @param usesLeft how often each task may still be taken up, two bits a task
 */
record StripState(int at, int last, long usesLeft) {
    private static final int BITS = 2;

    /** Nothing booked yet. */
    static StripState first(SeatWindow window) {
        long left = 0;
        for (int k = 0; k < window.uses().length; k++) {
            left |= (long) window.uses()[k] << BITS * k;
        }
        return new StripState(window.from(), window.last(), left);
    }

    int uses(int task) {
        return (int) (usesLeft >>> BITS * task & 3);
    }

    StripState after(Booking next) {
        return new StripState(next.until(), next.task(), usesLeft - (1L << BITS * next.task()));
    }
}

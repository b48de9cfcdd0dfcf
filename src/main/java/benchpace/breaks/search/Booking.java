package benchpace.breaks.search;

/** A place at a task, taken from one slot up to another. */
record Booking(int task, int from, int until) {
    static Booking of(int task, int from, int length) {
        return new Booking(task, from, from + length);
    }
}

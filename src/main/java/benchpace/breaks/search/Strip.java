package benchpace.breaks.search;

import java.util.List;

/** What one seat does, in order of time, and what that costs by {@link Cost}. */
record Strip(long cost, List<Booking> bookings) {
    static final Strip NOTHING = new Strip(0, List.of());

    Strip {
        bookings = List.copyOf(bookings);
    }
}

package benchpace.board.waiting;

import benchpace.breaks.SeatStrip;
import benchpace.breaks.WaitPlan;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A seat's wait as it was planned last.
 *
 * @param over when it turned out to be over, if it did: the seat had left or gone on
 */
record SeatPast(SeatStrip strip, Optional<Instant> over) {
    /** What is known of every seat once the wait is planned anew. */
    static Map<SeatNumber, SeatPast> after(Map<SeatNumber, SeatPast> before, WaitPlan plan, Instant now) {
        Map<SeatNumber, SeatPast> past = new HashMap<>(before);
        past.replaceAll((seat, known) -> known.over().isPresent() ? known
                : new SeatPast(known.strip(), Optional.of(now)));
        plan.strips().forEach(strip -> past.put(strip.seat(), new SeatPast(strip, Optional.empty())));
        return past;
    }
}

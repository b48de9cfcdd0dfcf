package benchpace.breaks;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;

/**
 * A seat with nothing to do for a while.
 *
 * @param until  when its next part begins or its wait ends
 * @param offers what it could take up now: a place is free, it may be left at any time, and it fits; the one it has
 *               done least comes first; empty when nothing fits
 */
public record Leisure(SeatNumber seat, Instant from, Instant until, List<ActivityId> offers) {
    public Leisure {
        offers = List.copyOf(offers);
    }
}

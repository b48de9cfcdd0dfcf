package benchpace.breaks;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The wait, planned: a strip for each seat, and what to call out when.
 *
 * @param at               the instant it was made for
 * @param strips           one for each seat of the problem that has not left, in ascending order of seats
 * @param events           what to count down to, in order of time
 * @param leisure          seats with nothing to do right now for five minutes or more
 * @param changes          what guests were told and does not hold any more
 * @param unplaced         class breaks that find no time
 * @param pastPromisedEnd  seats that are not wrapped by the promised end: offer them the pickup shelf
 */
public record WaitPlan(Instant at, List<SeatStrip> strips, List<WaitEvent> events, List<Leisure> leisure,
                       List<BrokenAnnouncement> changes, List<Unplaced> unplaced, List<SeatNumber> pastPromisedEnd) {
    /** No plan yet. */
    public static final WaitPlan NONE = new WaitPlan(Instant.EPOCH, List.of(), List.of(), List.of(), List.of(),
            List.of(), List.of());

    public WaitPlan {
        strips = List.copyOf(strips);
        events = List.copyOf(events);
        leisure = List.copyOf(leisure);
        changes = List.copyOf(changes);
        unplaced = List.copyOf(unplaced);
        pastPromisedEnd = List.copyOf(pastPromisedEnd);
    }

    /** Minutes with nothing to do in the wait to come, over all seats. */
    public int idleMinutes() {
        return strips.stream().mapToInt(SeatStrip::idleMinutes).sum();
    }

    /** The most minutes with nothing to do that one seat has. */
    public int longestIdleMinutes() {
        return strips.stream().mapToInt(SeatStrip::idleMinutes).max().orElse(0);
    }

    public Optional<SeatStrip> strip(SeatNumber seat) {
        return strips.stream().filter(s -> s.seat().equals(seat)).findFirst();
    }

    /**
     * What a screen that shows the next {@code lead} has told the guests: the parts that begin within it. Hand it
     * back with the next problem.
     */
    public List<Announced> announcedWithin(Duration lead) {
        Instant horizon = at.plus(lead);
        List<Announced> told = new ArrayList<>();
        for (SeatStrip strip : strips) {
            for (Assignment part : strip.planned()) {
                if (!part.from().isAfter(horizon)) {
                    told.add(new Announced(strip.seat(), part.activity(), part.from()));
                }
            }
        }
        return List.copyOf(told);
    }
}

package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.Leisure;
import benchpace.breaks.SeatStrip;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Finds the seats with nothing to do right now, and what they could take up without disturbing the plan. */
final class LeisureReading {
    /** Common practice, no source: a shorter pause needs no offer. */
    static final int SHORTEST_MINUTES = 5;

    private final Timeline line;
    private final List<SeatStrip> strips;

    LeisureReading(Timeline line, List<SeatStrip> strips) {
        this.line = line;
        this.strips = strips;
    }

    List<Leisure> leisure() {
        List<Leisure> leisure = new ArrayList<>();
        for (SeatStrip strip : strips) {
            Instant now = line.instant(0);
            Instant next = Stream.concat(strip.planned().stream().map(Assignment::from), tried(strip))
                    .min(Comparator.naturalOrder())
                    .filter(at -> at.isBefore(strip.waitUntil())).orElse(strip.waitUntil());
            boolean busy = strip.waitFrom().isAfter(now);
            if (!busy && !next.isBefore(now.plusSeconds(60L * SHORTEST_MINUTES))) {
                leisure.add(new Leisure(strip.seat(), now, next, offers(strip, now, next)));
            }
        }
        return leisure;
    }

    private Stream<Instant> tried(SeatStrip strip) {
        return line.windows.stream().filter(l -> l.seat().equals(strip.seat())).map(l -> line.instant(l.testFrom()));
    }

    private List<ActivityId> offers(SeatStrip strip, Instant from, Instant until) {
        return line.tasks.stream().filter(t -> t.notBefore() == 0 && t.activity().interruptible())
                .map(Task::activity)
                .filter(a -> !a.kind().onceOnly() || times(strip, a) == 0 && a.typical()
                        .compareTo(Duration.between(from, until)) <= 0)
                .filter(a -> !a.needs().contains(Activity.Need.TABLE_CLEAR) || isCleared(strip))
                .filter(a -> mostAtOnce(a.id(), from, until) < a.places())
                .sorted(Comparator.comparingLong((Activity a) -> times(strip, a))).map(Activity::id).toList();
    }

    private boolean isCleared(SeatStrip strip) {
        return line.tasks.stream().filter(Task::isCleanUp).allMatch(t -> times(strip, t.activity()) > 0);
    }

    /** How often a seat has done something, or is planned to. */
    private static long times(SeatStrip strip, Activity activity) {
        return strip.parts().stream().filter(p -> p.activity().equals(activity.id())).count();
    }

    /** The most seats at an activity at any one moment between two; it is reached as one of them begins. */
    private long mostAtOnce(ActivityId id, Instant from, Instant until) {
        List<Assignment> parts = strips.stream().flatMap(s -> s.parts().stream())
                .filter(p -> p.activity().equals(id) && p.overlaps(from, until)).toList();
        long most = 0;
        for (Assignment begins : parts) {
            Instant at = begins.from().isAfter(from) ? begins.from() : from;
            most = Math.max(most, parts.stream()
                    .filter(p -> !p.from().isAfter(at) && p.until().isAfter(at)).count());
        }
        return most;
    }
}

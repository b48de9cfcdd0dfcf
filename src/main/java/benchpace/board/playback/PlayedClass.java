package benchpace.board.playback;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A class as it was at any instant of its evening: what was written down until then, all times by the clock that was
 * set right last. A tap that was told late is there from when it was told, as it was. Safe for use by many threads.
 */
final class PlayedClass {
    /** What is seen before it begins, and after the last thing happened. */
    private static final Duration BEFORE = Duration.ofMinutes(2);
    private static final Duration AFTER = Duration.ofMinutes(1);

    private final List<Recorded> events;
    /** When each was there; never earlier than the one before. */
    private final List<Instant> written = new ArrayList<>();
    private final Instant from;
    private LiveClass known;

    PlayedClass(List<Recorded> log) {
        events = LiveClass.of(log).history();
        Instant last = Instant.MIN;
        for (Recorded event : events) {
            last = event.recordedAt().isAfter(last) ? event.recordedAt() : last;
            written.add(last);
        }
        known = LiveClass.of(events.subList(0, 1));
        from = later(written.get(0), begins().minus(BEFORE));
    }

    /** When the first step was opened or tapped; without one, when it was set up. */
    private Instant begins() {
        for (Recorded event : events) {
            if (event.event() instanceof ClassEvent.StepOpened || event.event() instanceof ClassEvent.StepFinished) {
                return written.get((int) event.seq() - 1);
            }
        }
        return written.get(0);
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    Instant from() {
        return from;
    }

    Instant until() {
        return written.get(written.size() - 1).plus(AFTER);
    }

    List<Recorded> events() {
        return events;
    }

    /** When an event was there. @param seq its number */
    Instant written(long seq) {
        return written.get((int) seq - 1);
    }

    /** How many events there were; one at least. */
    private int countAt(Instant at) {
        int count = (int) known.seq();
        while (count > 1 && written.get(count - 1).isAfter(at)) {
            count--;
        }
        while (count < events.size() && !written.get(count).isAfter(at)) {
            count++;
        }
        return count;
    }

    synchronized LiveClass at(Instant at) {
        int count = countAt(at);
        if (count != known.seq()) {
            known = LiveClass.of(events.subList(0, count));
        }
        return known;
    }
}

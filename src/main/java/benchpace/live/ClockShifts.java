package benchpace.live;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The times of a log as its own {@link ClassEvent.ClockShifted} left them: what a class wrote down by a wrong clock
 * moves along when that is set right, all by the same, so that whatever lasted lasts as long as before.
 */
public final class ClockShifts {
    /** So soon after it was set up a class that begins at once begins. */
    private static final Duration AT_ONCE = Duration.ofMinutes(1);
    private static final Duration DAY = Duration.ofDays(1);

    private ClockShifts() { }

    /** The same events under the same numbers; shifts that are done say that they move nothing more. */
    static List<Recorded> applied(List<Recorded> log) {
        List<Recorded> moved = new ArrayList<>(log);
        for (int i = 0; i < log.size(); i++) {
            if (moved.get(i).event() instanceof ClassEvent.ClockShifted shift && !shift.by().isZero()) {
                for (int k = (int) Math.min(shift.from(), i + 1L) - 1; k < i; k++) {
                    moved.set(k, moved(moved.get(k), shift.by()));
                }
                moved.set(i, moved.get(i).event(new ClassEvent.ClockShifted(shift.from(), Duration.ZERO)));
            }
        }
        return moved;
    }

    private static Recorded moved(Recorded recorded, Duration by) {
        return new Recorded(recorded.seq(), recorded.commandId(), recorded.by(), recorded.device(),
                recorded.at().plus(by), recorded.recordedAt().plus(by), moved(recorded.event(), recorded.at(), by));
    }

    /** What an event says of times was said by the same clock. */
    private static ClassEvent moved(ClassEvent event, Instant at, Duration by) {
        if (event instanceof ClassEvent.TapRetimed retimed) {
            return new ClassEvent.TapRetimed(retimed.seq(), retimed.to().plus(by));
        }
        if (event instanceof ClassEvent.ActivityMoved moved) {
            return new ClassEvent.ActivityMoved(moved.activity(), moved.to().plus(by));
        }
        if (event instanceof ClassEvent.ClassSetUpAgain again) {
            return new ClassEvent.ClassSetUpAgain(moved(again.setup(), at, by));
        }
        return event instanceof ClassEvent.ClassCreated created
                ? new ClassEvent.ClassCreated(moved(created.setup(), at, by)) : event;
    }

    private static Setup moved(Setup setup, Instant at, Duration by) {
        return setup.startingAt(begins(setup.startsAt(), at, by));
    }

    /**
     * A class that began when it was set up moves with that. Another begins by an appointment, which was not read off
     * the wrong clock: it keeps its time of day, and only whole days that the clock was wrong by are made up for.
     */
    private static Instant begins(Instant startsAt, Instant setUp, Duration by) {
        boolean atOnce = Duration.between(setUp, startsAt).abs().compareTo(AT_ONCE) < 0;
        return startsAt.plus(atOnce ? by : DAY.multipliedBy((long) Math.rint((double) by.toMillis() / DAY.toMillis())));
    }

    /**
     * The number of the first event to move. A clock that was set ahead between two runs of the program has left a gap
     * between them: the newest gap that is at least so long. Without one the class was written by one clock as a whole.
     *
     * @param history as {@link LiveClass#history} has it
     * @param until   the number of the last event before which there may be such a gap: after that the program lived
     *                through what passed
     * @param by      how far to move; forwards there is nothing to find
     */
    public static long first(List<Recorded> history, long until, Duration by) {
        if (by.isNegative()) {
            for (int i = (int) Math.min(until, history.size()) - 1; i > 0; i--) {
                Instant before = history.get(i - 1).recordedAt();
                if (!history.get(i).recordedAt().plus(by).isBefore(before)) {
                    return i + 1L;
                }
            }
        }
        return 1;
    }

    /** Whether no event of a class would stand before the one before it, nor outside of any time there can be. */
    public static boolean isPossible(LiveClass live) {
        Instant last = live.createdAt();
        for (Recorded recorded : live.history()) {
            if (recorded.recordedAt().isBefore(last) || !Era.holds(recorded.at())
                    || !Era.holds(recorded.recordedAt())) {
                return false;
            }
            last = recorded.recordedAt();
        }
        return Era.holds(live.startsAt());
    }
}

package benchpace.live;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What a history says of itself: which of its events were taken back, and which were meant otherwise. */
final class Corrections {
    /** No event has that number. */
    private static final long NOTHING = Long.MIN_VALUE;

    private Corrections() { }

    static Set<Long> undone(List<Recorded> history) {
        Set<Long> undone = new HashSet<>();
        for (Recorded recorded : history) {
            if (recorded.event() instanceof ClassEvent.Undone undo) {
                undone.add(undo.seq());
            }
        }
        return undone;
    }

    /** The same events under the same numbers, each tap with the time and the seat that it was set right to. */
    static List<Recorded> applied(List<Recorded> history, Set<Long> undone) {
        List<Recorded> corrected = new ArrayList<>(history);
        for (Recorded recorded : history) {
            if (undone.contains(recorded.seq())) {
                continue;
            }
            if (recorded.event() instanceof ClassEvent.TapRetimed retimed) {
                replace(corrected, retimed.seq(), tap -> tap.at(retimed.to()));
            } else if (recorded.event() instanceof ClassEvent.TapReseated reseated) {
                replace(corrected, reseated.seq(), tap -> tap.event() instanceof ClassEvent.StepFinished f
                        ? tap.event(new ClassEvent.StepFinished(reseated.to(), f.step())) : tap);
            }
        }
        return corrected;
    }

    /** Whether an event changes what was before it, or was spoken of before it was there. */
    static boolean reachBack(LiveClass before, Recorded next) {
        return target(next.event()) != NOTHING || next.event() instanceof ClassEvent.ClockShifted
                || before.log().stream().anyMatch(recorded -> target(recorded.event()) >= next.seq());
    }

    /** The number of the event that one takes back or sets right. */
    private static long target(ClassEvent event) {
        if (event instanceof ClassEvent.Undone undone) {
            return undone.seq();
        }
        if (event instanceof ClassEvent.TapRetimed retimed) {
            return retimed.seq();
        }
        return event instanceof ClassEvent.TapReseated reseated ? reseated.seq() : NOTHING;
    }

    static List<Recorded> with(List<Recorded> events, Recorded next) {
        List<Recorded> longer = new ArrayList<>(events.size() + 1);
        longer.addAll(events);
        longer.add(next);
        return longer;
    }

    private static void replace(List<Recorded> history, long seq, UnaryOperator<Recorded> by) {
        int index = (int) seq - 1;
        if (index >= 0 && index < history.size()) {
            history.set(index, by.apply(history.get(index)));
        }
    }
}

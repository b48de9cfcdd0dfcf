package benchpace.live;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/** What a history says of itself: which of its events were taken back, and which were meant otherwise. */
final class Corrections {
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

    private static void replace(List<Recorded> history, long seq, UnaryOperator<Recorded> by) {
        int index = (int) seq - 1;
        if (index >= 0 && index < history.size()) {
            history.set(index, by.apply(history.get(index)));
        }
    }
}

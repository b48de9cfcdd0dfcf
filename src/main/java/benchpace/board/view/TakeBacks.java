package benchpace.board.view;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Finds what each device may take back with one tap: the last thing it said itself, never what others said. */
final class TakeBacks {
    private TakeBacks() { }

    /** One for each device that has something to take back, the newest first; what no device said is nobody's. */
    static List<ClassView.UndoView> of(LiveClass live) {
        List<ClassView.UndoView> latest = new ArrayList<>();
        Set<String> found = new HashSet<>(Set.of(""));
        List<Recorded> history = live.history();
        for (int i = history.size() - 1; i > 0; i--) {
            Recorded recorded = history.get(i);
            if (possible(live, recorded) && found.add(recorded.device())) {
                latest.add(new ClassView.UndoView(recorded.seq(), recorded.event(), recorded.at(),
                        recorded.device()));
            }
        }
        return latest;
    }

    /** Once a class is closed only that can be taken back. */
    private static boolean possible(LiveClass live, Recorded recorded) {
        ClassEvent event = recorded.event();
        boolean closes = event instanceof ClassEvent.ClassClosed;
        return !(event instanceof ClassEvent.Undone) && !live.isUndone(recorded.seq())
                && (closes || live.closedAt().isEmpty());
    }
}

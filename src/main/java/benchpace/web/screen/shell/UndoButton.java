package benchpace.web.screen.shell;

import benchpace.board.view.ClassView;
import benchpace.words.EventWords;
import benchpace.words.Times;
import java.util.List;

/**
 * The event that one tap takes back: the last thing this very device said, whatever others did since.
 *
 * @param seq   its number; 0 if there is nothing to take back
 * @param steps what the steps are called: the page says with it which of its own taps are not sent yet
 */
public record UndoButton(long seq, String words, String at, List<Step> steps) {
    /** What a step is called. */
    public record Step(String id, String name) { }

    public static UndoButton of(ClassView view, Viewer viewer, Times times) {
        List<Step> steps = view.steps().stream().map(s -> new Step(s.id(), s.name())).toList();
        return view.undoOn(viewer.device())
                .map(undo -> new UndoButton(undo.seq(), EventWords.of(view.plan(), undo.event()),
                        times.clock(undo.at()), steps))
                .orElse(new UndoButton(0, "", "", steps));
    }
}

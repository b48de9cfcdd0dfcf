package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import java.util.Optional;

/** All that the wall shows at first. @param cut a candle cut open; @param next what comes next, in words */
public record WallPage(Shell shell, WallMain main, WallSeats seats, Optional<CutDrawing> cut, String next) {

    static WallPage of(Shell shell, ClassView view, Times times) {
        return new WallPage(shell, WallMain.of(view, times), WallSeats.of(view, times), cut(view),
                next(view));
    }

    /** The candle that most wait for, while they wait. */
    static Optional<CutDrawing> cut(ClassView view) {
        return WallMain.waits(view) ? view.room().cutAway().map(c -> CutDrawing.of(c, "wall-cut")) : Optional.empty();
    }

    static String next(ClassView view) {
        if (view.stage() == Stage.CLOSED) {
            return "";
        }
        return view.next().map(next -> (view.stage() == Stage.BEFORE ? "First: " : "Next: ") + next.step().name())
                .orElse("");
    }
}

package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;

/** All that the wall shows at first. @param next what comes next, in words; empty if nothing does */
public record WallPage(Shell shell, WallMain main, WallSeats seats, String next) {

    static WallPage of(Shell shell, ClassView view, Times times) {
        return new WallPage(shell, WallMain.of(view, times), WallSeats.of(view, times), next(view));
    }

    static String next(ClassView view) {
        if (view.stage() == Stage.CLOSED) {
            return "";
        }
        return view.next().map(next -> (view.stage() == Stage.BEFORE ? "First: " : "Next: ") + next.step().name())
                .orElse("");
    }
}

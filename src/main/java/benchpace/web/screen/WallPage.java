package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import java.util.List;
import java.util.Optional;

/**
 * All that the wall shows at first.
 *
 * @param calls what is called out in the wait, the nearest first
 * @param cut   a candle cut open
 * @param next  what comes next, in words; empty if nothing does
 */
public record WallPage(Shell shell, WallMain main, WallSeats seats, Calls calls, Optional<CutDrawing> cut,
                       String next) {
    private static final int MOST_CALLS = 3;

    /** The nearest call, large, and what follows. */
    public record Calls(List<WaitCall> list) { }

    static WallPage of(Shell shell, ClassView view, Times times) {
        return new WallPage(shell, WallMain.of(view, times), WallSeats.of(view, times), calls(view, times), cut(view),
                next(view));
    }

    static Calls calls(ClassView view, Times times) {
        return new Calls(WallMain.waits(view) ? WaitCall.first(view, times, MOST_CALLS) : List.of());
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

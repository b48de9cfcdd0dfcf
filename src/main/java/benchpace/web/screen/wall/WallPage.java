package benchpace.web.screen.wall;

import benchpace.board.cooling.CandleClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.web.screen.shell.CutDrawing;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.wait.WaitCall;
import benchpace.words.Times;
import java.util.List;
import java.util.Optional;

/** All that the wall shows at first. @param parts the live parts, as the stream sends them later */
public record WallPage(Shell shell, Parts parts) {
    private static final int MOST_CALLS = 3;
    /** Of a name beside the time, in em. */
    private static final double ONE_LINE = 19.5;

    /** More than two lines: where it is can be seen in the room, for whom it is cannot. */
    private static final int LONGEST_DETAILS = 72;

    /** What stands at the top: the studio, where it has a name. */
    public String studio() {
        return ofClass() ? shell.title() : shell.studio().name();
    }

    /** Whether it takes two lines. */
    public boolean longName() {
        return Letters.PLAIN.width(studio()) > ONE_LINE;
    }

    /** Without a studio's name the class's stands there. */
    public boolean ofClass() {
        return shell.studio().name().isEmpty();
    }

    /**
     * The nearest call, large, and what follows.
     *
     * @param sentence said in their place while there are none
     */
    public record Calls(List<WaitCall> list, String sentence) { }

    public static Calls calls(ClassView view, Times times) {
        if (!WallMain.waits(view)) {
            return new Calls(List.of(), "");
        }
        List<WaitCall> calls = WaitCall.first(view, times, MOST_CALLS).stream()
                .map(c -> c.details().length() > LONGEST_DETAILS ? c.placeless() : c).toList();
        return new Calls(calls, !calls.isEmpty() ? "" : onlyTrying(view) || WallFinish.isPresent(view)
                ? WallFinish.TRYING : view.present().wall());
    }

    /** Nothing sets any longer, as far as the clock can tell: what is left is the hand test. */
    private static boolean onlyTrying(ClassView view) {
        List<CandleClock> untried = view.seats().stream().filter(SeatView::counts).flatMap(s -> s.candle().stream())
                .filter(c -> !c.settled()).toList();
        return !untried.isEmpty() && untried.stream().allMatch(c -> c.tryIt(view.now()));
    }

    /** The candle that most wait for, while they wait. */
    public static Optional<CutDrawing> cut(ClassView view) {
        return WallMain.waits(view) ? view.room().cutAway().map(c -> CutDrawing.of(c, "wall-cut")) : Optional.empty();
    }
}

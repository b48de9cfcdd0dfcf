package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.StepView;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Counter;
import benchpace.words.Times;
import java.util.Optional;

/**
 * What the middle of the table says of the step that is open: its drawing, how many are done with it, and how long it
 * has been open against the plan.
 *
 * @param drawing empty while nothing is open
 * @param step    the id of the step that is counted; empty if none
 * @param of      0 for a step that nobody taps
 * @param count   how long it has been open, or when the class starts
 * @param planned how long the plan gives it; empty if nothing is open
 */
public record MiddlePanel(Optional<Drawing> drawing, String step, int done, int of, Optional<Counter> count,
                          String planned) {

    public static MiddlePanel of(ClassView view, Times times) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent();
        return new MiddlePanel(Drawing.present(view), now.step().map(StepView::id).orElse(""), now.done(),
                tapped ? now.of() : 0, count(view, times), NowPanel.of(view, times).planned());
    }

    private static Optional<Counter> count(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> Optional.of(Counter.to(view.startsAt(), "start", "Time to begin",
                    "We begin at " + times.clock(view.startsAt())));
            case CLOSED -> Optional.empty();
            default -> view.present().since().map(at -> Counter.open(at, times));
        };
    }
}

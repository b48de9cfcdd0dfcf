package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ReadyWindow;
import benchpace.board.ReadyWindow.Basis;
import java.util.Optional;

/** What every countdown of a cure has to say beside the minutes: on what it rests, and who decides. */
final class CureWords {
    static final String DECIDES = "The instructor's hand test decides.";

    private CureWords() { }

    static String basis(ClassView.CureView cure) {
        Optional<Basis> basis = cure.all().or(cure::first).map(ReadyWindow::basis);
        if (basis.isEmpty()) {
            return "";
        }
        return (basis.get() == Basis.PLAN_FIGURE ? "The plan's figure, an estimate. "
                : basis.get() == Basis.COMPUTED ? "Computed for this room. " : "") + DECIDES;
    }

    /** For the wall, where every letter is a hand high. */
    static String wall(Optional<ReadyWindow> window) {
        boolean plan = window.filter(w -> w.basis() == Basis.PLAN_FIGURE).isPresent();
        return (plan ? "The plan's figure. " : "An estimate. ") + DECIDES;
    }

    static String basis(ReadyWindow window) {
        return switch (window.basis()) {
            case PLAN_FIGURE -> "The plan's figure, an estimate. " + DECIDES;
            case COMPUTED -> "Computed for this candle and room, an estimate. " + DECIDES;
            case HAND_TEST -> "By hand test.";
        };
    }
}

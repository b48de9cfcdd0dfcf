package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.SeatView;
import java.util.List;

/**
 * The one large button, and what it asks before it leaves somebody behind.
 *
 * @param step    the step to open; empty if none is left
 * @param leaves  the seats that would be left behind
 * @param closing no step is left and the class may be closed
 */
public record NextPanel(String step, String name, String leavesWords, String cost, List<Left> leaves, boolean closing,
                        boolean closed, boolean first) {

    /** A seat that is not done with what is open. */
    public record Left(int seat, String name, String step, String stepName, boolean canFinish, boolean paused) { }

    static NextPanel of(ClassView view) {
        boolean closed = view.stage() == Stage.CLOSED;
        if (view.next().isEmpty() || closed) {
            return new NextPanel("", "", "", "", List.of(), !closed, closed, false);
        }
        ClassView.NextView next = view.next().get();
        List<Left> leaves = next.leavesBehind().stream().map(view::seat).map(NextPanel::left).toList();
        String words = leaves.isEmpty() ? "" : "leaves " + Phrases.seats(next.leavesBehind(), 4) + " behind";
        return new NextPanel(next.step().id(), next.step().name(), words, next.cost(), leaves, false, false,
                view.stage() == Stage.BEFORE);
    }

    private static Left left(SeatView seat) {
        return new Left(seat.seat(), seat.name(), seat.stepId(), seat.stepName(), seat.canFinish(),
                seat.mark() == SeatView.Mark.PAUSED);
    }
}

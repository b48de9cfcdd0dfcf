package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.SeatView;
import benchpace.plan.StepKind;
import java.util.List;

/**
 * The one large button, and what it asks before it leaves somebody behind.
 *
 * @param step    the step to open; empty if none is left
 * @param leaves  the seats that would be left behind
 * @param setting the candles still setting, or not tried yet, that the step does not wait for; empty if none
 * @param closing no step is left and the class may be closed
 * @param classId the class, for links that have to hold wherever the panel stands
 */
public record NextPanel(String step, String name, String leavesWords, String cost, List<Left> leaves, boolean closing,
                        boolean closed, boolean first, String setting, String classId) {
    private static final double LIKELY_DONE = 0.5;

    /**
     * A seat that is not done with what is open.
     *
     * @param finishStep the step whose tick brings it up to the others; empty if none can be ticked
     * @param atStep     the step it is at, to say that it is still there; empty if it cannot be said
     * @param words      what leaving it behind would cost
     * @param triedFrom  a tap for it before this instant asks first whether the candle was tried; may be empty
     * @param stays      it was said to be still at its step: it may stay behind
     */
    public record Left(int seat, String name, String stepName, String finishStep, String triedFrom, String atStep,
                       boolean paused, boolean stays, String words) { }

    static NextPanel of(ClassView view) {
        boolean closed = view.stage() == Stage.CLOSED;
        String setting = closed ? "" : view.cure().stillSetting();
        if (view.next().isEmpty() || closed) {
            return new NextPanel("", "", setting, "", List.of(), !closed, closed, false, "",
                    view.id());
        }
        ClassView.NextView next = view.next().get();
        List<Left> leaves = next.rows().stream().map(row -> left(view, row)).toList();
        String words = leaves.isEmpty() ? "" : "leaves " + Phrases.seats(next.leavesBehind(), 4) + " behind";
        String wet = next.step().kind() != StepKind.FINISH ? "" : setting.isEmpty() ? view.cure().untried() : setting;
        return new NextPanel(next.step().id(), next.step().name(), words.isEmpty() ? wet : words, next.cost(), leaves,
                false, false, view.stage() == Stage.BEFORE, wet, view.id());
    }

    private static Left left(ClassView view, ClassView.LeftRow row) {
        SeatView seat = view.seat(row.seat());
        boolean here = row.judged() || seat.canFinish();
        return new Left(row.seat(), seat.name(), seat.stepName(), row.finishStep(),
                HandTest.from(view, seat, row.finishStep()),
                here && !row.paused() && !row.answered() ? row.atStep() : "", row.paused(), row.answered(), words(row));
    }

    private static String words(ClassView.LeftRow row) {
        if (row.paused()) {
            return "Away for a moment: nobody waits.";
        }
        if (!row.judged()) {
            return "";
        }
        String done = row.doneProbability() >= LIKELY_DONE ? "Perhaps done already. " : "";
        String cost = row.leaveMinutes() > 0 ? "left now, everyone leaves " + row.leaveMinutes() + " min later."
                : "left now, nobody has to wait.";
        return done + "About " + row.remainingMinutes() + " min to go; " + cost;
    }
}

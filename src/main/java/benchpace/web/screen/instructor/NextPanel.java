package benchpace.web.screen.instructor;

import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.ClassView.StepView;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.SeatWords;
import benchpace.words.Times;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The one large button, and what it asks before it leaves somebody behind.
 *
 * @param step    the step to open; empty if none is left
 * @param leaves  the seats that would be left behind
 * @param setting the candles still setting, or not tried yet, that the step does not wait for; empty if none
 * @param closing no step is left to open
 * @param underWay while somebody is not done with the last of them: the step, and how many are done with it in words
 * @param classId the class, for links that have to hold wherever the panel stands
 */
public record NextPanel(String step, String name, String leavesWords, String cost, List<Left> leaves, boolean closing,
                        boolean closed, boolean first, String setting, Optional<UnderWay> underWay, String classId) {
    private static final double LIKELY_DONE = 0.5;
    private static final int NAMED_SEATS = 4;

    /** What goes on while no step is left to open. @param step its id */
    public record UnderWay(String step, String name, String count) { }

    /**
     * A seat that is not done with what is open.
     *
     * @param finishStep the step whose tick brings it up to the others; empty if none can be ticked
     * @param upTo       its name, where the seat is at one before it: the tick says more than the row
     * @param atStep     the step it is at, to say that it is still there; empty if it cannot be said
     * @param words      what leaving it behind would cost
     * @param triedFrom  a tap for it before this instant asks first whether the candle was tried; may be empty
     * @param stays      it was said to be still at its step: it may stay behind
     */
    public record Left(int seat, String name, String stepName, String finishStep, String upTo, String triedFrom,
                       String atStep, boolean paused, boolean stays, String words) { }

    public static NextPanel of(ClassView view) {
        boolean closed = view.stage() == Stage.CLOSED;
        if (view.next().isEmpty() || closed) {
            return new NextPanel("", "", "", "", List.of(), !closed, closed, false, "",
                    closed ? Optional.empty() : underWay(view), view.id());
        }
        String setting = CureWords.setting(view.cure(), new Times(view.zone()));
        ClassView.NextView next = view.next().get();
        List<Left> leaves = next.rows().stream().map(row -> left(view, row)).toList();
        String words = leaves.isEmpty() ? "" : leavesWords(view, next.leavesBehind());
        String wet = next.step().kind() != StepKind.FINISH ? ""
                : setting.isEmpty() ? CureWords.untried(view.cure()) : setting;
        return new NextPanel(next.step().id(), next.step().name(), words.isEmpty() ? wet : words,
                SeatWords.notDone(next.leavesBehind()), leaves, false, false, view.stage() == Stage.BEFORE, wet,
                Optional.empty(), view.id());
    }

    /** The step of the heading, or the nearest that somebody is not done with; empty when all are done with all. */
    private static Optional<UnderWay> underWay(ClassView view) {
        int of = view.present().of();
        List<StepView> open = view.steps().stream().filter(s -> s.kind().needsTap() && s.finished() < of).toList();
        int heading = view.present().step().map(view.steps()::indexOf).orElse(0);
        return open.stream().filter(s -> view.steps().indexOf(s) >= heading).findFirst()
                .or(() -> open.stream().reduce((first, second) -> second))
                .map(s -> new UnderWay(s.id(), s.name(), s.finished() + " of " + of + " done"));
    }

    /**
     * Whoever is done with the step of the heading may still be left behind, at a free step after it: then both numbers
     * are told, so that they add up with the count beside the heading. Nobody is done with a talk or the cure by a tap:
     * under those it is told where the seats are.
     */
    private static String leavesWords(ClassView view, List<Integer> behind) {
        NowView now = view.present();
        String words = "leaves " + Phrases.seats(behind, NAMED_SEATS) + " behind";
        Set<Integer> early = new HashSet<>(now.notDone());
        now.earlier().forEach(e -> early.addAll(e.seats()));
        List<Integer> notUpTo = behind.stream().filter(early::contains).toList();
        List<Integer> others = behind.stream().filter(n -> !early.contains(n)).toList();
        if (notUpTo.isEmpty() || others.isEmpty() || now.step().isEmpty()) {
            return words;
        }
        String further = where(view, others, now.setting().isEmpty() ? "further on" : "at other steps");
        StepView heading = now.step().get();
        return words + ": " + notUpTo.size() + (heading.kind().needsTap()
                ? " not done with " + heading.name() + ", " + others.size() + " more "
                : " " + where(view, notUpTo, "at earlier steps") + ", " + others.size() + " ") + further;
    }

    /** "at Pour"; at several steps as {@code several} says. */
    private static String where(ClassView view, List<Integer> seats, String several) {
        List<String> steps = seats.stream().map(n -> view.seat(n).stepName()).distinct().toList();
        return steps.size() == 1 ? "at " + steps.get(0) : several;
    }

    private static Left left(ClassView view, ClassView.LeftRow row) {
        SeatView seat = view.seat(row.seat());
        boolean here = row.judged() || seat.canFinish();
        return new Left(row.seat(), seat.name(), seat.stepName(), row.finishStep(), upTo(view, row),
                HandTest.from(view, seat, row.finishStep()),
                here && !row.paused() && !row.answered() ? row.atStep() : "", row.paused(), row.answered(), words(row));
    }

    private static String upTo(ClassView view, ClassView.LeftRow row) {
        return row.finishStep().isEmpty() || row.finishStep().equals(row.atStep()) ? ""
                : view.steps().stream().filter(s -> s.id().equals(row.finishStep())).map(StepView::name).findFirst()
                        .orElse("");
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

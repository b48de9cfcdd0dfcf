package benchpace.web.screen.helper;

import benchpace.board.pacing.SeatFlag;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.SeatNumber;
import benchpace.web.screen.instructor.SeatTile;
import benchpace.web.screen.shell.Counter;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.FlagWords;
import benchpace.words.SeatWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.Optional;

/**
 * A seat that needs somebody, on the instructor's and the helpers' screens.
 *
 * @param mark   {@code slipping} or {@code behind}
 * @param reason the question, or the reason and what it costs everyone
 * @param over   the minutes over what this table needs, as on the tile; empty where the reason says them
 * @param helper who has it; empty if nobody
 * @param mine   the viewer has it
 * @param went   who went there and has been silent since for too long; empty if nobody
 * @param ago    how long ago that was
 * @param step   the step in question, for the two answers
 */
public record HelpCard(int seat, String name, String mark, String word, String reason, String place, String over,
                       String helper, boolean mine, String went, Optional<Counter> ago, String step,
                       boolean answerable) {

    static HelpCard of(ClassView.HelpView help, ClassView view, Viewer viewer, Times times) {
        SeatView seat = view.seat(help.seat());
        SeatFlag flag = help.flag();
        String mark = flag.level() == SeatFlag.Level.BEHIND ? "behind" : "slipping";
        String helper = help.helper().orElse("");
        return new HelpCard(help.seat(), help.name(), mark, mark, FlagWords.reason(flag),
                SeatWords.place(view.chart(), new SeatNumber(help.seat())),
                flag.level() == SeatFlag.Level.BEHIND ? "" : SeatTile.over(flag), helper,
                !helper.isEmpty() && helper.equals(viewer.initials()),
                help.went().map(ClassView.WentView::helper).orElse(""), help.went().map(w -> ago(w.at(), times)),
                seat.stepId(), seat.canFinish() && (seat.hint() || seat.question()));
    }

    /** "MK went 6 min ago": the minutes tick in the browser. */
    private static Counter ago(Instant at, Times times) {
        return new Counter(true, Counter.iso(at), "bare", "", Counter.iso(at), "", "some minutes");
    }
}

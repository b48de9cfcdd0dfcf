package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.SeatFlag;
import benchpace.board.SeatView;

/**
 * A seat that needs somebody, on the instructor's and the helpers' screens.
 *
 * @param mark   {@code slipping} or {@code behind}
 * @param price  what it costs everyone, in words; empty if nothing
 * @param helper who has it; empty if nobody
 * @param mine   the viewer has it
 * @param step   the step in question, for the two answers
 */
public record HelpCard(int seat, String name, String mark, String word, String reason, String price, String place,
                       Counter count, String helper, boolean mine, String step, boolean answerable) {

    static HelpCard of(ClassView.HelpView help, ClassView view, Viewer viewer, Times times) {
        SeatView seat = view.seat(help.seat());
        SeatFlag flag = help.flag();
        boolean behind = flag.level() == SeatFlag.Level.BEHIND;
        String helper = help.helper().orElse("");
        String price = flag.priceMinutes() > 0 && !flag.reason().contains("leaves")
                ? "If it goes on, everyone leaves " + flag.priceMinutes() + " min later." : "";
        return new HelpCard(help.seat(), help.name(), behind ? "behind" : "slipping", behind ? "behind" : "slipping",
                flag.reason(), price, help.place(), Counter.since(help.countFrom(), times), helper,
                !helper.isEmpty() && helper.equals(viewer.initials()), seat.stepId(),
                seat.canFinish() && (!behind || seat.hint() || seat.question()));
    }
}

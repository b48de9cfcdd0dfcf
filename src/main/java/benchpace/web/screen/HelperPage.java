package benchpace.web.screen;

import benchpace.board.ClassView;
import java.util.List;

/** All that a helper's phone shows at first. */
public record HelperPage(Shell shell, String name, String place, String initials, NowPanel now, HelpList help,
                         List<HelperRow> notDone, List<HelperRow> all) {

    static HelperPage of(Shell shell, ClassView view, Viewer viewer, Times times) {
        return new HelperPage(shell, view.name(), view.place(), viewer.initials(), NowPanel.of(view, times),
                HelpList.of(view, viewer, times, view.seats().size()), HelperRow.notDone(view, viewer, times),
                HelperRow.all(view, viewer, times));
    }
}

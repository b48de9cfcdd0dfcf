package benchpace.web.screen.plans;

import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import java.util.List;

/**
 * All plans that a class can be set up from.
 *
 * @param own      the organiser's, by name
 * @param starters those that come with the program
 * @param deleted  those that can be brought back, the latest first
 * @param troubles a sentence for each thing that is amiss
 * @param candles  names of those that a new plan may be made for
 */
public record PlansPage(Viewer viewer, List<PlanRow> own, List<PlanRow> starters, List<PlanRow> deleted,
                        List<String> troubles, List<String> candles) {
    public PlansPage {
        own = List.copyOf(own);
        starters = List.copyOf(starters);
        deleted = List.copyOf(deleted);
        troubles = List.copyOf(troubles);
        candles = List.copyOf(candles);
    }

    /** Whether whoever looks may change something. */
    public boolean changes() {
        return viewer.instructor();
    }

    public Shell shell() {
        return shell("Plans", viewer);
    }

    static Shell shell(String title, Viewer viewer) {
        return new Shell(title, "plans", List.of(), "", "", "UTC", viewer.role().token(), viewer.initials());
    }
}

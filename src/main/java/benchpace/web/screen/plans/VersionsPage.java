package benchpace.web.screen.plans;

import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import java.util.List;

/**
 * Every saved version of a plan.
 *
 * @param tag  of the version that stands now
 * @param rows the newest first
 */
public record VersionsPage(Viewer viewer, String id, String name, String tag, List<Row> rows) {

    /**
     * One version.
     *
     * @param saved    when, and on which device
     * @param called   its name then; empty if it cannot be read any more
     * @param ran      on which days classes ran with it; empty if none
     * @param readable whether it can be looked at
     * @param current  it is the one that stands now
     */
    public record Row(int number, String saved, String called, String ran, boolean readable, boolean current) { }

    public VersionsPage {
        rows = List.copyOf(rows);
    }

    public Shell shell() {
        return PlansPage.shell("Versions of " + name, viewer);
    }
}

package benchpace.web.screen.helper;

import benchpace.board.view.ClassView;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;

/** All that a helper's phone shows at first. @param parts the live parts, as the stream sends them later */
public record HelperPage(Shell shell, String name, String place, String initials, Parts parts) {

    public static HelperPage of(Shell shell, ClassView view, Viewer viewer, Parts parts) {
        return new HelperPage(shell, view.name(), view.place(), viewer.initials(), parts);
    }
}

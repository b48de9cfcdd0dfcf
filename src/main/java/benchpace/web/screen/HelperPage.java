package benchpace.web.screen;

import benchpace.board.ClassView;

/** All that a helper's phone shows at first. @param parts the live parts, as the stream sends them later */
public record HelperPage(Shell shell, String name, String place, String initials, Parts parts) {

    static HelperPage of(Shell shell, ClassView view, Viewer viewer, Parts parts) {
        return new HelperPage(shell, view.name(), view.place(), viewer.initials(), parts);
    }
}

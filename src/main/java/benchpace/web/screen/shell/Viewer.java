package benchpace.web.screen.shell;

import benchpace.board.view.ClassView;

/**
 * Who looks at a screen.
 *
 * @param initials a helper's, shown beside "I've got it"; may be empty
 * @param device   the mark of the device, as events bear it; empty for a guest's
 */
public record Viewer(Role role, String initials, String device) {
    public static final Viewer GUEST = new Viewer(Role.GUEST, "");

    /** On a device that has tapped nothing. */
    public Viewer(Role role, String initials) {
        this(role, initials, "");
    }

    /**
     * What of the viewer shows in the parts of a page that many see: the right, and the initials only of somebody who
     * is at a seat. Viewers that are equal so are shown the same.
     */
    public Viewer amongMany(ClassView view) {
        boolean helps = view.seats().stream().anyMatch(s -> s.helper().filter(initials::equals).isPresent());
        return new Viewer(role, helps ? initials : "", "");
    }

    public boolean instructor() {
        return role == Role.INSTRUCTOR;
    }
}

package benchpace.web.screen.shell;

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

    public boolean instructor() {
        return role == Role.INSTRUCTOR;
    }
}

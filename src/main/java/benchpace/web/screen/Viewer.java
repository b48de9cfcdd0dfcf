package benchpace.web.screen;

/**
 * Who looks at a screen.
 *
 * @param initials a helper's, shown beside "I've got it"; may be empty
 */
public record Viewer(Role role, String initials) {
    public static final Viewer GUEST = new Viewer(Role.GUEST, "");

    public boolean instructor() {
        return role == Role.INSTRUCTOR;
    }
}

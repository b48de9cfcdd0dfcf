package benchpace.web.screen.shell;

import java.util.Locale;

/** The screens that follow a class live. */
public enum ScreenKind {
    INSTRUCTOR, HELPER, WALL, WAIT;

    /** As it stands in addresses: {@code /classes/{id}/instructor}. */
    public String token() {
        return name().toLowerCase(Locale.ROOT);
    }
}

package benchpace.web.screen;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The screens that follow a class live. */
public enum ScreenKind {
    INSTRUCTOR, HELPER, WALL, WAIT;

    /** As it stands in addresses: {@code /classes/{id}/instructor}. */
    public String token() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<ScreenKind> of(String token) {
        return Arrays.stream(values()).filter(kind -> kind.token().equals(token)).findFirst();
    }
}

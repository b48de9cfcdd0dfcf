package benchpace.web.screen;

import java.util.Locale;

/** What somebody may do, from the most to the least. */
public enum Role {
    INSTRUCTOR, HELPER, GUEST;

    public String token() {
        return name().toLowerCase(Locale.ROOT);
    }
}

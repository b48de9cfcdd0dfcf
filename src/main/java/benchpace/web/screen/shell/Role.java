package benchpace.web.screen.shell;

import java.util.Arrays;
import java.util.Locale;

/** What somebody may do, from the most to the least. */
public enum Role {
    INSTRUCTOR, HELPER,
    /** A television that is paired, so that its place is kept: it sees what everybody may see, and nothing else. */
    WALL,
    GUEST;

    /** Whether it may see names and tap: those who work at the table. */
    public boolean staff() {
        return this == INSTRUCTOR || this == HELPER;
    }

    /** The role of that token; what is no role's opens nothing. */
    public static Role of(String token) {
        return Arrays.stream(values()).filter(role -> role.token().equals(token)).findFirst().orElse(GUEST);
    }

    /** How it is written down. */
    public String token() {
        return name().toLowerCase(Locale.ROOT);
    }
}

package benchpace.plan;

import java.util.regex.Pattern;

/** The one rule for identifiers that people may write in plan files: short, lower case, safe in addresses. */
final class Ids {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private Ids() { }

    static String checked(String what, String value) {
        if (value == null || !FORM.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    what + " must be 1 to 40 lower-case letters, digits or hyphens, not "
                            + (value == null ? "nothing" : "\"" + Texts.shown(value) + "\""));
        }
        return value;
    }
}

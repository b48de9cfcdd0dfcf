package benchpace.plan;

/** The rules for ids and names, for what plans say in rooms of their own. */
public final class Names {
    private Names() { }

    /** @throws IllegalArgumentException unless it is 1 to 40 lower-case letters, digits or hyphens */
    public static String id(String what, String value) {
        return Ids.checked(what, value);
    }

    /** @throws IllegalArgumentException unless it is one line, not blank and at most {@code most} characters */
    public static String required(String what, String text, int most) {
        return Texts.required(what, text, most);
    }

    /** @throws IllegalArgumentException unless it is one line, perhaps empty, of at most {@code most} characters */
    public static String line(String what, String text, int most) {
        return Texts.line(what, text, most);
    }
}

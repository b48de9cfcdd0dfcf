package benchpace.plan;

import java.time.Duration;

/** Checks of the texts and lengths that people write into plans; each message names the part. */
final class Texts {
    private static final int LONGEST_SHOWN = 40;

    private Texts() { }

    static void present(String what, Object part) {
        if (part == null) {
            throw new IllegalArgumentException(what + " is missing");
        }
    }

    /** A name: one line, and not blank. */
    static String required(String what, String text, int most) {
        line(what, text, most);
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is missing");
        }
        return text;
    }

    /** One line, which may be empty. */
    static String line(String what, String text, int most) {
        optional(what, text, most);
        if (text.indexOf('\n') >= 0) {
            throw new IllegalArgumentException(what + " must stand on one line");
        }
        return text;
    }

    /** What is said or read aloud: may be empty, may have several lines. */
    static String optional(String what, String text, int most) {
        present(what, text);
        if (text.length() > most) {
            throw new IllegalArgumentException(what + " is longer than " + most + " characters");
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
            throw new IllegalArgumentException(what + " holds a control character");
        }
        if (text.codePoints().anyMatch(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE)) {
            throw new IllegalArgumentException(what + " holds half a character (an unpaired surrogate)");
        }
        return text;
    }

    /** Somebody's text within a message: its beginning, on one line. */
    static String shown(String text) {
        StringBuilder line = text.codePoints().limit(LONGEST_SHOWN)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append);
        return line.length() < text.length() ? line + "..." : line.toString();
    }

    static Duration durationWithin(String what, Duration length, Duration most) {
        if (length == null || length.isNegative() || length.isZero() || length.compareTo(most) > 0) {
            throw new IllegalArgumentException(
                    what + " must be above 0 and at most " + most.toMinutes() + " minutes");
        }
        return length;
    }
}

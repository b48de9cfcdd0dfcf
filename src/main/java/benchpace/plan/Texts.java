package benchpace.plan;

import java.time.Duration;

/** Checks of the texts and lengths that people write into plans; each message names the part. */
final class Texts {
    private Texts() { }

    static void present(String what, Object part) {
        if (part == null) {
            throw new IllegalArgumentException(what + " is missing");
        }
    }

    static String required(String what, String text, int most) {
        optional(what, text, most);
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " is missing");
        }
        return text;
    }

    static String optional(String what, String text, int most) {
        present(what, text);
        if (text.length() > most) {
            throw new IllegalArgumentException(what + " is longer than " + most + " characters");
        }
        if (text.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
            throw new IllegalArgumentException(what + " holds a control character");
        }
        return text;
    }

    static Duration durationWithin(String what, Duration length, Duration most) {
        if (length == null || length.isNegative() || length.isZero() || length.compareTo(most) > 0) {
            throw new IllegalArgumentException(
                    what + " must be above 0 and at most " + most.toMinutes() + " minutes");
        }
        return length;
    }
}

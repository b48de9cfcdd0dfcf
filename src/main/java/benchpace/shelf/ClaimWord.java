package benchpace.shelf;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a guest says to get their candle: a word and two digits, "maple 42". Stands in for personal data.
 *
 * @param number 10 to 99, so that it is always said as two digits
 */
public record ClaimWord(String word, int number) implements Claim {
    private static final Pattern SPOKEN = Pattern.compile("\\s*([a-z]+)[\\s\\-.,:]*(\\d{2})\\s*");

    public ClaimWord {
        if (!word.matches("[a-z]{3,12}") || number < 10 || number > 99) {
            throw new IllegalArgumentException("a claim word is 3 to 12 small letters and a number of two digits");
        }
    }

    /** Reads what somebody typed, with any capitals and any of a space, dash, dot or nothing between. */
    public static Optional<ClaimWord> read(String typed) {
        Matcher m = SPOKEN.matcher(typed.toLowerCase(Locale.ROOT));
        if (!m.matches() || m.group(1).length() < 3 || m.group(1).length() > 12 || m.group(2).charAt(0) == '0') {
            return Optional.empty();
        }
        return Optional.of(new ClaimWord(m.group(1), Integer.parseInt(m.group(2))));
    }

    @Override public String toString() {
        return word + " " + number;
    }
}

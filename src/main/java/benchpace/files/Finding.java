package benchpace.files;

/**
 * One thing wrong with what was read.
 *
 * @param place    where: a JSON pointer (RFC 6901) such as {@code /steps/2/minutes}, a line, or empty for the whole
 * @param sentence what is wrong, to be read after the place: "must be above 0"
 */
public record Finding(String place, String sentence) {
    /** Longer than any place or sentence of ours; what is longer holds a name out of the file itself. */
    private static final int LONGEST_SHOWN = 500;

    /** On one line, whatever stood in the file. */
    @Override public String toString() {
        return place.isEmpty() ? shownSentence() : shownPlace() + ": " + shownSentence();
    }

    /** The place on one line. */
    public String shownPlace() {
        return onOneLine(place, LONGEST_SHOWN);
    }

    /** The sentence on one line. */
    public String shownSentence() {
        return onOneLine(sentence, LONGEST_SHOWN);
    }

    /** Somebody's text for a message: its beginning, with a question mark for what cannot be shown on a line. */
    static String onOneLine(String text, int most) {
        StringBuilder line = text.codePoints().limit(most)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append);
        return line.length() < text.length() ? line + "..." : line.toString();
    }
}

package benchpace.files;

/**
 * One thing wrong with what was read.
 *
 * @param place    where: a JSON pointer (RFC 6901) such as {@code /steps/2/minutes}, a line, or empty for the whole
 * @param sentence what is wrong, to be read after the place: "must be above 0"
 */
public record Problem(String place, String sentence) {
    @Override public String toString() {
        return place.isEmpty() ? sentence : place + ": " + sentence;
    }
}

package benchpace.plan;

import java.util.HashMap;
import java.util.Map;

/**
 * What stands for words that are taken out: the first word of its kind that is met becomes "party 1", the next other
 * one "party 2", and whenever a word comes again so does its stand-in. The same words in the same order always have
 * the same ones, and stand-ins met in that order stay what they are. Nothing of the words themselves is left in them.
 * For one reader at a time.
 */
public final class StandIns {
    /** What stands for whole sentences. */
    private static final String PROSE = "…";

    private final Map<String, Map<String, Integer>> numbers = new HashMap<>();

    /** For a name or a word; the empty one stays empty. @param kind what it is of, one word */
    public String name(String kind, String written) {
        return written.isEmpty() ? "" : kind + " " + number(kind, written);
    }

    /** For an id: lower-case letters, digits and hyphens. @param kind what it is of, one lower-case word */
    public String id(String kind, String written) {
        return kind + "-" + number(kind, written);
    }

    /** For what was written freely; the empty text stays empty. */
    public static String prose(String written) {
        return written.isEmpty() ? "" : PROSE;
    }

    private int number(String kind, String written) {
        Map<String, Integer> known = numbers.computeIfAbsent(kind, k -> new HashMap<>());
        return known.computeIfAbsent(written, w -> known.size() + 1);
    }
}

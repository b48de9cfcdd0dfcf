package benchpace.words;

import benchpace.prep.evening.Chance;

/** A chance as few evenings let it be guessed at, until more were gone through. */
public final class GuessWords {
    private static final long NEARLY_NEVER = 5;
    private static final long NEARLY_ALWAYS = 95;

    private GuessWords() { }

    /** "about 70 in 100": to the next five, and never sure. */
    public static String about(Chance chance) {
        long fives = 5 * Math.round(20 * chance.share());
        return "about " + Math.min(NEARLY_ALWAYS, Math.max(NEARLY_NEVER, fives)) + " in 100";
    }
}

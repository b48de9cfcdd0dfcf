package benchpace.web.screen.shell;

import benchpace.board.cooling.SaidRange;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * A time that ticks in the browser. What the page says before the script takes over, and without it, is a clock time,
 * so that a fragment stays the same while mere minutes pass.
 *
 * @param up    counts up from {@code at} rather than down to it
 * @param at    RFC 3339
 * @param style how the minutes are put: {@code bare} "12 min", {@code in} "in 12 min", {@code try} "try in 12 min",
 *              {@code tried} "can be tried in 12 min", {@code sentence} the same with a capital, {@code start}
 *              "We begin in 12 min", {@code mute} nothing;
 *              {@code silent} like {@code bare}, but nothing in the first minute; {@code open} "open 12 min"
 * @param after what it says from {@code at} on
 * @param until RFC 3339, from then on it says {@code past}; the same as {@code at} if there is no such stretch
 * @param words the clock time, as said without a script
 */
public record Counter(boolean up, String at, String style, String after, String until, String past, String words) {

    public static Counter since(Instant at, Times times) {
        return new Counter(true, iso(at), "bare", "", iso(at), "", "since " + times.clock(at));
    }

    /** Says nothing in its first minute: beside a word that tells the state, "just begun" would speak of another. */
    public static Counter silentAtFirst(Instant at, Times times) {
        return new Counter(true, iso(at), "silent", "", iso(at), "", "since " + times.clock(at));
    }

    /** How long a step has been open. */
    public static Counter open(Instant at, Times times) {
        return new Counter(true, iso(at), "open", "", iso(at), "", "open since " + times.clock(at));
    }

    public static Counter to(Instant at, String style, String after, String words) {
        return new Counter(false, iso(at), style, after, iso(at), after, words);
    }

    /**
     * Counts to the beginning of a candle's range, and says so. From then on no minutes are told, and past the range's
     * end it says that the candle is to be tried. The range itself stands beside it in words, so without a script, and
     * while the page is out of touch, it says nothing.
     *
     * @param style  {@code try} or {@code tried}
     * @param inside what it says inside the range
     */
    public static Counter ready(SaidRange range, String style, String inside, String past) {
        return new Counter(false, iso(range.from()), style, inside, iso(range.until()), past, "");
    }

    /** Minutes to the beginning of its range, and what is to be done from then on. */
    public static Counter tried(SaidRange range) {
        return ready(range, "tried", CureWords.MAY_BE_NOW, CureWords.TRY_IT);
    }

    /** The same where it stands as a sentence of its own. */
    public static Counter triedAlone(SaidRange range) {
        return ready(range, "sentence", Phrases.sentence(CureWords.MAY_BE_NOW), Phrases.sentence(CureWords.TRY_IT));
    }

    public static String iso(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}

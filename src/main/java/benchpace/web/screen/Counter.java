package benchpace.web.screen;

import benchpace.board.ReadyWindow;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * A time that ticks in the browser. What the page says before the script takes over, and without it, is a clock time,
 * so that a fragment stays the same while mere minutes pass.
 *
 * @param up    counts up from {@code at} rather than down to it
 * @param at    RFC 3339
 * @param style how the minutes are put: {@code bare} "12 min", {@code left} "12 min left", {@code in} "in 12 min"
 * @param after what it says from {@code at} on
 * @param until RFC 3339, from then on it says {@code past}; the same as {@code at} if there is no such stretch
 * @param words the clock time, as said without a script
 */
public record Counter(boolean up, String at, String style, String after, String until, String past, String words) {

    public static Counter since(Instant at, Times times) {
        return new Counter(true, iso(at), "bare", "", iso(at), "", "since " + times.clock(at));
    }

    public static Counter to(Instant at, String style, String after, String words) {
        return new Counter(false, iso(at), style, after, iso(at), after, words);
    }

    /** Counts to the likely end of a cure; within the rest of the window it only says so. */
    public static Counter ready(ReadyWindow window, String style, String past, Times times) {
        return ready(window, style, "any minute", past, times);
    }

    static Counter ready(ReadyWindow window, String style, String after, String past, Times times) {
        return new Counter(false, iso(window.likely()), style, after, iso(window.until()), past,
                "about " + times.roughly(window));
    }

    static String iso(Instant at) {
        return at.truncatedTo(ChronoUnit.SECONDS).toString();
    }
}

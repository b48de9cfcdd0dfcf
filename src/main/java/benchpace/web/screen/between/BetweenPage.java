package benchpace.web.screen.between;

import benchpace.plan.Studio;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.StageWords;
import benchpace.words.Times;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What an address that follows the running class shows while there is none.
 *
 * @param over     of the class that has just ended; empty if none has
 * @param heading  the largest words: on a television guests of that class are still in the room, and are bid farewell
 * @param sentence what they are to mind on the way home; may be empty
 * @param next     when the next one begins; says so if none is set up, but to guests that leave
 * @param large    on a television
 */
public record BetweenPage(Shell shell, String over, String heading, String sentence, String next, boolean large) {

    /** A class that is over or to come. @param poured whether it has poured a candle */
    public record Told(String name, Instant startsAt, boolean poured) { }

    public static BetweenPage of(ScreenKind kind, Viewer viewer, Following following, Optional<Told> next,
                                 Optional<Told> over, Instant now, ZoneId zone) {
        Shell shell = new Shell("No class just now", "between", List.of(), "", "", zone.getId(), viewer.role().token(),
                viewer.initials(), following, Studio.NONE, Optional.empty());
        Times times = new Times(zone);
        boolean wall = kind == ScreenKind.WALL;
        boolean leaving = wall && over.isPresent();
        String words = next.map(t -> "Next: " + t.name() + ", " + lower(times.dayFrom(t.startsAt(), now)) + ".")
                .orElse(leaving ? "" : over.isPresent() ? "No other class is set up." : "No class is set up yet.");
        return new BetweenPage(shell, over.map(t -> t.name() + " is over.").orElse(""),
                leaving ? StageWords.THANKS : "No class is running",
                leaving && over.get().poured() ? StageWords.ON_THE_WAY_HOME : "", words, wall);
    }

    /** The same in somebody's room. */
    public BetweenPage at(Studio room) {
        return new BetweenPage(shell.at(room), over, heading, sentence, next, large);
    }

    /** Nobody who leaves needs to be told what becomes of the page. */
    public boolean hints() {
        return !large || over.isEmpty();
    }

    private static String lower(String day) {
        return day.startsWith("To") ? day.replaceFirst("^To", "to") : day;
    }
}

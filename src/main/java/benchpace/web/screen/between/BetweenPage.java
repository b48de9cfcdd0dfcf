package benchpace.web.screen.between;

import benchpace.plan.Studio;
import benchpace.web.screen.shell.Following;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What an address that follows the running class shows while there is none.
 *
 * @param thanks for the class that has just ended; empty if none has
 * @param next   when the next one begins; says so if none is set up
 * @param large  on a television
 */
public record BetweenPage(Shell shell, String thanks, String next, boolean large) {

    /** A class that is over or to come. */
    public record Told(String name, Instant startsAt) { }

    public static BetweenPage of(ScreenKind kind, Viewer viewer, Following following, Optional<Told> next,
                                 Optional<Told> over, Instant now, ZoneId zone) {
        Shell shell = new Shell("No class just now", "between", List.of(), "", "", zone.getId(), viewer.role().token(),
                viewer.initials(), following, Studio.NONE, Optional.empty());
        Times times = new Times(zone);
        String words = next.map(t -> "Next: " + t.name() + ", " + lower(times.dayFrom(t.startsAt(), now)) + ".")
                .orElse(over.isPresent() ? "No other class is set up." : "No class is set up yet.");
        return new BetweenPage(shell, over.map(t -> t.name() + " is over. Thank you for coming.").orElse(""), words,
                kind == ScreenKind.WALL);
    }

    /** The same in somebody's room. */
    public BetweenPage at(Studio room) {
        return new BetweenPage(shell.at(room), thanks, next, large);
    }

    private static String lower(String day) {
        return day.startsWith("To") ? day.replaceFirst("^To", "to") : day;
    }
}

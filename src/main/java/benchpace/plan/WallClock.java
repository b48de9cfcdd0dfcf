package benchpace.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Locale;

/**
 * The time as the clock on the room's wall shows it. In the night in which clocks are set back that clock shows an hour
 * twice: then, and only then, it is said which of the two is meant, so that no range reads as if it ran backwards.
 */
public final class WallClock {
    private static final DateTimeFormatter HOURS = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private WallClock() { }

    /** "20:07"; "02:25 summer time" and "02:25 winter time" when clocks are set back. */
    public static String words(Instant at, ZoneId zone) {
        String which = which(at, zone);
        return HOURS.format(at.atZone(zone)) + (which.isEmpty() ? "" : " " + which + " time");
    }

    /** The same for where letters are large: "02:25 summer". */
    public static String brief(Instant at, ZoneId zone) {
        return (HOURS.format(at.atZone(zone)) + " " + which(at, zone)).strip();
    }

    /** The same in another form, which must end with the time: "Sunday 25 October, 02:25 summer time". */
    public static String words(DateTimeFormatter form, Instant at, ZoneId zone) {
        String which = which(at, zone);
        return form.format(at.atZone(zone)) + (which.isEmpty() ? "" : " " + which + " time");
    }

    /**
     * "summer" or "winter" if the wall's clock shows that time twice, else empty. Where it is not for the summer that
     * clocks are set, "old" or "new".
     */
    private static String which(Instant at, ZoneId zone) {
        ZoneRules rules = zone.getRules();
        ZoneOffsetTransition change = rules.getTransition(at.atZone(zone).toLocalDateTime());
        if (change == null || !change.isOverlap()) {
            return "";
        }
        boolean before = at.isBefore(change.getInstant());
        boolean seasons = rules.isDaylightSavings(change.getInstant().minusSeconds(1))
                && !rules.isDaylightSavings(change.getInstant());
        return seasons ? before ? "summer" : "winter" : before ? "old" : "new";
    }
}

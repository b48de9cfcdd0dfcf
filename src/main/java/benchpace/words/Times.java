package benchpace.words;

import benchpace.board.cooling.SaidRange;
import benchpace.plan.WallClock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Prints instants as the clock on the room's wall shows them. */
public record Times(ZoneId zone) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter DATE_OF_YEAR = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DATED = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT_DATE = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);

    /** "20:07". */
    public String clock(Instant at) {
        return WallClock.words(at, zone);
    }

    /** The day as one says it at {@code now}: "Today, 18:30", "Thursday 4 March, 18:30"; with the year if another. */
    public String dayFrom(Instant at, Instant now) {
        boolean thisYear = at.atZone(zone).getYear() == now.atZone(zone).getYear();
        return isDayOf(at, now) ? "Today, " + clock(at)
                : thisYear ? day(at) : date(at) + " " + at.atZone(zone).getYear() + ", " + clock(at);
    }

    /** The same without the time: "Today", "Thursday 4 March"; with the year if it is another. */
    public String dateFrom(Instant at, Instant now) {
        boolean thisYear = at.atZone(zone).getYear() == now.atZone(zone).getYear();
        return isDayOf(at, now) ? "Today" : thisYear ? date(at) : date(at) + " " + at.atZone(zone).getYear();
    }

    /** Whether both lie on one day of the room. */
    public boolean isDayOf(Instant at, Instant now) {
        return at.atZone(zone).toLocalDate().equals(now.atZone(zone).toLocalDate());
    }

    /** "Thursday 4 March". */
    public String date(Instant at) {
        return DATE.format(at.atZone(zone));
    }

    /** "4 March 2027". */
    public String dateOfYear(Instant at) {
        return DATE_OF_YEAR.format(at.atZone(zone));
    }

    /** "4 March 2027, 18:30". */
    public String dated(Instant at) {
        return WallClock.words(DATED, at, zone);
    }

    /** "Thursday 4 March, 18:30". */
    public String day(Instant at) {
        return WallClock.words(DAY, at, zone);
    }

    /** "Thu 4 Mar, 18:30", for where there is little room. */
    String shortDay(Instant at) {
        return WallClock.words(SHORT_DAY, at, zone);
    }

    /** "Thu 4 Mar 2027". */
    String shortDate(Instant at) {
        return SHORT_DATE.format(at.atZone(zone));
    }

    /** How far apart two {@link #clock} times are for whoever subtracts them; negative if {@code to} is earlier. */
    public static Duration apart(Instant from, Instant to) {
        return Duration.between(from.truncatedTo(ChronoUnit.MINUTES), to.truncatedTo(ChronoUnit.MINUTES));
    }

    /** "4 min after the promised 20:00", "just at the promised 20:00". @param word what was meant, "the promised " */
    public String against(Instant at, Instant meant, String word) {
        Duration late = apart(meant, at);
        return late.isZero() ? "just at " + word + clock(meant)
                : Phrases.length(late.abs()) + (late.isNegative() ? " before " : " after ") + word + clock(meant);
    }

    /** "March 2027". */
    public String month(Instant at) {
        return MONTH.format(at.atZone(zone));
    }

    /** The time on the next full five minutes: an estimate promises no exact minute, and none too early. */
    public String roughly(Instant at) {
        return clock(SaidRange.latest(at));
    }

    /** The next instant that is a full multiple of these minutes, {@code at} itself if it is one. */
    public static Instant next(int minutes, Instant at) {
        long step = minutes * 60L;
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond() + step - 1, step) * step);
    }

    /** "20:05 to 20:20", each to the five minutes outwards; "20:10" if that is one. */
    public String window(Instant from, Instant until) {
        String early = clock(SaidRange.earliest(from));
        String late = roughly(until);
        return early.equals(late) ? late : early + " to " + late;
    }

    /** "20:05 to 20:20": what is said of a candle, as every screen says it. */
    public String said(SaidRange range) {
        return clock(range.from()) + " to " + clock(range.until());
    }

    /** The same for where letters are large: "20:05\u201320:20". */
    public String briefly(SaidRange range) {
        return WallClock.brief(range.from(), zone) + "\u2013" + WallClock.brief(range.until(), zone);
    }
}

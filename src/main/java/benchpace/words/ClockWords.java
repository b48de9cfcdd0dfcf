package benchpace.words;

import benchpace.board.time.ImpossibleClock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Says what is wrong with the computer's clock. */
public final class ClockWords {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private ClockWords() { }

    /** What to do about it, in two sentences. */
    public static String of(ImpossibleClock clock, ZoneId zone) {
        return "The computer's clock says " + DATE.format(clock.told().atZone(zone))
                + ". Set it right, then set up the class.";
    }
}

package benchpace.words;

import benchpace.board.time.ImpossibleClock;
import java.time.ZoneId;

/** Says what is wrong with the computer's clock. */
public final class ClockWords {
    private ClockWords() { }

    /** What to do about it, in two sentences. */
    public static String of(ImpossibleClock clock, ZoneId zone) {
        return "The computer's clock says " + new Times(zone).dateOfYear(clock.told())
                + ". Set it right, then set up the class.";
    }
}

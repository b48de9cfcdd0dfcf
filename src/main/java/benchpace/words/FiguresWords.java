package benchpace.words;

import benchpace.history.Cause;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import java.time.Instant;
import java.util.Optional;

/** Says what one class came to: in its row among the others, and on its look back in the same words. */
public final class FiguresWords {
    private static final String LAST = "The last candle";

    private FiguresWords() { }

    /** "The class ended at 20:04, 4 min after the promised 20:00." */
    public static String ended(Instant ended, Instant promised, Times times) {
        return "The class ended at " + times.clock(ended) + ", " + times.against(ended, promised, "the promised ")
                + ".";
    }

    /** Of a class that is over without a candle. */
    public static String nonePoured() {
        return "No candle was poured.";
    }

    /**
     * "The last candle was judged set at 19:52, 7 min after the planned 19:45." A hand may have told of it after the
     * class was closed, or before by a close that was told late; then that is said with it.
     *
     * @param at    when it was ready; not told if it is only likely
     * @param ended when the class ended, if it did
     */
    public static String ready(ReadyBy by, Instant at, Instant planned, Optional<Instant> ended, Times times) {
        return switch (by) {
            case HAND_TEST, NEXT_STEP -> ready(LAST, by, at, planned, ended, times);
            case NOBODY -> "Nobody told when the last candle was set; it was planned for " + times.clock(planned)
                    + ".";
        };
    }

    /** The same while others are still to be poured, of a candle that a hand told of. */
    public static String readySoFar(ReadyBy by, Instant at, Instant planned, Times times) {
        return ready("Of the candles poured so far the last", by, at, planned, Optional.empty(), times);
    }

    private static String ready(String which, ReadyBy by, Instant at, Instant planned, Optional<Instant> ended,
                                Times times) {
        boolean after = ended.filter(end -> Times.apart(end, at).toMinutes() > 0).isPresent();
        return which + (by == ReadyBy.HAND_TEST ? " was judged set at " : " was set by ") + times.clock(at)
                + (after ? ", after the class ended and " : ", ") + times.against(at, planned, "the planned ") + ".";
    }

    /** What is said where neither a step nor a wait alone held the class. */
    public static String nothingHeld() {
        return "No step and no wait alone held the class.";
    }

    /** What held a class, in the middle of a sentence. */
    public static String what(Cause cause) {
        return switch (cause) {
            case BEGINNING -> "guests who began late";
            case START -> "the class begun late";
            case OPENING -> "openings after all were done";
            case OVERTIME -> "talks beyond their time";
            case TALK, STEP -> "talks";
            case POURED_AGAIN -> "pouring again";
            case CURE -> "the time from the pour to being set";
            case AWAY -> "guests away from the table";
        };
    }

    /** "12 idle minutes in the wait of 8 seats." Empty where nobody had a wait to fill. */
    public static String idle(int seats, int minutes) {
        return seats == 0 ? "" : (minutes == 0 ? "No idle minute" : minutes == 1 ? "One idle minute"
                : minutes + " idle minutes") + " in the wait of " + HistoryWords.seats(seats) + ".";
    }

    /** "5 flags, 4 answered, half of them within 2 min. One was wrong in hindsight." */
    public static String flags(FlagFigures flags) {
        return flags.raised() == 0 ? "Nobody was flagged." : answers(flags)
                + (flags.wrong() == 0 ? "" : flags.raised() == 1 ? " It was wrong in hindsight."
                : flags.wrong() == 1 ? " One was wrong in hindsight."
                : " " + flags.wrong() + " were wrong in hindsight.");
    }

    /** "5 flags, 4 answered, half of them within 2 min." Empty without any. */
    public static String answers(FlagFigures flags) {
        if (flags.raised() == 0) {
            return "";
        }
        String count = flags.raised() == 1 ? "One flag" : flags.raised() + " flags";
        if (flags.answerMinutes().isEmpty()) {
            return count + ", none answered.";
        }
        return count + ", " + (flags.answered() == flags.raised() ? flags.raised() == 1 ? "answered" : "all answered"
                : flags.answered() + " answered") + ", " + (flags.answered() == 1 ? "after " : "half of them within ")
                + minutes(flags.answerMinutes().getAsDouble()) + ".";
    }

    /** "4 of 6 hand tests came within what was said at the pour, in the mean 3 min later than likely." Empty for 0. */
    public static String cures(CureFigures cures) {
        if (cures.judged() == 0) {
            return "";
        }
        int within = cures.inRange();
        String came = cures.judged() == 1
                ? "The one hand test came " + (within == 1 ? "within" : "outside") + " what was said at the pour, "
                : (within == cures.judged() ? "All " + within : (within == 0 ? "None" : within) + " of "
                + cures.judged()) + " hand tests came within what was said at the pour, in the mean ";
        return came + later(cures.meanMinutes().orElseThrow()) + ".";
    }

    /** "3 min later than likely", "just when likely". */
    static String later(double minutes) {
        long whole = Math.round(Math.abs(minutes));
        return whole == 0 ? "just when likely" : Phrases.count((int) whole)
                + (minutes < 0 ? " sooner" : " later") + " than likely";
    }

    static String minutes(double minutes) {
        return Phrases.count((int) Math.round(minutes));
    }
}

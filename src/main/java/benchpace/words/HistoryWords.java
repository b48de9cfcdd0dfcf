package benchpace.words;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.history.PastClass;
import benchpace.history.Punctuality;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Says what one class came to, among others. */
public final class HistoryWords {
    /** Less is not told, on the look back neither. */
    private static final double LEAST_MINUTES = 0.5;
    private static final int MOST_CAUSES = 3;

    private HistoryWords() { }

    /** "Ended at 20:04, 4 min after the promised 20:00." */
    public static String ended(ClassFigures figures, Times times) {
        return "Ended at " + times.clock(figures.ended()) + ", "
                + times.against(figures.ended(), figures.promised(), "the promised ") + ".";
    }

    /** "The last candle was judged set at 19:52, 7 min after the planned 19:45." */
    public static String ready(ClassFigures figures, Times times) {
        String planned = times.clock(figures.plannedReady());
        return figures.ready().map(at -> switch (figures.readyBy()) {
            case HAND_TEST -> "The last candle was judged set at " + times.clock(at) + ", "
                    + times.against(at, figures.plannedReady(), "the planned ") + ".";
            case NEXT_STEP -> "The last candle was set by " + times.clock(at) + ", "
                    + times.against(at, figures.plannedReady(), "the planned ") + ".";
            case NOBODY -> "Nobody told when the last candle was set; it was planned for " + planned + ".";
        }).orElse("No candle was poured.");
    }

    /** "Held by wicks, 6 min; openings after all were done, 4 min." */
    public static String held(PastClass past, ClassFigures figures) {
        if (figures.ready().isEmpty()) {
            return "";
        }
        List<String> told = figures.lost().stream().filter(l -> l.minutes() >= LEAST_MINUTES).limit(MOST_CAUSES)
                .map(l -> what(l, past) + ", " + minutes(l.minutes())).toList();
        return told.isEmpty() ? "Nothing alone held it." : "Held by " + String.join("; ", told) + ".";
    }

    private static String what(Lost lost, PastClass past) {
        return lost.cause() == Cause.STEP ? past.steps().getOrDefault(lost.step(), lost.step()) : what(lost.cause());
    }

    /** In the middle of a sentence. */
    static String what(Cause cause) {
        return switch (cause) {
            case BEGINNING -> "guests who began late";
            case START -> "the class begun late";
            case OPENING -> "openings after all were done";
            case OVERTIME -> "talks beyond their time";
            case TALK, STEP -> "talks";
            case POURED_AGAIN -> "pouring again";
            case CURE -> "candles slower to set than planned";
            case AWAY -> "guests away from the table";
        };
    }

    /** "12 idle minutes in the wait of 8 seats." Empty where nobody had a wait to fill. */
    public static String idle(ClassFigures figures) {
        return figures.idleSeats() == 0 ? "" : (figures.idleMinutes() == 0 ? "No idle minute"
                : figures.idleMinutes() == 1 ? "One idle minute" : figures.idleMinutes() + " idle minutes")
                + " in the wait of " + seats(figures.idleSeats()) + ".";
    }

    /** "5 flags, 4 answered, half of them within 2 min. One was wrong in hindsight." */
    public static String flags(FlagFigures flags) {
        return flags.raised() == 0 ? "Nobody was flagged." : answers(flags)
                + (flags.wrong() == 0 ? "" : flags.wrong() == 1 ? " One was wrong in hindsight."
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

    /** "6 candles tried by hand, 5 of them within the range said, in the mean 3 min later than likely." */
    public static String cures(CureFigures cures) {
        if (cures.judged() == 0) {
            return "";
        }
        String count = cures.judged() == 1 ? "One candle tried by hand, "
                + (cures.inRange() == 1 ? "within" : "outside") + " the range said, "
                : cures.judged() + " candles tried by hand, " + (cures.inRange() == cures.judged() ? "all"
                : cures.inRange() == 0 ? "none" : cures.inRange() + " of them")
                + " within the range said, in the mean ";
        return count + later(cures.meanMinutes().orElseThrow()) + ".";
    }

    /** "3 min later than likely", "just when likely". */
    static String later(double minutes) {
        long whole = Math.round(Math.abs(minutes));
        return whole == 0 ? "just when likely" : Phrases.count((int) whole)
                + (minutes < 0 ? " sooner" : " later") + " than likely";
    }

    /** "2 candles went to the shelf." Empty for none. */
    public static String shelved(int candles) {
        return candles == 0 ? "" : candles == 1 ? "One candle went to the shelf." : candles
                + " candles went to the shelf.";
    }

    /** Why a class has no figures; empty if it has some. */
    public static String missing(PastClass.Standing standing) {
        return switch (standing) {
            case RECKONED -> "";
            case TO_COME -> "What it came to is being worked out.";
            case FAILED -> "What it came to cannot be worked out. The look back shows what can.";
            case LEFT_OPEN -> "Nobody closed it, so it has no end. Close it at the table, and it is looked back on.";
        };
    }

    /** How many are still to be made, in a sentence; empty for none. */
    public static String toCome(long classes) {
        return classes == 0 ? "" : classes == 1 ? "One class is still being worked out; this page adds it by itself."
                : classes + " classes are still being worked out; this page adds them by itself.";
    }

    /** "On time", "Late by 9 min". */
    public static String badge(ClassFigures figures) {
        return figures.punctuality() == Punctuality.LATE
                ? "Late by " + Phrases.length(Duration.ofMinutes(figures.lateMinutes())) : "On time";
    }

    /** As one of those that can be chosen. */
    public static String punctuality(Punctuality punctuality) {
        return switch (punctuality) {
            case ON_TIME -> "On time";
            case LATE -> "Late";
        };
    }

    /** The name of a room: "This room" if it has none. */
    public static String room(String place) {
        return place.isEmpty() ? "This room" : place;
    }

    /** What drawings do without; empty if they show all. @param classes those that are to be drawn */
    public static String leftOut(List<PastClass> classes) {
        List<String> left = new ArrayList<>();
        if (classes.stream().anyMatch(PastClass::demo)) {
            left.add("the demo class");
        }
        if (classes.stream().anyMatch(c -> !c.demo() && c.standing() == PastClass.Standing.LEFT_OPEN)) {
            left.add("classes that nobody closed");
        }
        if (classes.stream().anyMatch(c -> !c.demo() && c.standing() == PastClass.Standing.FAILED)) {
            left.add("classes that cannot be worked out");
        }
        return left.isEmpty() ? "" : "Left out of the drawings: " + Phrases.and(left) + ".";
    }

    /** Why a span of days is none. */
    public static String backwards() {
        return "The last day lies before the first, so no class lies between them.";
    }

    /** Why a day is none. */
    public static String noDay(String typed) {
        return "\"" + typed + "\" is no day, so it chooses nothing. A day is written as 2027-03-04.";
    }

    /** Why a class is neither late nor on time. */
    public static String noPunctuality() {
        return "A class can be asked for as late or as on time, so that choice is left out.";
    }

    /** "8 seats". */
    public static String seats(int seats) {
        return seats == 1 ? "1 seat" : seats + " seats";
    }

    /** "23 classes". */
    public static String classes(int classes) {
        return classes == 1 ? "1 class" : classes + " classes";
    }

    static String minutes(double minutes) {
        return Phrases.count((int) Math.round(minutes));
    }
}

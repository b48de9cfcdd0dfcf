package benchpace.words;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.Lost;
import benchpace.history.PastClass;
import benchpace.history.Punctuality;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Says of past classes which they are, and what held each. What else each came to {@link FiguresWords} says. */
public final class HistoryWords {
    private static final int MOST_CAUSES = 3;

    private HistoryWords() { }

    /** "Held by Wicks, 6 min; openings after all were done, 4 min." Empty if no candle was poured. */
    public static String held(PastClass past, ClassFigures figures) {
        if (figures.ready().isEmpty()) {
            return "";
        }
        List<String> told = figures.lost().stream().filter(Lost::counts).limit(MOST_CAUSES)
                .map(l -> what(l, past) + ", " + FiguresWords.minutes(l.minutes())).toList();
        return told.isEmpty() ? FiguresWords.nothingHeld() : "Held by " + String.join("; ", told) + ".";
    }

    private static String what(Lost lost, PastClass past) {
        return lost.cause() == Cause.STEP ? past.steps().getOrDefault(lost.step(), lost.step())
                : FiguresWords.what(lost.cause());
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

    /** Why nothing is drawn. */
    public static String undrawn() {
        return "What classes show together is drawn once there are two of them or more to compare.";
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
}

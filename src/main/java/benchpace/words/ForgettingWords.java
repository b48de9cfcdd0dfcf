package benchpace.words;

import benchpace.board.view.NamesDue;
import benchpace.board.view.NamesDue.Outlook;
import benchpace.board.view.NamesKept;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What is said of guests that are forgotten, or will be: what goes, what stays, and when. */
public final class ForgettingWords {
    private ForgettingWords() { }

    /** "1 day", "30 days". */
    public static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }

    private static String classes(int count) {
        return count == 1 ? "1 class" : count + " classes";
    }

    // ---- one class

    /** Of a class whose guests are forgotten. @param byAge by the days that were chosen */
    public static String forgotten(Instant at, boolean byAge, Times times) {
        return "The guests of this class are forgotten since " + times.date(at)
                + (byAge ? ", by the days you chose" : "")
                + ": seats go by their numbers, and of notes only that there was one is known.";
    }

    /** Of a class in which somebody has a name, or something is noted. @param due when that goes by itself */
    public static String known(boolean over, Optional<Instant> due, Times times) {
        if (!over) {
            return "Names and notes can be forgotten once the class is over.";
        }
        return due.map(at -> "Names and notes are kept until " + times.date(at) + "; you can forget them now.")
                .orElse("Names and notes are kept until you forget them.");
    }

    /** Of a class in which nobody has a name and nothing is noted. */
    public static String noWords() {
        return "Nobody has a name in this class and nothing is noted, so there is nothing to forget.";
    }

    /** Nobody can be forgotten in the middle of a class. */
    public static String notOver() {
        return "The class is not over, and its screens need the names: close it first. One that has not begun can be "
                + "deleted instead.";
    }

    /** What goes and what stays, where any class is meant. */
    public static String inShort() {
        return "Names, who came together, allergies and notes go; the class, its times and its figures stay. Backups "
                + "and prints that you made are yours to throw away. For one class alone, open its look back.";
    }

    /** What goes with a class's guests, a sentence or two. */
    public static List<String> goes() {
        return List.of("First names, who came with whom, and what is to be minded with somebody, such as an allergy.",
                "What was written in notes, as that may name somebody.",
                "Names and words of candles that have left the shelf.");
    }

    /** What stays. @param candles how many of its candles wait on the shelf @param keeps how long words outlast them */
    public static List<String> stays(int candles, Duration keeps) {
        List<String> stays = new ArrayList<>(List.of(
                "The class with its name, every tap with its seat and time, helpers' initials, and all figures."));
        if (candles > 0) {
            stays.add((candles == 1 ? "One candle waits on the shelf: it keeps the word and name it is"
                    : candles + " candles wait on the shelf: they keep the words and names they are")
                    + " handed out for, until " + days(keeps.toDays()) + " after that.");
        }
        stays.add("Copies that you made yourself: backups, tables and prints. They are yours to throw away.");
        return stays;
    }

    /** What became of it. */
    public static String done(boolean cleared) {
        return cleared ? "The guests are forgotten." : "The guests are forgotten. The file itself is cleared of "
                + "what was written there as soon as no class has to wait for that.";
    }

    // ---- all classes

    /** The rule that is in force. */
    public static String rule(OptionalInt days) {
        return days.isEmpty() ? "Guests' names are kept until you forget them, class by class."
                : "The guests of a class are forgotten " + days(days.getAsInt()) + " after it.";
    }

    /** How many classes are over and still have names, and when the next goes. @param outlook of the rule in force */
    public static String outlook(Optional<Outlook> outlook, int forgotten, Times times) {
        String so = outlook.map(o -> next(o, times)).orElse("");
        String done = forgotten == 0 ? "" : "The guests of " + classes(forgotten)
                + " are forgotten already.";
        return (so + " " + done).strip();
    }

    private static String next(Outlook outlook, Times times) {
        if (!outlook.now().isEmpty()) {
            return "Those of " + classes(outlook.now().size()) + " are forgotten within the hour.";
        }
        return outlook.later().isEmpty() ? "No class is waiting for that."
                : classes(outlook.later().size()) + (outlook.later().size() == 1 ? " waits" : " wait")
                + " for that, the first until " + times.date(outlook.later().get(0).at()) + ".";
    }

    /** When the guests of one class go. */
    public static String when(NamesDue due, Instant now, Times times) {
        return due.at().isAfter(now) ? "on " + times.date(due.at()) : "within the hour";
    }

    /** What choosing those days would do at once, if anything: to be agreed to. */
    public static Optional<String> atOnce(int days, Outlook outlook) {
        int now = outlook.now().size();
        return now == 0 ? Optional.empty() : Optional.of("With " + days(days) + " the guests of " + classes(now)
                + " are forgotten within the hour: " + Phrases.and(named(outlook.now())) + ". That cannot be undone.");
    }

    private static List<String> named(List<NamesDue> classes) {
        List<String> named = new ArrayList<>(classes.stream().limit(3).map(due -> "\"" + due.name() + "\"").toList());
        if (classes.size() > 3) {
            named.add(classes.size() - 3 + " more");
        }
        return named;
    }

    // ---- classes that cannot be read

    /** Why they are told of. @param classes how many hold names, or may */
    public static String unreadable(int classes) {
        return (classes == 1 ? "One class cannot be read back. It is left out, so there is no page on which its guests "
                + "could be forgotten." : classes + " classes cannot be read back. They are left out, so there is no "
                + "page on which their guests could be forgotten.")
                + " Delete a class here, and its names go with it; it cannot be had back.";
    }

    /** What one of them keeps, and until when. @param days after which guests are forgotten */
    public static String unreadable(NamesKept kept, OptionalInt days, Times times) {
        String last = kept.last().map(at -> "Last written to on " + times.date(at) + ". ").orElse("");
        if (kept.stuck()) {
            return last + "Part of it is damaged so that names in it cannot be found: they stay for as long as the "
                    + "class does.";
        }
        String setUpFor = kept.until().filter(at -> !kept.last().equals(kept.until()))
                .map(at -> "It was set up for " + times.date(at) + ". ").orElse("");
        return last + setUpFor + (days.isEmpty() ? "It keeps its guests' names."
                : "Its guests are forgotten " + days(days.getAsInt()) + " after that.");
    }

    /** The file is still to be cleared. */
    public static String toSweep() {
        return "Copies of erased words may still stand in unused parts of the file. They are cleared within the hour, "
                + "or once no class runs.";
    }

    /** Folders beside the file that hold what it held. @param folders their names; at least one */
    public static String kept(List<String> folders) {
        return "The board kept copies of damaged files in " + Phrases.and(folders) + " of that folder. They hold the "
                + "names that were in them: delete them when you need them no more.";
    }
}

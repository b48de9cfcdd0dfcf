package benchpace.words;

import static benchpace.words.Explanation.absent;
import static benchpace.words.Explanation.conflict;

import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanRefusal;
import benchpace.board.plans.PlanTrouble;
import benchpace.plan.Activity;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says of the book of plans why it was not changed, and what is amiss with it. */
public final class PlanWords {
    private static final int LONGEST_NAME = 80;

    private PlanWords() { }

    /** For whoever wanted to change something. */
    public static Explanation of(PlanRefusal why, Times times, Instant now) {
        if (why instanceof PlanRefusal.NoSuchPlan r) {
            return absent("no-such-plan", "There is no such plan",
                    "There is no plan \"" + r.id() + "\". The page Plans lists those there are.");
        } else if (why instanceof PlanRefusal.Deleted r) {
            return absent("plan-deleted", "The plan was deleted", "\"" + r.plan().name()
                    + "\" was deleted. The page Plans can bring it back as it was.");
        } else if (why instanceof PlanRefusal.NoSuchVersion r) {
            return absent("no-such-version", "There is no such version", "\"" + r.plan().name()
                    + "\" has no version " + r.number() + " that can be read.");
        } else if (why instanceof PlanRefusal.Starter r) {
            return conflict("starter-plan", "A starter plan stays as it is", "\"" + r.plan().name()
                    + "\" is a starter plan and stays as it is. Copy it, and change the copy.");
        }
        BookPlan stands = ((PlanRefusal.Stale) why).now();
        return new Explanation(Explanation.Kind.STALE, "changed-meanwhile", "It was changed meanwhile",
                "\"" + stands.plan().name() + "\" was changed elsewhere meanwhile"
                + stands.savedAt().map(at -> " (" + within(times.dayFrom(at, now)) + ")").orElse("")
                + ", so nothing was changed here. Look at it as it is now, then decide.");
    }

    /** The name of a copy, cut to what a name may have. */
    public static String copy(String name) {
        String copy = "Copy of " + name;
        if (copy.length() <= LONGEST_NAME) {
            return copy;
        }
        boolean within = Character.isHighSurrogate(copy.charAt(LONGEST_NAME - 1));
        return copy.substring(0, within ? LONGEST_NAME - 1 : LONGEST_NAME).strip();
    }

    /** "8 seats, 1 h 45 min, 2 candles (Amber soy, Small glass)". */
    public static String what(Plan plan) {
        List<String> candles = plan.candles().stream().map(Candle::name).toList();
        return (plan.usualSeats() == 1 ? "1 seat" : plan.usualSeats() + " seats") + ", "
                + Phrases.length(plan.onPaper(plan.usualSeats())) + ", " + (candles.isEmpty() ? "no candle named"
                : (candles.size() == 1 ? "1 candle (" : candles.size() + " candles (")
                + String.join(", ", candles) + ")");
    }

    /** "Last ran Thursday 4 March, 18:30; next Thursday 11 March, 18:30." Empty if neither. */
    public static String used(Optional<Instant> lastRan, Optional<Instant> next, Times times, Instant now) {
        List<String> used = Stream.concat(lastRan.map(at -> "last ran " + within(times.dayFrom(at, now))).stream(),
                next.map(at -> "next " + within(times.dayFrom(at, now))).stream()).toList();
        return used.isEmpty() ? "" : Phrases.sentence(String.join("; ", used)) + ".";
    }

    /** "Version 3, saved today, 18:02, on Counter tablet." @param where the device's name; may be empty */
    public static String saved(int version, Instant at, String where, Times times, Instant now) {
        return "Version " + version + ", saved " + within(times.dayFrom(at, now))
                + (where.isEmpty() ? "" : ", " + where) + ".";
    }

    /** "A class ran with it on 4 March 2027 and 11 March 2027." Empty if none. */
    public static String ran(List<Instant> classes, Times times) {
        List<String> days = classes.stream().sorted().map(times::dateOfYear).distinct().toList();
        return days.isEmpty() ? "" : "A class ran with it on " + Phrases.and(days) + ".";
    }

    /** "led, 6 min". */
    public static String step(Step step) {
        return (step.led() ? "led" : "free") + ", " + Phrases.length(step.planned());
    }

    /** "180 g of Soy in Tumbler". */
    public static String candle(Candle candle) {
        return Math.round(candle.fillGrams()) + " g of " + candle.wax().name() + " in " + candle.vessel().name();
    }

    /** "12 min, places for 2". */
    public static String activity(Activity activity) {
        return Phrases.length(activity.typical()) + ", places for " + activity.places();
    }

    /** "The plan now also has, of steps: Blend and Trim." Empty if there are none. @param kind in the plural */
    public static String gone(String kind, List<String> names) {
        return names.isEmpty() ? "" : "The plan now also has, of " + kind + ": " + Phrases.and(names) + ".";
    }

    /** In the middle of a sentence. */
    private static String within(String day) {
        return day.startsWith("Today") ? "today" + day.substring("Today".length()) : day;
    }

    /** For whoever watches over the board. */
    public static String of(PlanTrouble trouble) {
        if (trouble instanceof PlanTrouble.NotWritten t) {
            return "Plan \"" + t.id() + "\" is saved, but its file plans/" + t.file()
                    + " could not be written; it is tried again with the next change and at the next start.";
        }
        PlanTrouble.Unreadable t = (PlanTrouble.Unreadable) trouble;
        return "Version " + t.version() + " of plan \"" + t.id() + "\" cannot be read back; "
                + (t.instead() == 0 ? "no other version can be, so it is left out."
                : "version " + t.instead() + " stands for it.");
    }
}

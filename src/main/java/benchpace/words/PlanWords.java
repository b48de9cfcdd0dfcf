package benchpace.words;

import static benchpace.words.Explanation.absent;
import static benchpace.words.Explanation.conflict;

import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanRefusal;
import benchpace.board.plans.PlanTrouble;
import java.time.Instant;

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
                + stands.savedAt().map(at -> " (" + times.dayFrom(at, now) + ")").orElse("")
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

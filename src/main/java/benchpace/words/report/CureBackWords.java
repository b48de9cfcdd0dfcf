package benchpace.words.report;

import benchpace.report.CureJudged;
import benchpace.words.Phrases;
import java.util.List;

/** What was said of candles at their pour, against their hand test. */
public final class CureBackWords {
    private CureBackWords() { }

    /** "4 of 6 hand tests came within what was said at the pour."; empty without any. */
    public static String all(List<CureJudged> cures) {
        long within = cures.stream().filter(CureJudged::withinRange).count();
        return cures.isEmpty() ? "" : cures.size() == 1
                ? "The one hand test came " + (within == 1 ? "within" : "outside") + " what was said at the pour."
                : (within == cures.size() ? "All " + within : within == 0 ? "None" : String.valueOf(within))
                + (within == cures.size() ? "" : " of " + cures.size()) + " hand tests came within what was said at "
                + "the pour.";
    }

    /** "8 min later", "3 min sooner", "just then"; whole minutes. */
    public static String against(CureJudged cure) {
        long minutes = Math.round(Math.abs(cure.laterMinutes()));
        return minutes == 0 ? "just then" : Phrases.count((int) minutes)
                + (cure.laterMinutes() > 0 ? " later" : " sooner");
    }

    /** "yes", "no". */
    public static String within(CureJudged cure) {
        return cure.withinRange() ? "yes" : "no";
    }
}

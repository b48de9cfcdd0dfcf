package benchpace.words.report;

import benchpace.board.view.FiguresMaker;
import benchpace.report.CureJudged;
import benchpace.words.FiguresWords;
import benchpace.words.Phrases;
import java.util.List;

/** What was said of candles at their pour, against their hand test. */
public final class CureBackWords {
    private CureBackWords() { }

    /** "4 of 6 hand tests came within what was said at the pour, in the mean 3 min later than likely."; or empty. */
    public static String all(List<CureJudged> cures) {
        return FiguresWords.cures(FiguresMaker.cures(cures));
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

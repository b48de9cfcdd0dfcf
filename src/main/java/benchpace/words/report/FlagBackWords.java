package benchpace.words.report;

import benchpace.board.view.FiguresMaker;
import benchpace.pace.Level;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.Hindsight.Verdict;
import benchpace.words.HistoryWords;
import benchpace.words.Phrases;
import java.util.ArrayList;
import java.util.List;

/** How flags were answered, and whether they were right. */
public final class FlagBackWords {
    private FlagBackWords() { }

    public static String level(Level level) {
        return level == Level.BEHIND ? "behind" : "slipping";
    }

    /** "after 3 min". */
    public static String answered(FlagSpan flag) {
        return flag.answered() ? "after " + HeldWords.minutes(flag.answeredMinutes() - flag.fromMinutes())
                : "not answered";
    }

    /** "3 flags, all answered, half of them within 2 min."; empty without any. */
    public static String answers(List<FlagSpan> flags) {
        return HistoryWords.answers(FiguresMaker.flags(flags, 0));
    }

    /** "Looking back, 2 were right, 1 was wrong.", of a single flag "it was right"; empty without any. */
    public static String verdicts(Hindsight hindsight) {
        List<String> counts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            int count = hindsight.count(verdict);
            if (count > 0) {
                String were = count == 1 ? " was " : " were ";
                counts.add((hindsight.flags().size() == 1 ? "it was " : count + were) + switch (verdict) {
                    case RIGHT -> "right";
                    case WRONG -> "wrong";
                    case OPEN -> "neither for certain";
                });
            }
        }
        return counts.isEmpty() ? "" : "Looking back, " + Phrases.and(counts) + ".";
    }

    /** "right: the class waited for it". */
    public static String reason(Hindsight.Judged judged) {
        String after = HeldWords.minutes(judged.afterMinutes());
        return switch (judged.reason()) {
            case HELD -> "right: the class waited for it";
            case LATE_POUR -> "right: it poured long after the others";
            case STAYED -> "right: it was at it for " + after + " more";
            case UNFINISHED -> "open: it was never done";
            case UNTICKED -> "wrong: it was done, and only not tapped";
            case HELPED -> "open: somebody went there, and it was done " + after + " after";
            case SOON_DONE -> "wrong: it was done " + after + " after, by itself";
        };
    }

    /** "Seat 4 at Set the wick was not flagged: it took 16 min, the middle of the table 4 min." */
    public static String missed(Hindsight.Missed missed, List<String> steps) {
        return "Seat " + missed.seat() + " at " + steps.get(missed.step()) + " was not flagged: it took "
                + HeldWords.minutes(missed.tookMinutes()) + ", the middle of the table "
                + HeldWords.minutes(missed.middleMinutes()) + ".";
    }
}

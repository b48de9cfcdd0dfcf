package benchpace.words.report;

import benchpace.board.view.FiguresMaker;
import benchpace.pace.Level;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.Hindsight.Verdict;
import benchpace.words.FiguresWords;
import benchpace.words.Phrases;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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

    /** "3 flags, all answered, half of them within 2 min. One was wrong in hindsight."; "Nobody was flagged." */
    public static String all(List<FlagSpan> flags, Optional<Hindsight> hindsight) {
        return FiguresWords.flags(FiguresMaker.flags(flags, hindsight.map(h -> h.count(Verdict.WRONG)).orElse(0)));
    }

    /** "3 flags, all answered, half of them within 2 min."; empty without any. */
    public static String answers(List<FlagSpan> flags) {
        return FiguresWords.answers(FiguresMaker.flags(flags, 0));
    }

    /**
     * What those were that were not wrong: "Of the others 2 were right and 1 was neither for certain.", "Looking back,
     * 3 were right.", of a single flag "Looking back, it was right."; empty if there are none.
     */
    public static String verdicts(Hindsight hindsight) {
        List<String> counts = Stream.of(Verdict.RIGHT, Verdict.OPEN).filter(v -> hindsight.count(v) > 0)
                .map(v -> verdict(v, hindsight.count(v), hindsight.flags().size() == 1)).toList();
        return counts.isEmpty() ? "" : (hindsight.count(Verdict.WRONG) > 0 ? "Of the others " : "Looking back, ")
                + Phrases.and(counts) + ".";
    }

    private static String verdict(Verdict verdict, int count, boolean single) {
        return (single ? "it was " : count == 1 ? "1 was " : count + " were ")
                + (verdict == Verdict.RIGHT ? "right" : "neither for certain");
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

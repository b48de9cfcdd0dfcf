package benchpace.words;

import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Says what of a class cannot be worked out just now. */
public final class MissingWords {
    private MissingWords() { }

    /** "The plan of the wait cannot be worked out just now." Empty if nothing is missing. */
    public static String fact(Missing missing) {
        List<String> what = missing.models().stream().map(MissingWords::what).toList();
        return what.isEmpty() ? "" : Phrases.sentence(Phrases.and(what)) + " cannot be worked out just now.";
    }

    /** The same for those who run the class, with what that means for them. */
    public static String sentence(Missing missing) {
        String fact = fact(missing);
        return fact.isEmpty() ? "" : fact + " Taps and everything else go on.";
    }

    /**
     * A sentence for each class that cannot be read, and for each of which something is missing, for whoever watches
     * the board.
     */
    public static List<String> told(Collection<String> unreadable, Map<String, Missing> missing) {
        return Stream.concat(
                unreadable.stream()
                        .map(id -> "Class " + id + " cannot be read back and is left out; the log says why."),
                missing.entrySet().stream().map(e -> "Class " + e.getKey() + ": " + fact(e.getValue()))).toList();
    }

    /** The same of unreadable classes for the instructor, who cannot tell them by their ids. @param classes how many */
    public static String leftOut(int classes) {
        return classes == 0 ? "" : (classes == 1 ? "One class cannot be read back and is"
                : classes + " classes cannot be read back and are") + " left out; the log says why.";
    }

    /** A sentence for each of what is due to be erased and could not be. @param what as it is called, in the plural */
    public static List<String> notErased(List<String> what) {
        return what.stream().map(w -> "The " + w + " that are due to be erased cannot be; it is tried again.").toList();
    }

    /** In the middle of a sentence. */
    private static String what(Model model) {
        return switch (model) {
            case WAIT -> "the plan of the wait";
            case CURE -> "the candles' times";
            case CUT -> "the drawing of a candle cut open";
            case PACE -> "everybody's pace";
            case LINES -> "the pace lines";
            case OFFLINE -> "what a page needs to go on without the board";
            case WORDS -> "some of what this page says";
            case HELD -> "what held the class";
            case TOOK -> "what each step took";
            case FLAGS -> "who was flagged";
            case IDLE -> "what seats had to do in their wait";
            case CURES -> "what was said of the candles against the hand tests";
            case HINDSIGHT -> "whether the flags were right";
            case WHAT_IF -> "what would have saved time";
            case LESSON -> "what past classes teach about the steps";
            case PLAUSIBILITY -> "whether a temperature can be true";
        };
    }
}

package benchpace.words;

import benchpace.board.playback.Mark;
import benchpace.live.ClassEvent;
import benchpace.plan.Plan;
import java.time.Instant;
import java.util.Locale;

/** What is said of an evening that is played back. */
public final class PlaybackWords {
    /** The mark that every screen of it bears. */
    public static final String MARK = "Played back";
    private static final String NO_LONGER = "This evening is no longer played back. It can be opened again.";

    private PlaybackWords() { }

    /** To whoever taps in it, and to programs that would change it. */
    public static Explanation nothingToTap() {
        return new Explanation(Explanation.Kind.CONFLICT, "played-back", "This is an evening played back",
                "This is an evening played back: it can be watched, and nothing can be tapped or changed in it.");
    }

    /** It was ended, its class was changed or deleted, or the board was started anew. */
    public static Explanation noLonger() {
        return new Explanation(Explanation.Kind.ABSENT, "no-such-playback", "Nothing is played back here", NO_LONGER);
    }

    /** Of a class of which there is no evening yet. */
    public static Explanation notOver() {
        return new Explanation(Explanation.Kind.CONFLICT, "not-over", "This class is not over",
                "This class is not over yet. It can be watched once it is closed.");
    }

    /** "Thursday 4 March 2027": which evening it is. */
    public static String when(Instant startsAt, Times times) {
        return times.dateOfYear(startsAt);
    }

    /** Whether it is somebody's remark, which takes longer to read than anything that happened. */
    public static boolean isNote(Mark mark) {
        return mark instanceof Mark.Happened happened && happened.event() instanceof ClassEvent.ClassNoted;
    }

    /** "Seat 4 is behind at Wicks", "Opened Wicks". @param plan the class's */
    public static String of(Plan plan, Mark mark) {
        if (mark instanceof Mark.Flagged flagged) {
            return "Seat " + flagged.seat() + (flagged.behind() ? " is behind" : " slips")
                    + (flagged.step().isEmpty() ? "" : " at " + flagged.step());
        }
        if (isNote(mark)) {
            return ((ClassEvent.ClassNoted) ((Mark.Happened) mark).event()).text();
        }
        String words = EventWords.of(plan, ((Mark.Happened) mark).event());
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}

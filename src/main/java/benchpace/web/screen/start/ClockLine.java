package benchpace.web.screen.start;

import benchpace.board.ClassBoard;
import benchpace.board.ClockBoard;
import benchpace.board.time.ClockChoice;
import benchpace.board.time.ClockDisagreement;
import benchpace.live.Era;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What an instructor is told when the computer's clock and the board's differ, and what can be answered with one tap.
 *
 * @param words   empty while there is nothing to tell
 * @param answers in the order to show them; may be empty
 */
public record ClockLine(String words, List<Answer> answers) {
    public static final ClockLine NOTHING = new ClockLine("", List.of());
    private static final Duration SOME_DAYS = Duration.ofDays(2);

    /**
     * A button.
     *
     * @param choice  as {@code POST /api/clock} takes it
     * @param classId of the class it is about; empty for all
     * @param ahead   how far the time that it stands for is ahead of the page's, ms; empty if it stands for none
     */
    public record Answer(String choice, String classId, String label, Optional<Long> ahead) { }

    public ClockLine {
        answers = List.copyOf(answers);
    }

    /** For all classes. */
    public static ClockLine of(ClockBoard clocks, Times times) {
        return clocks.disagreement().map(d -> of(d, Duration.ZERO, clocks, times))
                .orElseGet(() -> Era.isPossibleNow(clocks.board()) ? NOTHING : new ClockLine(
                        impossible(clocks.board(), times) + " Set the computer's clock right.", List.of()));
    }

    /** For the page of a class. */
    public static ClockLine of(ClockBoard clocks, ClassBoard board, Times times) {
        Duration ahead = board.ahead();
        return clocks.disagreement().map(d -> of(d, ahead, clocks, times))
                .orElseGet(() -> board.tellsAhead() ? ahead(clocks, board, ahead, times) : NOTHING);
    }

    /** One sentence for a list of classes; empty if there is nothing to tell. */
    public static String sentence(ClockBoard clocks, ClassBoard board, Times times) {
        return !board.tellsAhead() ? "" : "Its times reach to "
                + moment(board.live().lastRecordedAt(), clocks.board(), times) + ", later than now"
                + (Era.isPossibleNow(clocks.board()) ? ": its table asks which clock is right." : ".");
    }

    private static ClockLine of(ClockDisagreement d, Duration classAhead, ClockBoard clocks, Times times) {
        List<Answer> answers = new ArrayList<>();
        long board = -seconds(classAhead) * 1000;
        long computer = board + seconds(d.ahead()) * 1000;
        answers.add(answer(ClockChoice.BOARD, "The board is right", board));
        if (!d.possible()) {
            return new ClockLine(impossible(clocks.computer(), times) + " Classes go on by the board's time: set the "
                    + "computer's clock right.", answers);
        }
        answers.add(answer(ClockChoice.COMPUTER, "The computer is right", computer));
        if (d.slept()) {
            answers.add(answer(ClockChoice.SLEPT, "The computer was asleep", computer));
        }
        String way = d.ahead().isNegative() ? " behind the board's time" : " ahead of the board's time";
        return new ClockLine("Since " + times.clock(d.since()) + " the computer's clock is " + far(d.ahead()) + way
                + ". " + (d.slept() ? "Was it set, or was the computer asleep?" : "Which is right?"), answers);
    }

    private static ClockLine ahead(ClockBoard clocks, ClassBoard board, Duration ahead, Times times) {
        if (!Era.isPossibleNow(clocks.board())) {
            return new ClockLine(impossible(clocks.board(), times) + " This class goes on by its own time: set the "
                    + "computer's clock right.", List.of());
        }
        String last = moment(board.live().lastRecordedAt(), clocks.board(), times);
        return new ClockLine("This class has times up to " + last + ", later than the computer's clock. It goes on "
                + "by its own time, " + far(ahead) + " ahead.",
                List.of(new Answer("computer", board.id(), "The computer is right: move them back", Optional.empty()),
                        new Answer("board", board.id(), "Leave them", Optional.empty())));
    }

    private static Answer answer(ClockChoice choice, String label, long ahead) {
        return new Answer(choice.name().toLowerCase(Locale.ROOT), "", label, Optional.of(ahead));
    }

    private static String impossible(Instant told, Times times) {
        return "The computer's clock says " + times.dated(told) + ", which cannot be.";
    }

    private static String moment(Instant at, Instant now, Times times) {
        return times.isDayOf(at, now) ? times.clock(at) : times.dated(at);
    }

    /** "2 h 5 min", "40 seconds", "365 days". */
    static String far(Duration apart) {
        Duration off = apart.abs();
        return off.compareTo(Duration.ofMinutes(1)) < 0 ? seconds(off) + " seconds"
                : off.compareTo(SOME_DAYS) < 0 ? Phrases.length(off) : Math.round(off.toHours() / 24.0) + " days";
    }

    private static long seconds(Duration apart) {
        return Math.round(apart.toMillis() / 1000.0);
    }
}

package benchpace.web.screen.wait;

import benchpace.board.attempt.Model;
import benchpace.board.view.ClassView;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.ChangeView;
import benchpace.web.screen.shell.Parts;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.UndoButton;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.ChangeWords;
import benchpace.words.MissingWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import benchpace.words.WaitWords;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All that the page of the wait shows at first. @param parts the live parts, as the stream sends them later */
public record WaitPage(Shell shell, String name, String classId, boolean instructor, UndoButton undo, Parts parts) {
    /** So many fit beside the strips. */
    private static final int CALLS = 6;
    /** How long a change is shown unfolded: long enough to come back to the tablet once. */
    private static final Duration NEWS = Duration.ofMinutes(3);

    /** What is called out next. */
    public record Calls(List<WaitCall> list) { }

    /** The activities. @param instructor may change them */
    public record Cards(List<WaitCard> list, boolean instructor) { }

    /**
     * What goes beside the strips.
     *
     * @param idle    minutes with nothing to do, planned against unplanned
     * @param leisure one line a seat at leisure
     * @param changes     what guests were told and does not hold, the newest first
     * @param changesId   names the newest of them, so that folding it by hand holds until another comes
     * @param changesOpen whether the newest is so new that it is shown unasked
     */
    public record Notes(String idle, List<String> leisure, List<String> changes, String changesId,
                        boolean changesOpen, List<String> warnings) { }

    public static WaitPage of(Shell shell, ClassView view, Viewer viewer, Times times, Parts parts) {
        return new WaitPage(shell, view.name(), view.id(), viewer.instructor(), UndoButton.of(view, viewer, times),
                parts);
    }

    public static Calls calls(ClassView view, Times times) {
        return new Calls(WaitCall.all(view, times).stream().limit(CALLS).toList());
    }

    public static Cards cards(ClassView view, Viewer viewer, Times times) {
        return new Cards(WaitCard.all(view, times), viewer.instructor());
    }

    public static String empty(ClassView view) {
        if (view.waiting().activities().isEmpty()) {
            return "This plan has no activities for the wait.";
        }
        if (view.missing().has(Model.WAIT)) {
            return "There is no plan to show just now.";
        }
        return switch (view.stage()) {
            case CLOSED -> "This class is closed.";
            case BEFORE, RUNNING -> "The wait is planned once the first candle is poured.";
            case SETTING, FINISHING -> "Nobody waits any more.";
        };
    }

    /** What it would be without the plan, as long as that makes a difference. */
    private static String instead(WaitView.Idle idle) {
        return idle.unplanned() == idle.planned() ? "" : " If from now on it went first come, first served: "
                + Phrases.count(idle.unplanned()) + ", at most " + Phrases.count(idle.mostUnplanned())
                + (idle.unplanned() < idle.planned()
                ? ", but a label, the clean-up, a break or something told would be missed." : ".");
    }

    public static Notes notes(ClassView view, Times times) {
        WaitView wait = view.waiting();
        WaitView.Idle idle = wait.idle();
        String words = wait.strips().isEmpty() ? "" : "With nothing to do in the whole wait: "
                + Phrases.count(idle.planned()) + " over all seats, at most " + Phrases.count(idle.mostPlanned())
                + " for one" + (idle.soFar() > 0 && idle.soFar() < idle.planned()
                ? "; so far it was " + Phrases.count(idle.soFar()) : "") + "." + instead(idle);
        List<String> leisure = wait.leisure().stream().map(o -> "Seat " + o.seat() + " until " + times.clock(o.until())
                + (o.offers().isEmpty() ? ": nothing fits." : ": " + String.join(", ", o.offers()) + ".")).toList();
        List<String> changes = wait.changes().stream().map(c -> times.clock(c.at()) + " "
                + ChangeWords.sentence(c, times)).toList();
        Optional<Instant> newest = wait.changes().stream().map(ChangeView::at).findFirst();
        return new Notes(words, leisure, changes, "wait-changes-" + newest.map(Instant::getEpochSecond).orElse(0L),
                newest.filter(at -> at.plus(NEWS).isAfter(view.now())).isPresent(), warnings(view));
    }

    private static List<String> warnings(ClassView view) {
        return Stream.concat(Stream.of(MissingWords.sentence(view.missing())).filter(words -> !words.isEmpty()),
                WaitWords.warnings(view.waiting()).stream()).toList();
    }
}

package benchpace.web.screen.instructor;

import benchpace.board.cooling.SaidRange.Phase;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.Stage;
import benchpace.plan.StepKind;
import benchpace.web.screen.shell.Counter;
import benchpace.web.screen.wall.WallMain;
import benchpace.words.CureWords;
import benchpace.words.MissingWords;
import benchpace.words.Phrases;
import benchpace.words.StageWords;
import benchpace.words.Times;
import benchpace.words.TurnWords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the class is doing, as the instructor and the helpers read it.
 *
 * @param at      a small line above the heading: which step of how many
 * @param planned how long the plan gives it; empty if nothing is open
 * @param count   how long it has been so, or when the class starts
 * @param step    the id of the step that is counted; empty if none
 * @param waitFor who is not done, in words; empty if nobody or if it does not matter
 * @param apart   a line each for those who are at a step before it, or whose candles still set
 * @param turns   a line for each step at which seats wait for their turn
 * @param cure    how the wait stands, in words; empty before the first pour
 * @param ready   counts down to when the first candle can be tried
 * @param quiet   that no tap has come for long, counting; empty if all is well
 * @param missing what cannot be computed just now, in a sentence; empty if all can
 */
public record NowPanel(String at, String planned, String heading, Optional<Counter> count, String say, String caution,
                       String step, int done, int of, String waitFor, List<String> apart, List<String> turns,
                       String cure, Optional<Counter> ready, String basis, Optional<Counter> quiet, String missing) {
    private static final int NAMED_SEATS = 8;
    /** More steps than these are not told apart. */
    private static final int MOST_STEPS = 2;

    public static NowPanel of(ClassView view, Times times) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent() && now.of() > 0;
        return new NowPanel(at(view, times), planned(view), StageWords.heading(view), count(view, times), now.say(),
                now.caution(), now.step().map(ClassView.StepView::id).orElse(""), now.done(), tapped ? now.of() : 0,
                tapped ? waitFor(now) : "", apart(now, tapped), turns(view), cure(view, times), ready(view),
                CureWords.basis(view.cure()), quiet(view, times), MissingWords.sentence(view.missing()));
    }

    /** Where the class is, and how long the plan gives the step. */
    public String kicker() {
        return planned.isEmpty() ? at : at + ", " + planned;
    }

    private static String planned(ClassView view) {
        return view.stage() == Stage.BEFORE || view.stage() == Stage.CLOSED ? ""
                : view.present().step().map(step -> "planned " + Phrases.length(step.planned())).orElse("");
    }

    private static String at(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> "Starts at " + times.clock(view.startsAt());
            case CLOSED -> "This class is closed";
            default -> view.present().step().map(step -> {
                int index = view.steps().stream().map(ClassView.StepView::id).toList().indexOf(step.id());
                return "Step " + (index + 1) + " of " + view.steps().size();
            }).orElse("");
        };
    }

    private static Optional<Counter> count(ClassView view, Times times) {
        if (view.stage() == Stage.BEFORE) {
            String at = "at " + times.clock(view.startsAt());
            return Optional.of(Counter.to(view.startsAt(), "in", "time to begin", at));
        }
        return view.stage() == Stage.CLOSED ? Optional.empty()
                : view.present().since().map(at -> Counter.since(at, times));
    }

    private static String waitFor(NowView now) {
        if (now.notDone().isEmpty() || now.notDone().size() == now.of()) {
            return "";
        }
        return "Not done: " + Phrases.seats(now.notDone(), NAMED_SEATS) + ".";
    }

    /** "Seat 6 starts at Choose a tin." "Seats 3 and 4 are still setting." */
    private static List<String> apart(NowView now, boolean tapped) {
        List<String> apart = new ArrayList<>();
        List<Integer> earlier = now.earlier().stream().flatMap(e -> e.seats().stream()).sorted().toList();
        if (now.earlier().size() > MOST_STEPS) {
            apart.add(Phrases.sentence(Phrases.seats(earlier, NAMED_SEATS)) + " are at earlier steps.");
        } else {
            now.earlier().forEach(e -> apart.add(Phrases.sentence(Phrases.seats(e.seats(), NAMED_SEATS))
                    + verb(e) + e.name() + "."));
        }
        if (tapped && !now.setting().isEmpty()) {
            apart.add(Phrases.sentence(Phrases.seats(now.setting(), NAMED_SEATS))
                    + (now.setting().size() == 1 ? " is" : " are") + " still setting.");
        }
        return List.copyOf(apart);
    }

    private static List<String> turns(ClassView view) {
        return view.turns().stream().map(turns -> TurnWords.line(turns, view.now())).filter(line -> !line.isEmpty())
                .toList();
    }

    private static String verb(ClassView.EarlierView earlier) {
        boolean one = earlier.seats().size() == 1;
        return earlier.starts() ? one ? " starts at " : " start at " : one ? " is at " : " are at ";
    }

    private static String cure(ClassView view, Times times) {
        ClassView.CureView cure = view.cure();
        if (cure.poured() == 0 || view.stage() == Stage.CLOSED) {
            return "";
        }
        String when = CureWords.all(view, times);
        boolean counted = view.present().step().filter(s -> s.kind() == StepKind.POUR).isPresent();
        return (cure.allPoured() || counted ? "" : cure.poured() + " of " + cure.of() + " poured. ")
                + (when.isEmpty() ? "" : when + ".");
    }

    private static Optional<Counter> ready(ClassView view) {
        return WallMain.waits(view) ? view.cure().range().filter(r -> r.phase(view.now()) == Phase.BEFORE)
                .map(Counter::triedAlone) : Optional.empty();
    }

    private static Optional<Counter> quiet(ClassView view, Times times) {
        Optional<Instant> last = view.silence().map(view.now()::minus);
        return last.map(at -> Counter.since(at, times));
    }
}

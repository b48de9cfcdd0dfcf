package benchpace.web.screen;

import benchpace.board.ClassView;
import benchpace.board.ClassView.NowView;
import benchpace.board.ClassView.Stage;
import java.time.Instant;
import java.util.Optional;

/**
 * What the class is doing, as the instructor and the helpers read it.
 *
 * @param kicker  a small line above the heading: which step of how many
 * @param count   how long it has been so, or when the class starts
 * @param step    the id of the step that is counted; empty if none
 * @param waitFor who is not done, in words; empty if nobody or if it does not matter
 * @param cure    how the wait stands, in words; empty before the first pour
 * @param ready   counts down to the last candle
 * @param quiet   that no tap has come for long, counting; empty if all is well
 */
public record NowPanel(String kicker, String heading, Optional<Counter> count, String say, String caution,
                       String step, int done, int of, String waitFor, String cure, Optional<Counter> ready,
                       String basis, Optional<Counter> quiet) {
    private static final int NAMED_SEATS = 8;

    static NowPanel of(ClassView view, Times times) {
        NowView now = view.present();
        boolean tapped = now.step().filter(s -> s.kind().needsTap()).isPresent() && now.of() > 0;
        return new NowPanel(kicker(view, times), now.heading(), count(view, times), now.say(), now.caution(),
                now.step().map(ClassView.StepView::id).orElse(""), now.done(), tapped ? now.of() : 0,
                tapped ? waitFor(now) : "", cure(view, times), ready(view, times),
                CureWords.basis(view.cure()), quiet(view, times));
    }

    private static String kicker(ClassView view, Times times) {
        return switch (view.stage()) {
            case BEFORE -> "Starts at " + times.clock(view.startsAt());
            case CLOSED -> "This class is closed";
            default -> view.present().step().map(step -> {
                int index = view.steps().stream().map(ClassView.StepView::id).toList().indexOf(step.id());
                return "Step " + (index + 1) + " of " + view.steps().size() + ", planned "
                        + Phrases.length(step.planned());
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
        if (now.notDone().isEmpty()) {
            return "Everybody is done.";
        }
        if (now.done() == 0) {
            return "";
        }
        return "Not done: " + Phrases.seats(now.notDone(), NAMED_SEATS) + ".";
    }

    private static String cure(ClassView view, Times times) {
        ClassView.CureView cure = view.cure();
        if (cure.poured() == 0 || view.stage() == Stage.CLOSED) {
            return "";
        }
        if (cure.poured() < cure.of()) {
            return cure.poured() + " of " + cure.of() + " poured" + cure.first()
                    .map(w -> "; the first is ready about " + times.roughly(w) + ".").orElse(".");
        }
        return cure.all().map(w -> "Last candle ready about " + times.roughly(w) + ".").orElse("");
    }

    private static Optional<Counter> ready(ClassView view, Times times) {
        return WallMain.waits(view)
                ? view.cure().all().map(w -> Counter.ready(w, "left", "try them", times)) : Optional.empty();
    }

    private static Optional<Counter> quiet(ClassView view, Times times) {
        Optional<Instant> last = view.silence().map(view.now()::minus);
        return last.map(at -> Counter.since(at, times));
    }
}

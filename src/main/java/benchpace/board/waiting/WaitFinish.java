package benchpace.board.waiting;

import benchpace.breaks.SetJudgement;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What lies between the hand test of a candle and its wrapping: the plan's finish steps but the last, which is the
 * wrapping itself. A plan with a single finish step is taken to trim in it.
 */
final class WaitFinish {
    private final LiveClass live;
    private final Progress progress;
    private final List<Step> before;
    private final Optional<Step> wrapping;

    WaitFinish(LiveClass live) {
        this.live = live;
        this.progress = live.progress();
        List<Step> finish = live.plan().steps().stream().filter(s -> s.kind() == StepKind.FINISH).toList();
        this.wrapping = finish.size() < 2 ? Optional.empty() : Optional.of(finish.get(finish.size() - 1));
        this.before = wrapping.isEmpty() ? finish : finish.subList(0, finish.size() - 1);
    }

    /** Whether the step that wraps the candle was tapped. */
    boolean wrapped(Seat owner) {
        return wrapping.filter(s -> owner.finished(s.id())).isPresent();
    }

    SetJudgement handTest(Seat owner) {
        Optional<Instant> judged = progress.settledAt(owner).or(() -> firstFinish(owner));
        Duration planned = before.stream().map(Step::planned).reduce(Duration.ZERO, Duration::plus);
        return judged.<SetJudgement>map(at -> new SetJudgement.Given(at, wrapFrom(owner, at), planned))
                .orElseGet(() -> new SetJudgement.Awaited(planned));
    }

    /** For a plan without a cure step: nobody trims liquid wax. */
    private Optional<Instant> firstFinish(Seat owner) {
        return before.stream().flatMap(s -> Optional.ofNullable(owner.finishes().get(s.id())).stream())
                .map(Seat.Finish::at).filter(at -> Progress.ofThisWax(owner, at)).min(Comparator.naturalOrder());
    }

    /** By the taps and, as taps are optional, by the planned minutes of a step that is open. */
    private Optional<Instant> wrapFrom(Seat owner, Instant judged) {
        Instant from = judged;
        for (Step step : before) {
            Seat.Finish tap = owner.finishes().get(step.id());
            if (tap != null) {
                from = later(from, tap.at());
            } else if (progress.isOpen(step)) {
                from = later(from, live.openedAt(step.id()).orElse(from)).plus(step.planned());
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(from);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}

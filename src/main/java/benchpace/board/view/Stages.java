package benchpace.board.view;

import benchpace.board.view.ClassView.Stage;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Tells how far a class is as a whole, without any forecast, so that a list of many classes costs little. */
public final class Stages {
    private Stages() { }

    public static Stage of(LiveClass live, Instant now) {
        if (live.closedAt().isPresent()) {
            return Stage.CLOSED;
        }
        if (!begun(live, now)) {
            return Stage.BEFORE;
        }
        Progress progress = live.progress();
        List<Standing> active = live.seats().stream().filter(Seat::makesCandle).map(progress::standing).toList();
        boolean allPast = !active.isEmpty() && active.stream().allMatch(s -> pastPour(live.plan(), s));
        if (!allPast) {
            return Stage.RUNNING;
        }
        return active.stream().map(Stages::kind).anyMatch(k -> k == StepKind.CURE || k == StepKind.HANDS_ON)
                ? Stage.SETTING : Stage.FINISHING;
    }

    private static boolean begun(LiveClass live, Instant now) {
        return live.furthestOpened() >= 0
                || live.seats().stream().anyMatch(s -> !s.finishes().isEmpty())
                || !live.plan().steps().get(0).led() && !now.isBefore(live.startsAt());
    }

    private static boolean pastPour(Plan plan, Standing standing) {
        Optional<Step> pour = plan.pour();
        return pour.isPresent() && (standing.phase() == Standing.Phase.DONE
                || standing.step().filter(s -> plan.indexOf(s.id()) > plan.indexOf(pour.get().id())).isPresent());
    }

    private static StepKind kind(Standing standing) {
        return standing.step().map(Step::kind).orElse(StepKind.FINISH);
    }
}

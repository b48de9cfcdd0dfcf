package benchpace.board.view;

import benchpace.board.view.ClassView.StepView;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.util.Map;

/** Makes the steps' part of a view: how many seats are done with each. */
final class StepViews {
    private final LiveClass live;
    private final Plan plan;
    private final Progress progress;
    private final Map<SeatNumber, Standing> standings;

    StepViews(LiveClass live, Map<SeatNumber, Standing> standings) {
        this.live = live;
        this.plan = live.plan();
        this.progress = live.progress();
        this.standings = standings;
    }

    StepView of(Step step) {
        int index = plan.indexOf(step.id());
        int finished = (int) live.seats().stream().filter(Seat::makesCandle).filter(s -> isDoneWith(s, index)).count();
        return new StepView(step.id().value(), step.name(), step.kind(), step.drawn(), step.opening(),
                progress.isOpen(step), live.openedAt(step.id()), step.planned(), finished);
    }

    /** Finished the step of that position, or is past it; away from the table for a moment or not. */
    boolean isDoneWith(Seat seat, int index) {
        Standing standing = standings.get(seat.number());
        boolean pausedAtTheEnd = standing.phase() == Standing.Phase.PAUSED && standing.step().isEmpty();
        return standing.phase() == Standing.Phase.DONE || pausedAtTheEnd
                || standing.step().filter(s -> plan.indexOf(s.id()) > index).isPresent();
    }
}

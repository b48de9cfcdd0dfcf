package benchpace.board.view;

import benchpace.board.pacing.Pace;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes the part of a view that speaks of the led step to open next, and of whom it would leave behind. */
final class NextViews {
    private final LiveClass live;
    private final Progress progress;
    private final Map<SeatNumber, Standing> standings;
    private final StepViews steps;
    private final Pace pace;

    NextViews(LiveClass live, Map<SeatNumber, Standing> standings, StepViews steps, Pace pace) {
        this.live = live;
        this.progress = live.progress();
        this.standings = standings;
        this.steps = steps;
        this.pace = pace;
    }

    Optional<ClassView.NextView> next() {
        return live.nextLed().filter(step -> live.closedAt().isEmpty()).map(this::next);
    }

    private ClassView.NextView next(Step step) {
        int index = live.plan().indexOf(step.id());
        List<Seat> behind = live.seats().stream().filter(Seat::makesCandle)
                .filter(seat -> before(index).stream()
                        .anyMatch(earlier -> !steps.isDoneWith(seat, live.plan().indexOf(earlier.id()))))
                .toList();
        Map<SeatNumber, Pace.Unticked> judged = pace.unticked().stream()
                .collect(Collectors.toMap(Pace.Unticked::seat, u -> u));
        List<Integer> numbers = behind.stream().map(s -> s.number().value()).toList();
        return new ClassView.NextView(steps.of(step), numbers, behind.stream()
                .map(seat -> row(seat, index, Optional.ofNullable(judged.get(seat.number())))).toList());
    }

    /** The steps before a position that seats tick. */
    private List<Step> before(int index) {
        return live.plan().steps().subList(0, index).stream().filter(Step::needsTap).toList();
    }

    /** One tap for it finishes all that comes before the step: the gaps fill themselves. */
    private ClassView.LeftRow row(Seat seat, int index, Optional<Pace.Unticked> judged) {
        Standing standing = standings.get(seat.number());
        String finish = before(index).stream().filter(progress::isOpen).filter(s -> !seat.finished(s.id()))
                .reduce((a, b) -> b).map(s -> s.id().value()).orElse("");
        boolean answered = seat.stillAt().stream()
                .anyMatch(a -> standing.step().filter(s -> s.id().equals(a.step())).isPresent());
        return new ClassView.LeftRow(seat.number().value(), finish,
                standing.step().map(s -> s.id().value()).orElse(""), standing.phase() == Standing.Phase.PAUSED,
                answered, judged.map(Pace.Unticked::doneProbability).orElse(0.0),
                judged.map(Pace.Unticked::remainingMinutes).orElse(0),
                judged.map(Pace.Unticked::leaveMinutes).orElse(0), judged.isPresent());
    }
}

package benchpace.board.view;

import benchpace.board.pacing.PresentStep;
import benchpace.board.view.ClassView.EarlierView;
import benchpace.board.view.ClassView.NowView;
import benchpace.board.view.ClassView.Stage;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the part of a view that says what the class is doing, and who is not there yet. */
final class NowViews {
    private final LiveClass live;
    private final StepViews steps;
    private final List<SeatView> makers;

    /** @param seats as screens show them */
    NowViews(LiveClass live, StepViews steps, List<SeatView> seats) {
        this.live = live;
        this.steps = steps;
        this.makers = seats.stream().filter(SeatView::counts).toList();
    }

    NowView of(Stage stage, PresentStep present) {
        if (stage == Stage.BEFORE || stage == Stage.CLOSED || present.step().isEmpty()) {
            return new NowView(Optional.empty(), Optional.empty(), "", "", "", 0, makers.size(), List.of(),
                    List.of(), List.of());
        }
        return of(present.step().get(), present.index(), present.since());
    }

    private NowView of(Step step, int index, Instant since) {
        List<SeatView> at = makers.stream().filter(s -> position(s) == index).toList();
        List<SeatView> before = makers.stream().filter(s -> position(s) < index).toList();
        List<Integer> setting = before.stream().filter(this::sets).map(SeatView::seat).toList();
        List<EarlierView> earlier = earlier(before.stream().filter(s -> !sets(s)));
        List<Integer> notDone = step.needsTap() ? at.stream().map(SeatView::seat).toList() : List.of();
        return new NowView(Optional.of(steps.of(step)), Optional.of(since), step.say(), step.caution(),
                step.wall(), makers.size() - at.size() - before.size(), makers.size(), notDone, earlier, setting);
    }

    /** Who is done with everything is behind the last step. */
    private int position(SeatView seat) {
        return seat.stepId().isEmpty() ? live.plan().steps().size() : live.plan().indexOf(new StepId(seat.stepId()));
    }

    private boolean sets(SeatView seat) {
        return live.plan().steps().get(position(seat)).kind() == StepKind.CURE;
    }

    private List<EarlierView> earlier(Stream<SeatView> seats) {
        Map<Integer, List<SeatView>> byStep = seats.collect(
                Collectors.groupingBy(this::position, TreeMap::new, Collectors.toList()));
        List<EarlierView> all = new ArrayList<>();
        byStep.forEach((position, there) -> {
            Step step = live.plan().steps().get(position);
            for (boolean starts : new boolean[] {false, true}) {
                List<Integer> some = there.stream().map(SeatView::seat).filter(s -> starts(s) == starts).toList();
                if (!some.isEmpty()) {
                    all.add(new EarlierView(step.id().value(), step.name(), step.say(), step.caution(), starts, some));
                }
            }
        });
        return all;
    }

    /** It came when the class had begun, and has done nothing yet. */
    private boolean starts(int number) {
        Seat seat = live.seat(new SeatNumber(number)).orElseThrow();
        return seat.finishes().isEmpty() && seat.presenceSince().isAfter(begun());
    }

    private Instant begun() {
        return live.plan().steps().stream().flatMap(step -> live.openedAt(step.id()).stream())
                .min(Comparator.naturalOrder()).orElse(live.startsAt());
    }
}

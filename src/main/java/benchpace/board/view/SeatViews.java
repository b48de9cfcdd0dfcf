package benchpace.board.view;

import benchpace.board.cooling.CandleClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.pacing.TurnsAt;
import benchpace.board.view.SeatView.Mark;
import benchpace.board.waiting.WaitView;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** Makes the seats' part of a view. */
final class SeatViews {
    private final LiveClass live;
    private final Progress progress;
    private final Map<SeatNumber, CandleClock> clocks;
    private final Pace pace;
    private final WaitView waiting;
    private final Map<SeatNumber, Standing> standings;
    private final SeatingChart chart;
    private final List<TurnsAt> turns;
    private final Instant now;
    private final Map<SeatNumber, List<SeatView.TapView>> taps = new TreeMap<>();

    SeatViews(LiveClass live, Map<SeatNumber, CandleClock> clocks, Pace pace, WaitView waiting,
              Map<SeatNumber, Standing> standings, SeatingChart chart, List<TurnsAt> turns, Instant now) {
        this.turns = turns;
        this.live = live;
        this.progress = live.progress();
        this.clocks = clocks;
        this.pace = pace;
        this.waiting = waiting;
        this.standings = standings;
        this.chart = chart;
        this.now = now;
        collectTaps();
    }

    List<SeatView> all() {
        return live.seats().stream().map(this::seat).toList();
    }

    private void collectTaps() {
        for (Recorded recorded : live.corrected()) {
            if (recorded.event() instanceof ClassEvent.AtSeat at) {
                boolean undone = live.isUndone(recorded.seq());
                boolean finish = recorded.event() instanceof ClassEvent.StepFinished;
                taps.computeIfAbsent(at.seat(), s -> new ArrayList<>()).add(new SeatView.TapView(recorded.seq(),
                        recorded.event(), recorded.at(), undone, finish && !undone));
            }
        }
    }

    private SeatView seat(Seat seat) {
        Standing standing = standings.get(seat.number());
        Optional<SeatFlag> flag = Optional.ofNullable(pace.flags().get(seat.number()));
        Optional<CandleClock> candle = Optional.ofNullable(clocks.get(seat.number()));
        Optional<Step> afterCure = candle.flatMap(c -> afterCure(standing));
        Optional<Step> finishing = afterCure.filter(s -> candle.orElseThrow().mayBeReady(now));
        String afterTest = afterCure.filter(s -> finishing.isEmpty()).map(s -> s.id().value()).orElse("");
        Optional<Step> step = finishing.or(standing::step);
        boolean canFinish = step.isPresent() && live.closedAt().isEmpty() && (finishing.isPresent()
                || standing.phase() == Standing.Phase.WORKING
                || standing.phase() == Standing.Phase.PAUSED && progress.isOpen(step.get()) && step.get().needsTap());
        return new SeatView(seat.number().value(), seat.name(), chart.places().get(seat.number().value() - 1),
                mark(seat.number(), standing, flag, candle), step.map(s -> s.id().value()).orElse(""),
                step.map(Step::name).orElse(""), canFinish, afterTest, countFrom(seat, standing),
                standing.since(), finished(seat), progress.gaps(seat).stream().map(Step::name).toList(), flag,
                Optional.ofNullable(pace.eased().get(seat.number())),
                seat.claim().filter(c -> c.holds(now)).map(Seat.Claim::helper),
                progress.pouredAt(seat).filter(at -> seat.sharesWith().isEmpty()), candle,
                seat.sharesWith().map(SeatNumber::value),
                sharedBy(seat), seat.hint().isPresent(),
                flag.filter(f -> f.level() == SeatFlag.Level.SLIPPING).isPresent(),
                taps.getOrDefault(seat.number(), List.of()), notes(seat), before(seat.number()),
                seat.party(), seat.mind());
    }

    /** How many have their turn before it. */
    private Optional<Integer> before(SeatNumber seat) {
        return turns.stream().flatMap(t -> t.before(seat.value()).stream()).findFirst();
    }

    /** A candle that still sets is finished with one tap, once the step after the cure is open. */
    private Optional<Step> afterCure(Standing standing) {
        if (standing.phase() != Standing.Phase.CURING || live.closedAt().isPresent()) {
            return Optional.empty();
        }
        int cure = live.plan().indexOf(standing.step().orElseThrow().id());
        return live.plan().steps().stream().skip(cure + 1L).filter(Step::needsTap).findFirst()
                .filter(next -> next.led() && progress.isOpen(next));
    }

    /**
     * Behind a talk that still goes on, the clock of the step begins when the talk's time box ends; where seats are
     * served in turn, with the seat's turn.
     */
    private Instant countFrom(Seat seat, Standing standing) {
        Instant from = standing.since().isAfter(now) ? standing.since()
                : now.minus(progress.timeIn(seat, standing, now));
        return turns.stream().map(t -> t.began().get(seat.number().value())).filter(Objects::nonNull)
                .filter(turn -> turn.isAfter(from)).findFirst().orElse(from);
    }

    private Mark mark(SeatNumber seat, Standing standing, Optional<SeatFlag> flag, Optional<CandleClock> candle) {
        if (flag.isPresent()) {
            return flag.get().level() == SeatFlag.Level.BEHIND ? Mark.BEHIND : Mark.SLIPPING;
        }
        return switch (standing.phase()) {
            case EXPECTED -> Mark.EXPECTED;
            case LEFT -> Mark.LEFT;
            case SHARING -> Mark.SHARING;
            case PAUSED -> Mark.PAUSED;
            case LISTENING -> isOver(seat) ? Mark.DONE : Mark.LISTENING;
            case WORKING -> pace.eased().containsKey(seat) ? Mark.SLOW
                    : before(seat).isPresent() ? Mark.QUEUED : Mark.ON_PACE;
            case WAITING -> candle.filter(c -> c.judgedSetAt().isPresent()).isPresent() ? Mark.SET : Mark.WAITING;
            case CURING -> candle.filter(c -> c.tryIt(now)).isPresent() ? Mark.TRY_IT
                    : candle.filter(c -> c.mayBeReady(now)).isEmpty() && waiting.leisure(seat.value()).isPresent()
                    ? Mark.AT_LEISURE : Mark.SETTING;
            case DONE -> Mark.DONE;
        };
    }

    /** The class is closed, and the seat had done all there was to do. */
    private boolean isOver(SeatNumber number) {
        Seat seat = live.seat(number).orElseThrow();
        return live.closedAt().isPresent() && live.plan().steps().stream().filter(Step::needsTap)
                .reduce((first, second) -> second).filter(last -> seat.finished(last.id())).isPresent();
    }

    private List<String> finished(Seat seat) {
        return live.plan().steps().stream().map(Step::id).filter(seat::finished).map(Object::toString).toList();
    }

    private List<Integer> sharedBy(Seat host) {
        return live.seats().stream()
                .filter(s -> s.sharesWith().filter(host.number()::equals).isPresent())
                .map(s -> s.number().value())
                .toList();
    }

    private List<ClassView.NoteView> notes(Seat seat) {
        return seat.notes().stream()
                .map(n -> new ClassView.NoteView(Optional.of(seat.number().value()), n.at(), n.text(), n.seq()))
                .toList();
    }
}

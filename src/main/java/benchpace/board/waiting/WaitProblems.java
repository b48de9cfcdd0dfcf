package benchpace.board.waiting;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.ReadyWindow;
import benchpace.breaks.Announced;
import benchpace.breaks.Presence;
import benchpace.breaks.ReadyRange;
import benchpace.breaks.SeatWait;
import benchpace.breaks.SetJudgement;
import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.live.ActivityRun;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.live.Standing.Phase;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Says in the wait plan's terms how a class stands. Pure. */
final class WaitProblems {
    private final LiveClass live;
    private final Plan plan;
    private final Progress progress;
    private final Map<SeatNumber, CandleClock> clocks;
    private final WaitFinish finish;
    private final Instant now;

    WaitProblems(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        this.live = live;
        this.plan = live.plan();
        this.progress = live.progress();
        this.clocks = clocks;
        this.finish = new WaitFinish(live);
        this.now = now;
    }

    boolean closed() {
        return live.closedAt().isPresent();
    }

    /** Nothing is planned before the first candle is poured. */
    boolean waits() {
        return !clocks.isEmpty() && !plan.activities().isEmpty();
    }

    /** @param told of it, what was told to seats that have gone or gone on is left out */
    WaitProblem problem(WaitPlan previous, List<Announced> told) {
        List<SeatWait> seats = live.seats().stream().flatMap(s -> seat(s).stream()).toList();
        Map<SeatNumber, SeatWait> waits = seats.stream().collect(Collectors.toMap(SeatWait::seat, w -> w));
        Map<ActivityId, ActivityRun> runs = plan.activities().stream()
                .collect(Collectors.toMap(Activity::id, a -> live.activity(a.id())));
        return new WaitProblem(now, plan.activities(), seats, runs, live.promisedEnd(),
                previous, told.stream().filter(a -> waits.containsKey(a.seat())
                        && (isWrapping(a.activity()) || !onlyWraps(waits.get(a.seat())))).toList());
    }

    private boolean isWrapping(ActivityId id) {
        return plan.activity(id).filter(Activity::isWrapping).isPresent();
    }

    private boolean onlyWraps(SeatWait wait) {
        return wait.mustBeBackBy().equals(wait.freeFrom());
    }

    /**
     * A seat that shares a candle waits for that one. Whoever has gone on to the finish waits for nothing but a place
     * at the wrapping.
     */
    private Optional<SeatWait> seat(Seat seat) {
        Optional<Seat> owner = seat.sharesWith().isEmpty() ? Optional.of(seat)
                : seat.sharesWith().flatMap(live::seat);
        if (!seat.present() || owner.isEmpty() || !owner.get().makesCandle()) {
            return Optional.empty();
        }
        Standing standing = progress.standing(owner.get());
        boolean goneOn = standing.phase() == Phase.DONE || standing.phase() != Phase.WAITING && pastTheCure(standing);
        boolean wrapping = plan.activities().stream().anyMatch(Activity::isWrapping);
        SetJudgement handTest = finish.handTest(owner.get());
        if (finish.wrapped(owner.get()) || goneOn && !(wrapping && handTest.passedBy(now))) {
            return Optional.empty();
        }
        Optional<CandleClock> clock = Optional.ofNullable(clocks.get(owner.get().number()));
        Instant poured = clock.map(CandleClock::pouredAt).orElseGet(() -> expectedPour(owner.get(), standing));
        ReadyRange ready = clock.map(CandleClock::ready).map(w -> new ReadyRange(w.from(), w.likely(), w.until()))
                .orElseGet(() -> expectedReady(poured));
        Presence presence = seat.pausedSince().isPresent() ? new Presence.Paused() : new Presence.Here();
        Instant free = handsFree(owner.get(), poured);
        return Optional.of(new SeatWait(seat.number(), free, ready, presence, seat.stints(),
                goneOn ? free : SeatWait.NOT_CALLED_BACK, owner.get().number(), handTest));
    }

    /** The seats whose candle, or the one they share, is poured. */
    Set<SeatNumber> poured() {
        return live.seats().stream().filter(s -> clocks.containsKey(s.sharesWith().orElse(s.number())))
                .map(Seat::number).collect(Collectors.toSet());
    }

    private boolean pastTheCure(Standing standing) {
        Optional<Step> pour = plan.pour();
        return standing.step().filter(s -> s.kind() == StepKind.FINISH || s.kind() == StepKind.TALK
                && pour.isPresent() && plan.indexOf(s.id()) > plan.indexOf(pour.get().id())).isPresent();
    }

    /** What is left up to the pour at its planned lengths; a minute at least, as it has not been tapped. */
    private Instant expectedPour(Seat seat, Standing standing) {
        int pour = plan.pour().map(p -> plan.indexOf(p.id())).orElse(-1);
        int from = standing.step().map(s -> plan.indexOf(s.id())).orElse(pour + 1);
        Duration left = Duration.ZERO;
        for (int i = from; i <= pour; i++) {
            left = left.plus(plan.steps().get(i).planned());
        }
        boolean atIt = standing.phase() == Phase.WORKING || standing.phase() == Phase.LISTENING;
        Duration spent = atIt ? progress.timeIn(seat, standing, now) : Duration.ZERO;
        Duration planned = standing.step().map(Step::planned).orElse(Duration.ZERO);
        left = left.minus(spent.compareTo(planned) < 0 ? spent : planned);
        return now.plus(left.compareTo(Duration.ofMinutes(1)) < 0 ? Duration.ofMinutes(1) : left);
    }

    /** As long as the first candle that was poured is expected to take. */
    private ReadyRange expectedReady(Instant poured) {
        CandleClock like = clocks.values().stream().min(Comparator.comparing(CandleClock::pouredAt)).orElseThrow();
        Instant from = like.pouredAt();
        ReadyWindow window = like.ready();
        return new ReadyRange(poured.plus(Duration.between(from, window.from())),
                poured.plus(Duration.between(from, window.likely())),
                poured.plus(Duration.between(from, window.until())));
    }

    /**
     * When the hands are free: with the tap of the last hands-on step between pour and cure, or, as taps are optional,
     * after its planned length.
     */
    Instant handsFree(Seat seat, Instant poured) {
        Instant free = poured;
        int pour = plan.pour().map(p -> plan.indexOf(p.id())).orElse(-1);
        for (Step step : plan.steps().subList(pour + 1, plan.steps().size())) {
            if (step.kind() == StepKind.HANDS_ON) {
                Optional<Instant> tap = Optional.ofNullable(seat.finishes().get(step.id())).map(Seat.Finish::at);
                Instant before = free;
                free = tap.filter(t -> !t.isBefore(poured)).orElseGet(() -> before.plus(step.planned()));
            }
        }
        return free;
    }
}

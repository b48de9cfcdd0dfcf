package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.ReadyWindow;
import benchpace.board.pacing.HomeTime.Basis;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.pace.forecast.Forecast;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Says when everyone goes home, what that hangs on and what it rests on. */
public final class HomeTimes {
    private HomeTimes() { }

    static HomeTime of(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant origin, Forecast forecast,
                       Instant now) {
        boolean set = all(CandleClock::settled, live, clocks);
        Duration rest = rest(live, now);
        HomeOdds odds = HomeOdds.of(forecast.times(), at -> ClassTracks.minutes(origin, at), rest, live.promisedEnd(),
                now);
        return new HomeTime(PosteriorPaceWatch.instant(origin, forecast.p10()),
                PosteriorPaceWatch.instant(origin, forecast.p50()), PosteriorPaceWatch.instant(origin, forecast.p90()),
                rest, Optional.empty(), live.promisedEnd(), Optional.of(odds), told(live),
                set ? Optional.empty() : driver(forecast), basis(live, clocks));
    }

    /** The plan's promise alone: nothing is foretold. */
    public static HomeTime promised(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        if (live.closedAt().isPresent()) {
            return ofClosed(live, clocks);
        }
        Duration rest = rest(live, now);
        Instant ready = live.promisedEnd().minus(rest);
        return new HomeTime(ready, ready, ready, rest,
                Optional.empty(), live.promisedEnd(), Optional.empty(), told(live),
                Optional.empty(), Basis.NONE);
    }

    /**
     * The same after more events, before it is foretold anew: what hangs on no forecast is as it is now.
     *
     * @param holds whether what was said of a seat still holds
     */
    static HomeTime carried(HomeTime told, LiveClass live, Predicate<SeatNumber> holds, Instant now) {
        return new HomeTime(told.p10(), told.p50(), told.p90(), rest(live, now), told.ended(), live.promisedEnd(),
                told.odds(), told(live), told.driver().filter(d -> holds.test(new SeatNumber(d.seat()))),
                told.basis());
    }

    /** Nothing is expected any more: when the last candle was, or should have been, firm. */
    static HomeTime ofClosed(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        return new HomeTime(latest(live, clocks, ReadyWindow::from), latest(live, clocks, ReadyWindow::likely),
                latest(live, clocks, ReadyWindow::until), Duration.ZERO, live.closedAt(), live.promisedEnd(),
                Optional.of(HomeOdds.known(live.closedAt().orElseThrow(), live.promisedEnd())), true, Optional.empty(),
                basis(live, clocks));
    }

    private static Instant latest(LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                  Function<ReadyWindow, Instant> of) {
        return clocks.values().stream().map(CandleClock::ready).map(of).max(Comparator.naturalOrder())
                .orElse(live.closedAt().orElse(live.startsAt()));
    }

    /** The plan's minutes of the steps after the cure that not everybody is through with. */
    private static Duration rest(LiveClass live, Instant now) {
        List<Step> steps = live.plan().steps();
        int cure = live.plan().cure().map(c -> live.plan().indexOf(c.id())).orElse(steps.size());
        return steps.stream().skip(cure + 1L).filter(step -> !isOver(live, step))
                .map(step -> left(live, step, now)).reduce(Duration.ZERO, Duration::plus);
    }

    /** A talk that is open has had some of its minutes. */
    private static Duration left(LiveClass live, Step step, Instant now) {
        if (step.kind() != StepKind.TALK) {
            return step.planned();
        }
        Duration had = live.openedAt(step.id()).filter(now::isAfter).map(at -> Duration.between(at, now))
                .orElse(Duration.ZERO);
        Duration left = step.planned().minus(had);
        return left.isNegative() ? Duration.ZERO : left;
    }

    private static boolean isOver(LiveClass live, Step step) {
        List<Seat> makers = live.seats().stream().filter(Seat::makesCandle).toList();
        return step.needsTap() && !makers.isEmpty() && makers.stream().allMatch(s -> s.finished(step.id()));
    }

    /** One tap says little; once most of the table has made one, the evening has a pace of its own. */
    private static boolean told(LiveClass live) {
        List<Seat> makers = live.seats().stream().filter(Seat::makesCandle).toList();
        return 2 * makers.stream().filter(s -> !s.finishes().isEmpty()).count() > makers.size();
    }

    /** Whether it holds of the candle of everybody who makes one. */
    private static boolean all(Predicate<CandleClock> what, LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        List<Seat> makers = live.seats().stream().filter(Seat::makesCandle).toList();
        return !makers.isEmpty() && makers.stream().allMatch(s -> clocks.containsKey(s.number())
                && what.test(clocks.get(s.number())));
    }

    private static Optional<HomeTime.Driver> driver(Forecast forecast) {
        return forecast.driverSeat() == 0 ? Optional.empty()
                : Optional.of(new HomeTime.Driver(forecast.driverSeat(), forecast.driverPoured()));
    }

    private static Basis basis(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        if (all(CandleClock::settled, live, clocks)) {
            return all(c -> c.judgedSetAt().isPresent(), live, clocks) ? Basis.HAND_TEST : Basis.HAND;
        }
        boolean computed = clocks.values().stream().anyMatch(c -> c.ready().basis() == ReadyWindow.Basis.COMPUTED);
        boolean begun = live.seats().stream().anyMatch(s -> !s.finishes().isEmpty());
        boolean poured = live.seats().stream().filter(Seat::makesCandle)
                .allMatch(s -> clocks.containsKey(s.number()));
        return !begun ? Basis.PLAN : poured ? computed ? Basis.COMPUTED_CURE : Basis.PLANNED_CURE
                : computed ? Basis.PACE_AND_COMPUTED_CURE : Basis.PACE_AND_PLANNED_CURE;
    }
}

package benchpace.board.view;

import benchpace.board.attempt.Attempts;
import benchpace.board.attempt.Model;
import benchpace.board.cooling.CandleClock;
import benchpace.board.pacing.ClassTracks;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Seat;
import benchpace.pace.ClassTrack;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.report.CandleTime;
import benchpace.report.FlagHistory;
import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Looks back on a class. Made when somebody asks, from the record alone; nothing of it is kept. */
final class ReportMaker {
    /** A class is looked at no longer than this after the last thing that happened at a seat: everybody went home. */
    private static final Duration OVER = Duration.ofHours(1);

    private final LiveClass live;
    private final ClassView view;
    private final Map<SeatNumber, CandleClock> clocks;
    private final Attempts attempts;

    ReportMaker(LiveClass live, ClassView view, Map<SeatNumber, CandleClock> clocks, Attempts attempts) {
        this.live = live;
        this.view = view;
        this.clocks = clocks;
        this.attempts = attempts;
    }

    /** @param engine what the class is judged by */
    ClassReport report(Supplier<PaceEngine> engine) {
        Instant origin = ClassTracks.origin(live);
        Map<Integer, CandleTime> candles = tried(Model.HELD, () -> candles(live, clocks, origin), Map.of());
        List<Integer> waitedFor = tried(Model.HELD, this::waitedFor, List.of());
        double end = Math.max(0, ClassTracks.minutes(origin, end(live, view.now())));
        Optional<WhatHeld> held = tried(Model.HELD, () -> WhatHeld.of(track(), candles), Optional.empty());
        List<StepSummary> took = tried(Model.TOOK, () -> StepSummary.of(track()), List.of());
        List<FlagSpan> flags = tried(Model.FLAGS, () -> FlagHistory.of(track(), engine.get(), end), List.of());
        return new ClassReport(view, origin, live.plan().steps().stream().map(Step::name).toList(), held, candles,
                waitedFor, took, flags,
                view.missing().and(attempts.among(Model.CURE, Model.HELD, Model.TOOK, Model.FLAGS, Model.LESSON)));
    }

    private List<Integer> waitedFor() {
        return live.seats().stream().filter(Seat::makesCandle).map(Seat::number)
                .filter(s -> live.plan().pour().isPresent() && !clocks.containsKey(s)).map(SeatNumber::value).toList();
    }

    private <T> T tried(Model model, Supplier<T> work, T otherwise) {
        return attempts.of(model, live.seq(), view.now(), work, () -> otherwise);
    }

    private ClassTrack track() {
        return byPlan(live, ClassTracks.of(live, clocks));
    }

    /** How far a class is looked at: to now, or to its end, which may have come long before it was closed. */
    static Instant end(LiveClass live, Instant now) {
        Instant told = live.closedAt().orElse(now);
        Instant last = live.history().stream().filter(r -> r.event() instanceof ClassEvent.AtSeat
                        || r.event() instanceof ClassEvent.StepOpened)
                .map(Recorded::at).max(Comparator.naturalOrder()).orElse(live.startsAt()).plus(OVER);
        Instant begun = live.startsAt();
        return Stream.of(told, last.isBefore(begun) ? begun : last).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** With the plan's own figure for the cure: looking back asks what the plan promised, not what was computed. */
    private static ClassTrack byPlan(LiveClass live, ClassTrack track) {
        Duration cure = live.plan().plannedCure();
        return new ClassTrack(track.steps(), track.openedMinutes(), cure.toSeconds() / 60.0, track.seats());
    }

    /** The candles that the class waited for; once all have gone home, those they made. */
    private static Map<Integer, CandleTime> candles(LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                                    Instant origin) {
        List<Seat> poured = live.seats().stream().filter(s -> clocks.containsKey(s.number())).toList();
        List<Seat> here = poured.stream().filter(Seat::makesCandle).toList();
        boolean gone = live.seats().stream().noneMatch(Seat::present);
        Map<Integer, CandleTime> candles = new TreeMap<>();
        for (Seat seat : gone ? poured : here) {
            CandleClock clock = clocks.get(seat.number());
            double at = ClassTracks.minutes(origin, clock.pouredAt());
            double ready = ClassTracks.minutes(origin, clock.judgedSetAt().orElse(clock.ready().likely()));
            candles.put(seat.number().value(), new CandleTime(at, Math.max(at, ready)));
        }
        return candles;
    }
}

package benchpace.board.view;

import benchpace.board.attempt.Model;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.SaidAtThePour;
import benchpace.board.pacing.ClassTracks;
import benchpace.board.waiting.WaitsLookedBackOn;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.pace.ClassTrack;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.report.CandleTime;
import benchpace.report.CureJudged;
import benchpace.report.FlagHistory;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.SeatIdle;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Looks back on a class. Made when somebody asks, from the record alone; nothing of it is kept. */
final class ReportMaker {
    private final LiveClass live;
    private final ClassView view;
    private final Map<SeatNumber, CandleClock> clocks;
    private final ClassModels models;

    ReportMaker(LiveClass live, ClassView view, Map<SeatNumber, CandleClock> clocks, ClassModels models) {
        this.live = live;
        this.view = view;
        this.clocks = clocks;
        this.models = models;
    }

    /**
     * @param engine what the class is judged by
     * @param cure   what said when candles would be ready
     */
    ClassReport report(Supplier<PaceEngine> engine, CureClock cure) {
        Instant origin = ClassTracks.origin(live);
        Map<Integer, CandleTime> candles = tried(Model.HELD, () -> candles(live, clocks, origin), Map.of());
        List<Integer> waitedFor = tried(Model.HELD, this::waitedFor, List.of());
        Instant over = live.end(view.now());
        double end = Math.max(0, ClassTracks.minutes(origin, over));
        Optional<WhatHeld> held = tried(Model.HELD, () -> WhatHeld.of(track(), candles), Optional.empty());
        List<StepSummary> took = tried(Model.TOOK, () -> StepSummary.of(track()), List.of());
        List<FlagSpan> flags = tried(Model.FLAGS, () -> FlagHistory.of(track(), engine.get(), end), List.of());
        List<SeatIdle> idle = view.missing().has(Model.WAIT) ? List.of() : tried(Model.IDLE,
                () -> WaitsLookedBackOn.of(models.waits(), live, clocks, view.now(), over), List.of());
        List<CureJudged> cures = tried(Model.CURES, () -> cures(origin, cure), List.of());
        boolean rests = models.attempts().among(Model.HELD, Model.FLAGS).models().isEmpty();
        Optional<Hindsight> hindsight = !rests ? Optional.empty()
                : tried(Model.HINDSIGHT, () -> Optional.of(Hindsight.of(track(), flags, held, end)), Optional.empty());
        return new ClassReport(view, origin, live.plan().steps().stream().map(Step::name).toList(), held, candles,
                waitedFor, took, flags, idle, cures, hindsight, List.of(), view.missing().and(models.attempts().among(
                        Model.CURE, Model.HELD, Model.TOOK, Model.FLAGS, Model.IDLE, Model.CURES, Model.HINDSIGHT,
                        Model.LESSON)));
    }

    private List<Integer> waitedFor() {
        return live.seats().stream().filter(Seat::makesCandle).map(Seat::number)
                .filter(s -> live.plan().pour().isPresent() && !clocks.containsKey(s)).map(SeatNumber::value).toList();
    }

    private List<CureJudged> cures(Instant origin, CureClock cure) {
        List<CureJudged> cures = new ArrayList<>();
        Progress progress = live.progress();
        SaidAtThePour.of(cure, view.id(), live).forEach((seat, then) -> live.seat(seat).flatMap(progress::settledAt)
                .ifPresent(judged -> cures.add(new CureJudged(seat.value(),
                        ClassTracks.minutes(origin, then.pouredAt()),
                        ClassTracks.minutes(origin, then.ready().likely()),
                        ClassTracks.minutes(origin, then.said().from()),
                        ClassTracks.minutes(origin, then.said().until()), ClassTracks.minutes(origin, judged)))));
        return cures;
    }

    private <T> T tried(Model model, Supplier<T> work, T otherwise) {
        return models.attempts().of(model, live.seq(), view.now(), work, () -> otherwise);
    }

    private ClassTrack track() {
        return byPlan(live, ClassTracks.of(live, clocks));
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

package benchpace.board;

import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.pace.ClassTrack;
import benchpace.pace.PaceEngine;
import benchpace.pace.PacePriors;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.report.CandleTime;
import benchpace.report.FlagHistory;
import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks back on a class. Made when somebody asks, from the record alone; nothing of it is kept. */
final class ReportMaker {
    /** A class left open is looked at no longer than this after its last event. */
    private static final Duration OVER = Duration.ofHours(2);

    private final PaceEngine engine = new PaceEngine(PacePriors.standard());

    ClassReport report(LiveClass live, ClassView view, Map<SeatNumber, CandleClock> clocks) {
        Instant origin = ClassTracks.origin(live);
        ClassTrack track = byPlan(live, ClassTracks.of(live, clocks));
        Instant now = live.closedAt().orElse(view.now());
        Instant last = live.lastRecordedAt().plus(OVER);
        double end = Math.max(0, ClassTracks.minutes(origin, now.isBefore(last) ? now : last));
        List<FlagSpan> flags = FlagHistory.of(track, engine, end);
        return new ClassReport(view, origin, live.plan().steps().stream().map(Step::name).toList(),
                WhatHeld.of(track, candles(live, clocks, origin)), StepSummary.of(track), flags);
    }

    /** With the plan's own figure for the cure: looking back asks what the plan promised, not what was computed. */
    private static ClassTrack byPlan(LiveClass live, ClassTrack track) {
        Duration cure = live.plan().cure().map(Step::planned).orElse(PlanCureClock.ABOUT_AN_HOUR);
        return new ClassTrack(track.steps(), track.openedMinutes(), cure.toSeconds() / 60.0, track.seats());
    }

    /** The candles that the class waits for. */
    private static Map<Integer, CandleTime> candles(LiveClass live, Map<SeatNumber, CandleClock> clocks,
                                                    Instant origin) {
        Map<Integer, CandleTime> candles = new TreeMap<>();
        live.seats().stream().filter(Seat::makesCandle).filter(s -> clocks.containsKey(s.number())).forEach(s -> {
            CandleClock clock = clocks.get(s.number());
            double poured = ClassTracks.minutes(origin, clock.pouredAt());
            double ready = ClassTracks.minutes(origin, clock.judgedSetAt().orElse(clock.ready().likely()));
            candles.put(s.number().value(), new CandleTime(poured, Math.max(poured, ready)));
        });
        return candles;
    }
}

package benchpace.board.view;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.report.CureJudged;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.Medians;
import benchpace.report.SeatIdle;
import benchpace.report.WhatHeld;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Takes from the look back on a closed class what is kept of it among the others. */
public final class FiguresMaker {
    private FiguresMaker() { }

    /** @return empty if any of it cannot be computed, or the class is not closed */
    public static Optional<ClassFigures> of(ClassReport report) {
        Optional<Instant> ended = report.endedAt();
        if (!report.missing().models().isEmpty() || ended.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ClassFigures(report.view().home().promised(), ended.get(), report.plannedReady(),
                report.held().map(h -> report.at(h.readyMinutes()).truncatedTo(ChronoUnit.MILLIS)),
                report.held().map(h -> readyBy(report.readyBy(h.lastSeat()))).orElse(ReadyBy.NOBODY),
                report.held().map(h -> lost(h, report)).orElse(List.of()), report.idle().size(),
                report.idle().stream().mapToInt(SeatIdle::idleMinutes).sum(), flags(report.flags(),
                report.hindsight().map(h -> h.count(Hindsight.Verdict.WRONG)).orElse(0)), cures(report.cures())));
    }

    /** Who told that a candle was ready. */
    public static ReadyBy readyBy(ClassReport.ReadyBy told) {
        return switch (told) {
            case JUDGED -> ReadyBy.HAND_TEST;
            case SETTLED -> ReadyBy.NEXT_STEP;
            case LIKELY -> ReadyBy.NOBODY;
        };
    }

    private static List<Lost> lost(WhatHeld held, ClassReport report) {
        List<Lost> lost = new ArrayList<>();
        held.bySteps().forEach((step, minutes) ->
                lost.add(new Lost(Cause.STEP, report.view().steps().get(step).id(), minutes)));
        held.byKinds().forEach((kind, minutes) -> lost.add(new Lost(Cause.of(kind), "", minutes)));
        if (held.awayMinutes() > 0) {
            lost.add(new Lost(Cause.AWAY, "", held.awayMinutes()));
        }
        lost.sort(Comparator.comparing(Lost::minutes).reversed());
        return lost;
    }

    /** @param wrong how many of them were wrong in hindsight */
    public static FlagFigures flags(List<FlagSpan> flags, int wrong) {
        double[] answers = flags.stream().filter(FlagSpan::answered)
                .mapToDouble(f -> f.answeredMinutes() - f.fromMinutes()).toArray();
        return new FlagFigures(flags.size(), answers.length,
                answers.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Medians.of(answers)), wrong);
    }

    /** How the candles that were tried by hand were foretold. */
    public static CureFigures cures(List<CureJudged> cures) {
        return new CureFigures(cures.size(), (int) cures.stream().filter(CureJudged::withinRange).count(),
                cures.stream().mapToDouble(CureJudged::laterMinutes).average());
    }
}

package benchpace.board.view;

import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.plan.StepKind;
import benchpace.report.CandleTime;
import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What happened in a class, as far as it has come.
 *
 * @param view   the class itself
 * @param origin the instant that minute 0 of the figures stands for
 * @param steps  names of the plan's steps, by index
 * @param held   what the last candle waited for; empty before the first pour
 * @param candles when each of the candles it rests on was poured and ready, by seat
 * @param waitedFor the seats that should have poured and have no pour ticked
 * @param took   what each step took
 * @param flags  who was flagged when
 * @param missing what of it cannot be computed just now, and is left out
 */
public record ClassReport(ClassView view, Instant origin, List<String> steps, Optional<WhatHeld> held,
                          Map<Integer, CandleTime> candles, List<Integer> waitedFor, List<StepSummary> took,
                          List<FlagSpan> flags, Missing missing) {
    public ClassReport {
        steps = List.copyOf(steps);
        candles = Collections.unmodifiableMap(new TreeMap<>(candles));
        waitedFor = List.copyOf(waitedFor);
        took = List.copyOf(took);
        flags = List.copyOf(flags);
    }

    /** The record alone, without what is reckoned from it. */
    public ClassReport bare() {
        return new ClassReport(view, origin, steps, Optional.empty(), Map.of(), List.of(), List.of(), List.of(),
                missing.and(Missing.of(List.of(Model.HELD, Model.TOOK, Model.FLAGS))));
    }

    /** When the plan has the candles ready: the end of its cure, or its own end if it has none. */
    public Instant plannedReady() {
        Instant at = view.startsAt();
        for (ClassView.StepView step : view.steps()) {
            at = at.plus(step.planned());
            if (step.kind() == StepKind.CURE) {
                return at;
            }
        }
        return at;
    }

    /** The instant that so many minutes stand for. */
    public Instant at(double minutes) {
        return PosteriorPaceWatch.instant(origin, minutes);
    }
}

package benchpace.board;

import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What happened in a class, as far as it has come.
 *
 * @param view   the class itself
 * @param origin the instant that minute 0 of the figures stands for
 * @param steps  names of the plan's steps, by index
 * @param held   what the last candle waited for; empty before the first pour
 * @param took   what each step took
 * @param flags  who was flagged when
 */
public record ClassReport(ClassView view, Instant origin, List<String> steps, Optional<WhatHeld> held,
                          List<StepSummary> took, List<FlagSpan> flags) {
    public ClassReport {
        steps = List.copyOf(steps);
        took = List.copyOf(took);
        flags = List.copyOf(flags);
    }

    /** The instant that so many minutes stand for. */
    public Instant at(double minutes) {
        return PosteriorPaceWatch.instant(origin, minutes);
    }
}

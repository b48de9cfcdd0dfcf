package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.pace.engine.PaceEngine;
import benchpace.plan.Plan;
import benchpace.report.CandleTime;
import benchpace.report.FlagSpan;
import benchpace.report.StepSummary;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A class that has happened, as a look back has it.
 *
 * @param plan    what it was meant to be
 * @param track   its record
 * @param candles those that count, by seat; at least one
 * @param engine  what it was judged by
 * @param flags   who was flagged when
 * @param took    what each step took
 * @param smaller its candles in smaller vessels; empty where cures are not computed
 */
public record Past(Plan plan, ClassTrack track, Map<Integer, CandleTime> candles, PaceEngine engine,
                   List<FlagSpan> flags, List<StepSummary> took, Optional<SmallerCandles> smaller) {
    public Past {
        candles = Map.copyOf(candles);
        flags = List.copyOf(flags);
        took = List.copyOf(took);
        if (candles.isEmpty()) {
            throw new IllegalArgumentException("a class without a candle");
        }
        if (plan.steps().size() != track.steps().size()) {
            throw new IllegalArgumentException("a plan of " + plan.steps().size() + " steps, a class of "
                    + track.steps().size());
        }
    }
}

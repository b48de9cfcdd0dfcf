package benchpace.board.view;

import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.plan.StepKind;
import benchpace.report.CandleTime;
import benchpace.report.CureJudged;
import benchpace.report.FlagSpan;
import benchpace.report.Hindsight;
import benchpace.report.SeatIdle;
import benchpace.report.StepSummary;
import benchpace.report.WhatHeld;
import benchpace.shelf.ShelfEntry;
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
 * @param idle   what every seat that waited had to do in its wait, by seat; empty if the plan has nothing to do in it
 * @param cures  what was said of candles as they were poured against their hand test, by seat
 * @param hindsight whether the flags were right; empty without what it rests on: the flags and what held the class
 * @param shelf  the class's candles on the pickup shelf, in the order they were put there
 * @param missing what of it cannot be computed just now, and is left out
 */
public record ClassReport(ClassView view, Instant origin, List<String> steps, Optional<WhatHeld> held,
                          Map<Integer, CandleTime> candles, List<Integer> waitedFor, List<StepSummary> took,
                          List<FlagSpan> flags, List<SeatIdle> idle, List<CureJudged> cures,
                          Optional<Hindsight> hindsight, List<ShelfEntry> shelf, Missing missing) {
    public ClassReport {
        steps = List.copyOf(steps);
        candles = Collections.unmodifiableMap(new TreeMap<>(candles));
        waitedFor = List.copyOf(waitedFor);
        took = List.copyOf(took);
        flags = List.copyOf(flags);
        idle = List.copyOf(idle);
        cures = List.copyOf(cures);
        shelf = List.copyOf(shelf);
    }

    /** The record alone, without what is reckoned from it. */
    public ClassReport bare() {
        return new ClassReport(view, origin, steps, Optional.empty(), Map.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), Optional.empty(), shelf, missing.and(Missing.of(List.of(Model.HELD, Model.TOOK,
                        Model.FLAGS, Model.IDLE, Model.CURES, Model.HINDSIGHT))));
    }

    /** The same with those of these candles that are the class's. @param all of the whole pickup shelf */
    public ClassReport with(List<ShelfEntry> all) {
        return new ClassReport(view, origin, steps, held, candles, waitedFor, took, flags, idle, cures, hindsight,
                all.stream().filter(e -> e.classId().equals(view.id())).toList(), missing);
    }

    /** Whether it is known what seats had to do in their wait. */
    public boolean knowsIdle() {
        return !missing.has(Model.IDLE) && !missing.has(Model.WAIT);
    }

    /** How it is known when a candle was ready. */
    public enum ReadyBy {
        /** It was judged set by hand. */
        JUDGED,
        /** A step after the cure was tapped for it, which nobody does to liquid wax. */
        SETTLED,
        /** Nobody took it in hand: it is only likely. */
        LIKELY
    }

    /** How it is known when the candle of a seat was ready. */
    public ReadyBy readyBy(int seat) {
        Optional<CandleClock> candle = view.seat(seat).candle();
        return candle.flatMap(CandleClock::judgedSetAt).isPresent() ? ReadyBy.JUDGED
                : candle.filter(CandleClock::settled).isPresent() ? ReadyBy.SETTLED : ReadyBy.LIKELY;
    }

    /** What is said of a candle that is only likely ready; empty once a hand decided. */
    public Optional<SaidRange> forecast(int seat) {
        return view.seat(seat).candle().filter(c -> !c.settled()).map(CandleClock::said);
    }

    /** When the class ended, once it did. */
    public Optional<Instant> endedAt() {
        return view.home().ended();
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

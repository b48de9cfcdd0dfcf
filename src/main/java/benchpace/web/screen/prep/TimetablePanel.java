package benchpace.web.screen.prep;

import benchpace.board.prep.Odds;
import benchpace.plan.Plan;
import benchpace.prep.PrepProblem;
import benchpace.prep.evening.Bottleneck;
import benchpace.prep.evening.Effect;
import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.StepEnd;
import benchpace.prep.evening.Timetable;
import benchpace.words.EveningWords;
import benchpace.words.Times;
import benchpace.words.prep.PrepWords;
import benchpace.words.prep.TimetableWords;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When things should happen, with the odds.
 *
 * @param impossible what stations cannot serve in time, and what would do
 * @param done       how far the simulation is, 0 to 100; 100 once it is told
 * @param missing    why there is none; empty if there is
 * @param head       of the column of times
 * @param helping    whether what would help is still being tried
 */
public record TimetablePanel(List<String> impossible, int done, String missing, String promise, String head,
                             List<Row> rows, List<Help> helps, boolean helping, List<String> basis) {

    /** A step's end, or the end of all. @param queue for a turn; empty where nobody waits long */
    public record Row(String name, String usually, String range, String queue) { }

    /** A change of the plan. @param assumed may be empty */
    public record Help(String change, String effect, String assumed) { }

    static TimetablePanel of(PrepGiven given) {
        Plan plan = given.occasion().plan();
        List<String> impossible = Bottleneck.of(plan, given.occasion().seats(), given.occasion().promisedMinutes())
                .stream().flatMap(b -> EveningWords.bottleneck(b, plan).stream()).toList();
        Odds odds = given.odds().get();
        if (odds instanceof Odds.UnderWay way) {
            return bare(impossible, 99 * way.done() / way.of(), "");
        } else if (odds instanceof Odds.Told told) {
            return told(impossible, told, plan, given.ofClass().map(PrepGiven.OfClass::startsAt), given.times());
        }
        return bare(impossible, 100, PrepWords.of(new PrepProblem.NoTimetable()));
    }

    private static TimetablePanel bare(List<String> impossible, int done, String missing) {
        return new TimetablePanel(impossible, done, missing, "", "", List.of(), List.of(), false, List.of());
    }

    private static TimetablePanel told(List<String> impossible, Odds.Told told, Plan plan, Optional<Instant> starts,
                                       Times times) {
        Timetable timetable = told.timetable();
        List<Row> rows = new ArrayList<>();
        for (StepEnd end : timetable.steps()) {
            rows.add(row(plan.step(end.step()).orElseThrow().name(), end.ends(), EveningWords.longestWait(end, plan),
                    starts, times));
        }
        timetable.lastCandle().ifPresent(last -> rows.add(row("Last candle ready", last, "", starts, times)));
        rows.add(row("Everyone can go", timetable.done(), "", starts, times));
        return new TimetablePanel(impossible, 100, "", TimetableWords.promise(timetable, starts, times),
                starts.isPresent() ? "Through by" : "Through after", rows, helps(told, plan), told.helps().isEmpty(),
                List.of(TimetableWords.COLUMNS, EveningWords.basis(timetable, plan)));
    }

    private static List<Help> helps(Odds.Told told, Plan plan) {
        return told.helps().orElse(List.of()).stream().filter(e -> e.verdict() == Effect.Verdict.HELPS)
                .map(e -> new Help(EveningWords.change(e.change(), plan), EveningWords.effect(e),
                        EveningWords.assumed(e.change()))).toList();
    }

    private static Row row(String name, Quantiles when, String wait, Optional<Instant> starts, Times times) {
        return new Row(name, TimetableWords.usually(when, starts, times), TimetableWords.range(when, starts, times),
                wait);
    }

    public boolean underWay() {
        return done < 100;
    }
}

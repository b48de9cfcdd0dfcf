package benchpace.web.screen.prep;

import benchpace.board.prep.Odds;
import benchpace.plan.Plan;
import benchpace.prep.PrepProblem;
import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.StepEnd;
import benchpace.prep.evening.Timetable;
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
 * @param done    how far the simulation is, 0 to 100; 100 once it is told
 * @param missing why there is none; empty if there is
 * @param head    of the column of times
 */
public record TimetablePanel(int done, String missing, String promise, String head, List<Row> rows, String assumed) {

    /** A step's end, or the end of all. */
    public record Row(String name, String usually, String range) { }

    static TimetablePanel of(PrepGiven given) {
        Odds odds = given.odds().get();
        if (odds instanceof Odds.UnderWay way) {
            return new TimetablePanel(99 * way.done() / way.of(), "", "", "", List.of(), "");
        } else if (odds instanceof Odds.Told told) {
            return told(told.timetable(), given.occasion().plan(), given.ofClass().map(PrepGiven.OfClass::startsAt),
                    given.times());
        }
        return new TimetablePanel(100, PrepWords.of(new PrepProblem.NoTimetable()), "", "", List.of(), "");
    }

    private static TimetablePanel told(Timetable timetable, Plan plan, Optional<Instant> starts, Times times) {
        List<Row> rows = new ArrayList<>();
        for (StepEnd end : timetable.steps()) {
            rows.add(row(plan.step(end.step()).orElseThrow().name(), end.ends(), starts, times));
        }
        timetable.lastCandle().ifPresent(last -> rows.add(row("Last candle firm enough", last, starts, times)));
        rows.add(row("Everyone can go", timetable.done(), starts, times));
        return new TimetablePanel(100, "", TimetableWords.promise(timetable, starts, times),
                starts.isPresent() ? "Done by" : "Done after", rows, TimetableWords.assumed(timetable));
    }

    private static Row row(String name, Quantiles when, Optional<Instant> starts, Times times) {
        return new Row(name, TimetableWords.usually(when, starts, times), TimetableWords.range(when, starts, times));
    }

    public boolean underWay() {
        return done < 100;
    }
}

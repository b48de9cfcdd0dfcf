package benchpace.web.screen.plans;

import benchpace.board.prep.Odds;
import benchpace.plan.Plan;
import benchpace.prep.evening.Timetable;
import benchpace.words.EveningWords;
import benchpace.words.GuessWords;
import benchpace.words.RangeWords;
import java.util.List;
import java.util.function.Supplier;

/**
 * How likely a plan keeps its promise, as far as that is worked out.
 *
 * @param chance  "72 in 100, give or take 1", or about that while it is under way
 * @param words   of what, and on what it rests, a sentence each
 * @param percent how far the work is; 100 when it is done
 */
public record EditChance(String chance, List<String> words, int percent) {

    /** @param few evenings, to guess by until all were gone through */
    public static EditChance of(Odds odds, Supplier<Timetable> few, Plan plan) {
        if (odds instanceof Odds.Told told) {
            Timetable table = told.timetable();
            return new EditChance(EveningWords.chance(table.onTime()), List.of(promise(table, plan),
                    EveningWords.done(table), EveningWords.basis(table, plan)), 100);
        } else if (odds instanceof Odds.UnderWay way) {
            Timetable guess = few.get();
            return new EditChance(GuessWords.about(guess.onTime()), List.of(promise(guess, plan)),
                    Math.min(99, 100 * way.done() / way.of()));
        }
        return new EditChance("", List.of(), 100);
    }

    private static String promise(Timetable table, Plan plan) {
        return "of evenings with " + (plan.usualSeats() == 1 ? "one seat" : plan.usualSeats() + " seats")
                + " are done within " + RangeWords.minutes(table.promisedMinutes()) + ".";
    }

    public boolean finished() {
        return percent == 100;
    }
}

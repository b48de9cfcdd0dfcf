package benchpace.web.screen.prep;

import benchpace.board.prep.Odds;
import benchpace.board.prep.Ticked;
import benchpace.prep.PrepProblem;
import benchpace.prep.evening.Chance;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.sheet.PrepSheet;
import benchpace.web.screen.shell.Counter;
import benchpace.words.NextWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one line that matters before a class: "Switch the melter on at 16:10, in 42 min; 3 things to buy".
 *
 * @param first what has its hour; empty if nothing has
 * @param count down to it, on the day
 * @param rest  everything else, a sentence; may be empty
 */
public record NextLine(String first, Optional<Counter> count, String rest) {
    public static final NextLine NOTHING = new NextLine("", Optional.empty(), "");

    /** Of a class that has not begun. */
    public static NextLine of(PrepSheet sheet, Ticked ticked, Odds odds, Instant startsAt, Instant now, Times times) {
        Optional<MelterLine> melter = sheet.firstOn();
        Optional<Instant> at = melter.flatMap(m -> m.switchOnAt(startsAt));
        String first = at.map(a -> NextWords.switchOn(named(sheet, melter), a, now, times)).orElse("");
        Optional<Counter> count = at.filter(a -> a.isAfter(now) && times.isDayOf(a, now))
                .map(a -> Counter.to(a, "in", "now", ""));
        return line(first, count, rest(sheet, ticked, odds));
    }

    /** Of a plan without a date. */
    public static NextLine of(PrepSheet sheet, Odds odds) {
        Optional<MelterLine> melter = sheet.firstOn();
        String first = melter.map(m -> NextWords.switchOnBefore(named(sheet, melter),
                m.switchOnMinutesBefore().getAsDouble())).orElse("");
        return line(first, Optional.empty(), rest(sheet, Ticked.NOTHING, odds));
    }

    private static NextLine line(String first, Optional<Counter> count, List<String> rest) {
        return new NextLine(Phrases.sentence(first), count, Phrases.sentence(String.join("; ", rest)));
    }

    /** Its name, where "the melter" would not tell which. */
    private static Optional<String> named(PrepSheet sheet, Optional<MelterLine> melter) {
        boolean several = sheet.melters().stream().filter(MelterLine::used).count() > 1;
        return melter.filter(m -> several).map(m -> m.melter().name());
    }

    private static List<String> rest(PrepSheet sheet, Ticked ticked, Odds odds) {
        long toBuy = sheet.shopping().lines().stream()
                .filter(l -> ticked.of(PrepItem.toBuy(l).key()).isEmpty()).count();
        long wrong = sheet.problems().stream().filter(p -> p instanceof PrepProblem.LoadOver
                || p instanceof PrepProblem.CircuitOver).count();
        Optional<Chance> chance = odds instanceof Odds.Told told ? Optional.of(told.timetable().onTime())
                : Optional.empty();
        return new ArrayList<>(NextWords.rest((int) toBuy, (int) wrong, chance));
    }

    public boolean isEmpty() {
        return first.isEmpty() && rest.isEmpty();
    }
}

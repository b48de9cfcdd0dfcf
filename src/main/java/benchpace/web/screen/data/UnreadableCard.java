package benchpace.web.screen.data;

import benchpace.board.view.NamesKept;
import benchpace.words.ForgettingWords;
import benchpace.words.Times;
import java.util.List;
import java.util.OptionalInt;

/**
 * Classes that cannot be read and keep names of guests; nothing is shown where there are none.
 *
 * @param told why they are told of
 */
public record UnreadableCard(String told, List<Row> rows) {

    /** One class. @param kept what it keeps, in words */
    public record Row(String classId, String kept) { }

    /** @param days after which guests are forgotten */
    public static UnreadableCard of(List<NamesKept> classes, OptionalInt days, Times times) {
        return new UnreadableCard(ForgettingWords.unreadable(classes.size()), classes.stream()
                .map(kept -> new Row(kept.classId(), ForgettingWords.unreadable(kept, days, times))).toList());
    }
}

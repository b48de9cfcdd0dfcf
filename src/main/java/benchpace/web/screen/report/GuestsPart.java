package benchpace.web.screen.report;

import benchpace.board.ClassBoard;
import benchpace.board.Forgetting;
import benchpace.words.ForgettingWords;
import benchpace.words.Times;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the guests' names of a class that is looked back on.
 *
 * @param told  how it stands with them, in a sentence
 * @param may   whether they can be forgotten now
 * @param goes  what goes with them
 * @param stays what does not
 */
public record GuestsPart(String classId, String told, boolean may, List<String> goes, List<String> stays) {

    public static GuestsPart of(ClassBoard board, Forgetting forgetting, Times times) {
        boolean over = forgetting.isOver(board);
        Optional<Instant> due = forgetting.due(board);
        boolean words = forgetting.hasWords(board);
        return new GuestsPart(board.id(), board.forgotten()
                .map(done -> ForgettingWords.forgotten(done.at(), done.byAge(), times))
                .orElseGet(() -> words ? ForgettingWords.known(over, due, times) : ForgettingWords.noWords()),
                over && words && board.forgotten().isEmpty(), ForgettingWords.goes(),
                ForgettingWords.stays(forgetting.waiting(board.id()), forgetting.shelfKeeps()));
    }
}

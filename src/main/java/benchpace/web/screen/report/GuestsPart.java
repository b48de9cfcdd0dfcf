package benchpace.web.screen.report;

import benchpace.board.ClassBoard;
import benchpace.board.Forgetting;
import benchpace.store.Forgotten;
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
        return new GuestsPart(board.id(), ForgettingWords.told(board.forgotten().map(Forgotten::at),
                board.forgotten().filter(Forgotten::byAge).isPresent(), over, due, times),
                over && board.forgotten().isEmpty(), ForgettingWords.goes(),
                ForgettingWords.stays(forgetting.waiting(board.id()), forgetting.shelfKeeps()));
    }
}

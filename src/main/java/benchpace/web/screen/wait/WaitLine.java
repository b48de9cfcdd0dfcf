package benchpace.web.screen.wait;

import benchpace.board.view.ClassView;
import benchpace.board.waiting.WaitView.OfferView;
import benchpace.words.ChangeWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.util.List;

/**
 * The wait in a few lines, on the instructor's table.
 *
 * @param leisure who has nothing to do, and what fits; empty if nobody
 * @param change  the newest thing that guests were told and that does not hold; empty if none
 */
public record WaitLine(String classId, boolean planned, List<WaitCall> calls, String leisure, String change) {
    private static final int MOST = 2;

    public static WaitLine of(ClassView view, Times times) {
        boolean planned = view.waiting().plannedAt().isPresent() && !view.waiting().strips().isEmpty();
        return new WaitLine(view.id(), planned, WaitCall.first(view, times, MOST), leisure(view.waiting().leisure()),
                view.waiting().changes().stream().findFirst().map(c -> ChangeWords.brief(c, times))
                        .orElse(""));
    }

    static String leisure(List<OfferView> offers) {
        if (offers.isEmpty()) {
            return "";
        }
        String who = Phrases.sentence(Phrases.seats(offers.stream().map(OfferView::seat).toList(), 4));
        List<String> common = offers.get(0).offers().stream()
                .filter(name -> offers.stream().allMatch(o -> o.offers().contains(name))).toList();
        return who + (offers.size() == 1 ? " is" : " are") + " at leisure"
                + (common.isEmpty() ? "." : ": offer " + common.get(0) + ".");
    }
}

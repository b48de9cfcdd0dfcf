package benchpace.web.screen;

import benchpace.board.ClassView;
import java.util.List;

/**
 * The seats that need somebody.
 *
 * @param cards the most costly first
 * @param more  how many further ones are not shown; 0 if all are
 * @param calm  what to say when there are none
 */
public record HelpList(List<HelpCard> cards, int more, String calm) {

    static HelpList of(ClassView view, Viewer viewer, Times times, int most) {
        List<HelpCard> cards = view.help().stream().limit(most)
                .map(help -> HelpCard.of(help, view, viewer, times)).toList();
        boolean quietStage = view.stage() == ClassView.Stage.BEFORE || view.stage() == ClassView.Stage.CLOSED;
        return new HelpList(cards, view.help().size() - cards.size(), quietStage ? "" : view.calm());
    }
}

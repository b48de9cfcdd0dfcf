package benchpace.web.screen.helper;

import benchpace.board.view.ClassView;
import benchpace.plan.Picture;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.CalmWords;
import benchpace.words.Times;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The seats that need somebody.
 *
 * @param cards  where walking over saves most first
 * @param more   how many further ones there are, in words; empty if all are shown
 * @param rest   the first of those, again where walking over saves most first
 * @param calm   what to say when there are none
 * @param drawing of what the class does now, beside that
 * @param behind every seat that is behind, by number, so that a chime can tell which are new
 */
public record HelpList(List<HelpCard> cards, String more, List<Integer> rest, String calm, Drawing drawing,
                       String behind) {
    private static final int NAMED_SEATS = 4;

    public static HelpList of(ClassView view, Viewer viewer, Times times, int most) {
        List<HelpCard> all = view.help().stream().map(help -> HelpCard.of(help, view, viewer, times)).toList();
        List<HelpCard> cards = all.stream().limit(most).toList();
        List<Integer> rest = all.stream().skip(most).map(HelpCard::seat).toList();
        List<Integer> named = rest.stream().limit(NAMED_SEATS).toList();
        String more = rest.isEmpty() ? ""
                : "and " + rest.size() + " more" + (rest.size() > NAMED_SEATS ? ", first:" : ":");
        boolean quietStage = view.stage() == ClassView.Stage.BEFORE || view.stage() == ClassView.Stage.CLOSED;
        return new HelpList(cards, more, named, quietStage ? "" : CalmWords.of(view), drawing(view),
                all.stream().filter(card -> card.mark().equals("behind")).map(card -> String.valueOf(card.seat()))
                        .collect(Collectors.joining(" ")));
    }

    private static Drawing drawing(ClassView view) {
        return Drawing.present(view).orElseGet(() -> Drawing.of(Picture.TABLE));
    }
}

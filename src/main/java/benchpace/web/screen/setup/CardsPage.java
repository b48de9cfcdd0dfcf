package benchpace.web.screen.setup;

import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Shell;
import java.util.List;

/** Place cards, to be printed, cut and folded. */
public record CardsPage(Shell shell, String classId, String name, List<Card> cards) {
    /**
     * One place.
     *
     * @param name    empty unless its guest gave one
     * @param candle  empty if there is no choice
     * @param drawing the candle that is made there, alight
     */
    public record Card(int seat, String name, String candle, Drawing drawing) { }

    public CardsPage {
        cards = List.copyOf(cards);
    }
}

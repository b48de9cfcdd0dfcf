package benchpace.web.screen.setup;

import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Shell;
import java.util.List;
import java.util.stream.Stream;

/** Place cards, to be printed, cut and folded. */
public record CardsPage(Shell shell, String classId, String name, List<Card> cards) {
    /**
     * One place.
     *
     * @param name    empty unless its guest gave one
     * @param candle  empty if there is no choice
     * @param drawing the candle that is made there, alight
     */
    public record Card(int seat, String name, String candle, Drawing drawing) {
        /** More letters than this do not fit on a card's line in the largest letters, and in the middling ones. */
        private static final int LARGE = 9;
        private static final int MIDDLING = 15;

        /** How large its name may be, so that no word is broken: {@code large}, {@code middling} or {@code small}. */
        public String letters() {
            int longest = Stream.of(name.split("[ -]+")).mapToInt(String::length).max().orElse(0);
            boolean large = longest <= LARGE && name.length() <= 2 * LARGE;
            return large ? "large" : longest <= MIDDLING ? "middling" : "small";
        }
    }

    public CardsPage {
        cards = List.copyOf(cards);
    }
}

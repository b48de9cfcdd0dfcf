package benchpace.web.screen.wall;

import benchpace.board.cooling.CandleClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.files.Words;
import benchpace.web.screen.wait.WaitCall;
import benchpace.words.CureWords;
import benchpace.words.Sentences;
import benchpace.words.Times;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the wall calls out while candles set: the nearest call on a card, what follows beneath. The card is as large as
 * its words allow; where they are too many, it leaves out where, which can be seen in the room, before for whom.
 *
 * @param first    empty if nothing is called
 * @param then     beneath it, shown where there is room for all of it
 * @param size     of the words on the card
 * @param sentence said in their place while there are none
 */
public record WallCalls(Optional<WaitCall> first, Optional<WaitCall> then, Size size, String sentence) {
    private static final WallCalls NONE = new WallCalls(Optional.empty(), Optional.empty(), Size.USUAL, "");
    /** In units of a 1920 x 1080 screen, as in {@code wall-wait.css}. */
    private static final int WIDTH = 920;
    /** Below the ribbon and the one line under it, for the card and what it stands off. */
    private static final int HEIGHT = 305;
    private static final int WHEN_LINE = 84;
    private static final int RESTS_LINE = 83;
    private static final int RESTS_WIDTH = 1752;
    private static final int RIBBON = 226;
    private static final int EDGES = 28;
    private static final int DETAILS = 72;
    private static final int DETAILS_LINE = 76;
    /** Room for the ticking time at its longest. */
    private static final String LONGEST_COUNT = "in 1 h 20 min";
    private static final int SENTENCE_LINE = 92;
    private static final int SENTENCE = 80;
    private static final int SENTENCE_WIDTH = 950;

    /** How large the first words are. */
    public enum Size {
        USUAL(84, 94), CLOSE(79, 84), CLOSEST(66, 68),
        /** The same where it takes the place of what is said of the estimate, too. */
        CROWDED(66, 68);

        private final int letters;
        private final int line;

        Size(int letters, int line) {
            this.letters = letters;
            this.line = line;
        }

        /** As it stands in class names of the style sheet. */
        public String token() {
            return Words.of(this);
        }
    }

    public static WallCalls of(ClassView view, Times times) {
        if (!WallMain.waits(view)) {
            return NONE;
        }
        int room = room(WallRibbon.of(view, times)) - RESTS_LINE * Math.max(0, restsLines(view) - 1);
        List<WaitCall> calls = WaitCall.first(view, times, 2);
        if (calls.isEmpty()) {
            return new WallCalls(Optional.empty(), Optional.empty(), Size.USUAL, shown(onlyTrying(view)
                    || WallFinish.isPresent(view) ? WallFinish.TRYING : view.present().wall(), room));
        }
        WaitCall call = calls.get(0);
        Optional<WaitCall> then = calls.stream().skip(1).findFirst();
        return Stream.of(call, call.placeless()).flatMap(c -> Stream.of(Size.USUAL, Size.CLOSE)
                        .filter(size -> height(c, size) <= room)
                        .map(size -> new WallCalls(Optional.of(c), then, size, "")))
                .findFirst().orElseGet(() -> new WallCalls(Optional.of(call), Optional.empty(),
                        height(call, Size.CLOSEST) <= room ? Size.CLOSEST : Size.CROWDED, ""));
    }

    private static int room(Optional<WallRibbon> ribbon) {
        return ribbon.map(r -> HEIGHT - (r.lines() - 1) * WHEN_LINE).orElse(HEIGHT + RIBBON + WHEN_LINE);
    }

    /** Of what stands below everything: that the range has moved, if it has, and who decides. */
    private static int restsLines(ClassView view) {
        String words = CureWords.moved(view) + " " + WallMain.rests(view);
        return lines(Letters.BOLD, words.strip(), DETAILS, RESTS_WIDTH);
    }

    private static int height(WaitCall call, Size size) {
        String time = call.count().map(c -> LONGEST_COUNT).orElse(call.clock()).replace(' ', '\u00a0');
        return EDGES + lines(Letters.HEAD, call.lead() + " " + time, size.letters, WIDTH) * size.line
                + lines(Letters.PLAIN, size.compareTo(Size.CLOSEST) < 0 ? call.details() : call.who(), DETAILS, WIDTH)
                * DETAILS_LINE;
    }

    private static int lines(Letters letters, String words, int size, int width) {
        return words.isBlank() ? 0 : letters.flow(words, size, width, 0).lines();
    }

    /** As many whole sentences as there is room for. */
    private static String shown(String words, int room) {
        List<String> shown = Sentences.of(words);
        while (shown.size() > 1 && lines(Letters.PLAIN, String.join(" ", shown), SENTENCE, SENTENCE_WIDTH)
                * SENTENCE_LINE > room) {
            shown = shown.subList(0, shown.size() - 1);
        }
        return String.join(" ", shown);
    }

    /** Nothing sets any longer, as far as the clock can tell: what is left is the hand test. */
    private static boolean onlyTrying(ClassView view) {
        List<CandleClock> untried = view.seats().stream().filter(SeatView::counts).flatMap(s -> s.candle().stream())
                .filter(c -> !c.settled()).toList();
        return !untried.isEmpty() && untried.stream().allMatch(c -> c.tryIt(view.now()));
    }

    /** What stands below the first words: where, for whom and what to mind; the longest names leave for whom alone. */
    public String details() {
        return first.map(call -> size.compareTo(Size.CLOSEST) < 0 ? call.details() : call.who()).orElse("");
    }

    public boolean empty() {
        return first.isEmpty() && sentence.isEmpty();
    }
}

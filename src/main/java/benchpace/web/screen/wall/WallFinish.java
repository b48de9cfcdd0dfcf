package benchpace.web.screen.wall;

import benchpace.board.cooling.CandleClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.words.Phrases;
import java.util.List;

/**
 * Whom a step after the cure is for. The wall calls nobody to trim or wrap whose candle no hand has decided on.
 *
 * @param untried some candle has still to be tried by hand
 * @param tried   the seats whose candle a hand has decided on
 * @param called  those of them that are not done with the step
 */
record WallFinish(boolean untried, List<Integer> tried, List<Integer> called) {
    static final String TRYING = "Your host comes round and tries each candle by hand.";
    /** More letters than this are no sentence at 5 m. */
    private static final int LONGEST = 34;
    /** A line of candles below the words, and how many stand on one; their times take the room of some. */
    private static final int BELOW_LINE = 112;
    static final int CANDLES_A_LINE = 12;
    private static final int GROUPS = 4;

    /** Whether a step after the cure is the present one. */
    static boolean isPresent(ClassView view) {
        return view.present().step().filter(s -> s.kind() == StepKind.FINISH).isPresent();
    }

    static WallFinish of(ClassView view) {
        String step = view.present().step().map(ClassView.StepView::id).orElse("");
        List<SeatView> poured = view.seats().stream().filter(s -> s.counts() && s.pouredAt().isPresent()).toList();
        List<SeatView> tried = poured.stream().filter(s -> s.candle().filter(CandleClock::settled).isPresent())
                .toList();
        return new WallFinish(tried.size() < poured.size(), numbers(tried),
                numbers(tried.stream().filter(s -> !s.finished().contains(step)).toList()));
    }

    /** The height that candles which still set take below the words, in units of the wall; 0 if there are none. */
    static int below(ClassView view) {
        long setting = view.stage() == Stage.RUNNING ? 0 : view.seats().stream().filter(SeatView::counts)
                .filter(s -> s.candle().filter(c -> !c.settled()).isPresent()).count();
        return setting == 0 ? 0 : BELOW_LINE * lines((int) setting);
    }

    /** How many lines so many candles take, with when they are ready. */
    static int lines(int candles) {
        return 1 + (GROUPS + candles) / CANDLES_A_LINE;
    }

    /** Nobody can do the step yet: all wait for the hand test. */
    boolean waits() {
        return untried && tried.isEmpty();
    }

    /** What the wall says of the step: to all once every candle was tried, before that to those whose candle was. */
    String sentence(String words) {
        if (!untried) {
            return words;
        }
        if (called.isEmpty()) {
            return TRYING;
        }
        String seats = Phrases.seatRanges(called);
        return ("For " + (seats.length() > LONGEST ? "candles tried by hand" : seats) + ". " + words).strip();
    }

    private static List<Integer> numbers(List<SeatView> seats) {
        return seats.stream().map(SeatView::seat).toList();
    }
}

package benchpace.web.screen.wall;

import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView;
import benchpace.files.Words;
import benchpace.plan.StepKind;
import benchpace.web.screen.wall.WallCandle.State;
import benchpace.words.CureWords;
import benchpace.words.Times;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Every candle, by seat number only. Where all that are waited for have one range, or more ranges than there is room
 * for, the ribbon above says it and the candles stand in the order of their seats; else those of one range stand
 * together under it.
 *
 * @param shape   how large each is
 * @param columns in which they stand; none in a line
 * @param key     a frame stands for "try it" somewhere, and nothing beside it says so
 */
public record WallSeats(Shape shape, int columns, List<Group> groups, boolean key) {
    /** More than that cannot be drawn so that they are known at 5 m. */
    private static final int MOST_DRAWN = 12;
    /** With more than that two words under each would leave too little room for the drawings: a key says them once. */
    private static final int MOST_WORDED = 4;
    /** More than that stand in one more column, so that the rows keep apart. */
    private static final int MOST_IN_FOUR_COLUMNS = 32;
    private static final int COMPACT_COLUMNS = 5;
    private static final int MOST_COLUMNS = 4;
    /** Heights in units of a 1920 x 1080 screen, as in {@code wall-wait.css}: all, a line of words, a row. */
    private static final int HEIGHT = 545;
    private static final int CLOCK = 80;
    private static final int DRAWN_ROW = 158;
    private static final int COMPACT_ROW = 80;
    /** A time of day on a line takes the place of so many candles. */
    private static final int CLOCK_PLACES = 3;

    /** Drawn, as a number with a small square, or the same in a line below what else the wall shows. */
    public enum Shape {
        DRAWN, COMPACT, LINE;

        /** As it stands in class names of the style sheet. */
        public String token() {
            return Words.of(this);
        }
    }

    /**
     * Candles of which the same is said.
     *
     * @param clock "20:10\u201320:25"; empty where the ribbon says it, or nothing is waited for
     */
    public record Group(String clock, List<WallCandle> candles) {
        public Group {
            candles = List.copyOf(candles);
        }

        public List<Integer> seats() {
            return candles.stream().map(WallCandle::seat).toList();
        }
    }

    public static WallSeats of(ClassView view, Times times) {
        return WallMain.waits(view) ? waiting(view, times) : line(view, times);
    }

    private static WallSeats waiting(ClassView view, Times times) {
        List<SeatView> seats = unfinished(view);
        Shape shape = seats.size() > MOST_DRAWN ? Shape.COMPACT : Shape.DRAWN;
        Optional<SmallCandle.Vessels> vessels = shape == Shape.COMPACT || seats.isEmpty() ? Optional.empty()
                : Optional.of(new SmallCandle.Vessels(view, seats.stream().map(SeatView::seat).toList()));
        List<WallCandle> candles = seats.stream().map(s -> WallCandle.of(s, view, vessels, times)).toList();
        List<Group> apart = apart(candles, times);
        boolean alone = apart.size() <= 1 || !holds(apart, shape);
        List<Group> groups = candles.isEmpty() ? List.of() : alone ? List.of(new Group("", candles)) : apart;
        boolean worded = shape == Shape.DRAWN && alone && candles.size() <= MOST_WORDED;
        return new WallSeats(shape, columns(shape, alone, candles.size()), groups,
                !worded && candles.stream().anyMatch(c -> c.state() == State.TRY_IT));
    }

    /** Those of one range together, the first one first; before them all that wait for none. */
    private static List<Group> apart(List<WallCandle> candles, Times times) {
        List<Group> groups = new ArrayList<>();
        ranges(candles).forEach((range, some) -> groups.add(new Group(times.briefly(range), some)));
        List<WallCandle> others = candles.stream().filter(c -> !c.waits()).toList();
        if (groups.size() > 1 && !others.isEmpty()) {
            groups.add(0, new Group("", others));
        }
        return groups;
    }

    private static Map<SaidRange, List<WallCandle>> ranges(List<WallCandle> candles) {
        return candles.stream().filter(WallCandle::waits).collect(Collectors.groupingBy(
                c -> c.clock().orElseThrow().said(),
                () -> new TreeMap<>(Comparator.comparing(SaidRange::from).thenComparing(SaidRange::until)),
                Collectors.toList()));
    }

    /** How many rows it takes of the usual width. */
    public int rows(Group group) {
        return shape == Shape.LINE ? 1 : (group.candles().size() + columns - 1) / columns;
    }

    private static boolean holds(List<Group> groups, Shape shape) {
        int columns = shape == Shape.COMPACT ? COMPACT_COLUMNS : MOST_COLUMNS;
        int row = shape == Shape.COMPACT ? COMPACT_ROW : DRAWN_ROW;
        return groups.stream().mapToInt(g -> (g.clock().isEmpty() ? 0 : CLOCK)
                + (g.candles().size() + columns - 1) / columns * row).sum() <= HEIGHT;
    }

    private static int columns(Shape shape, boolean alone, int candles) {
        if (shape == Shape.COMPACT) {
            return alone && candles <= MOST_IN_FOUR_COLUMNS ? MOST_COLUMNS : COMPACT_COLUMNS;
        }
        if (!alone) {
            return MOST_COLUMNS;
        }
        return candles <= 3 ? Math.max(1, candles) : candles == 4 ? 2 : candles <= 6 || candles == 9 ? 3 : MOST_COLUMNS;
    }

    /** While others finish: the candles that still set, and those to be tried. */
    private static WallSeats line(ClassView view, Times times) {
        boolean late = view.stage() == Stage.FINISHING || view.stage() == Stage.SETTING;
        List<WallCandle> candles = !late ? List.of() : unfinished(view).stream()
                .filter(s -> s.candle().filter(c -> !c.settled()).isPresent())
                .map(s -> WallCandle.of(s, view, Optional.empty(), times)).toList();
        List<Group> groups = new ArrayList<>();
        List<WallCandle> past = candles.stream().filter(c -> c.state() == State.TRY_IT).toList();
        if (!past.isEmpty()) {
            groups.add(new Group(CureWords.TRY_IT, past));
        }
        ranges(candles).forEach((range, some) -> groups.add(new Group(times.briefly(range), some)));
        int taken = groups.size() * CLOCK_PLACES + candles.size();
        if (taken > WallFinish.lines(candles.size()) * WallFinish.CANDLES_A_LINE) {
            List<WallCandle> setting = candles.stream().filter(WallCandle::waits).toList();
            groups.removeIf(group -> !past.equals(group.candles()));
            if (!setting.isEmpty()) {
                groups.add(new Group("still setting", setting));
            }
        }
        return new WallSeats(Shape.LINE, 0, groups, false);
    }

    /** Those with a candle of their own that is not in hand yet. */
    private static List<SeatView> unfinished(ClassView view) {
        return view.seats().stream()
                .filter(s -> s.counts() && s.mark() != SeatView.Mark.DONE && !finishing(view, s)).toList();
    }

    /** Whether a step after the cure was ticked for it: its candle is in hand. */
    private static boolean finishing(ClassView view, SeatView seat) {
        return view.steps().stream().filter(s -> s.kind() == StepKind.FINISH).map(ClassView.StepView::id)
                .anyMatch(seat.finished()::contains);
    }

    /** Two words stand beside a candle to be tried. */
    public boolean worded() {
        return shape == Shape.DRAWN && !key && groups.stream().flatMap(g -> g.candles().stream())
                .anyMatch(c -> c.state() == State.TRY_IT);
    }

    public boolean empty() {
        return groups.isEmpty();
    }
}

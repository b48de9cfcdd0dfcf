package benchpace.web.screen;

import benchpace.board.CandleClock;
import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.ReadyWindow;
import benchpace.board.SeatView;
import benchpace.plan.StepKind;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Each poured seat's own countdown on the wall, by number only: a line for all seats that share a window. Where these
 * lines are too many, a few seats get a card each and many are put together by wider stretches of time, until they fit
 * in a size that can be read at 5 m.
 *
 * @param dense many lines: smaller letters
 */
public record WallSeats(String heading, List<Candle> candles, List<Group> groups, boolean dense) {
    private static final int MOST_CARDS = 8;
    /** Widths of the groups to try, in minutes, until they fit. */
    private static final List<Integer> WIDTHS = List.of(5, 10, 15, 30, 60);

    /** @param ready a hand test says so */
    public record Candle(int seat, boolean ready, Counter count) { }

    /** Seats that are ready about the same time. @param words "seats 1 to 8" */
    public record Group(boolean ready, String clock, Counter count, List<Integer> seats, String words) { }

    private record Poured(int seat, CandleClock clock) {
        boolean ready() {
            return clock.judgedSetAt().isPresent();
        }

        Instant likely() {
            return clock.ready().likely();
        }
    }

    static WallSeats of(ClassView view, Times times) {
        List<Poured> poured = poured(view);
        WallSpace space = WallSpace.of(view, WallPage.calls(view, times).list());
        List<Group> groups = groups(poured, times, p -> p.clock().tryIt(view.now()) ? ""
                : times.briefly(p.clock().ready()));
        if (space.holds(groups)) {
            return new WallSeats("Candles ready about, by seat number", List.of(), groups, false);
        }
        if (poured.size() <= MOST_CARDS && space.holdsCards(poured.size())) {
            List<Candle> candles = poured.stream().map(p -> new Candle(p.seat(), p.ready(), count(p, times))).toList();
            return new WallSeats("Each candle, by seat number", candles, List.of(), false);
        }
        groups = fewer(poured, groups, space, times);
        return new WallSeats("Candles ready about, by seat number", List.of(), groups, !space.holds(groups));
    }

    private static List<Group> fewer(List<Poured> poured, List<Group> all, WallSpace space, Times times) {
        List<Group> groups = all;
        for (int minutes : WIDTHS) {
            if (space.holdsDense(groups)) {
                return groups;
            }
            groups = groups(poured, times, p -> Counter.iso(Times.next(minutes, p.likely())));
        }
        if (space.holdsDense(groups)) {
            return groups;
        }
        groups = groups(poured, times, p -> "");
        return space.holdsDense(groups) ? groups : othersUnnamed(groups);
    }

    /** Those tried and those not, in no order at the table: the longer list need not be told. */
    private static List<Group> othersUnnamed(List<Group> groups) {
        Group most = groups.stream().max(Comparator.comparing(g -> g.words().length())).orElseThrow();
        return groups.stream().map(g -> g != most ? g
                : new Group(g.ready(), g.clock(), g.count(), g.seats(), groups.size() > 1 ? "all others" : "all"))
                .toList();
    }

    private static List<Poured> poured(ClassView view) {
        List<Poured> all = view.seats().stream()
                .filter(s -> s.mark() != SeatView.Mark.SHARING && s.mark() != SeatView.Mark.LEFT
                        && s.mark() != SeatView.Mark.DONE && !finishing(view, s))
                .flatMap(s -> s.candle().map(c -> new Poured(s.seat(), c)).stream())
                .toList();
        if (WallMain.waits(view)) {
            return all;
        }
        boolean finishing = view.stage() == Stage.FINISHING || view.stage() == Stage.SETTING;
        return finishing ? all.stream().filter(p -> !p.ready()).toList() : List.of();
    }

    /** Whether a step after the cure was ticked for it: its candle is in hand. */
    private static boolean finishing(ClassView view, SeatView seat) {
        return view.steps().stream().filter(s -> s.kind() == StepKind.FINISH).map(ClassView.StepView::id)
                .anyMatch(seat.finished()::contains);
    }

    private static List<Group> groups(List<Poured> poured, Times times, Function<Poured, String> alike) {
        List<Group> groups = new ArrayList<>();
        Map<String, List<Poured>> waiting = poured.stream().filter(p -> !p.ready())
                .collect(Collectors.groupingBy(alike, TreeMap::new, Collectors.toList()));
        List<Poured> ready = poured.stream().filter(Poured::ready).toList();
        if (!ready.isEmpty()) {
            groups.add(group(ready, times));
        }
        waiting.values().stream().sorted(Comparator.comparing((List<Poured> some) -> last(some).likely()))
                .forEach(some -> groups.add(group(some, times)));
        return groups;
    }

    private static Poured last(List<Poured> some) {
        return some.stream().max(Comparator.comparing(Poured::likely)).orElseThrow();
    }

    /** A group counts to its last candle. */
    private static Group group(List<Poured> some, Times times) {
        Poured last = last(some);
        ReadyWindow window = last.clock().ready();
        Instant from = some.stream().map(p -> p.clock().ready().from()).min(Comparator.naturalOrder()).orElseThrow();
        Instant until = some.stream().map(p -> p.clock().ready().until()).max(Comparator.naturalOrder()).orElseThrow();
        List<Integer> seats = some.stream().map(Poured::seat).sorted().toList();
        return new Group(last.ready(), times.briefly(new ReadyWindow(from, window.likely(), until, window.basis())),
                count(last, times), seats, Phrases.seatRanges(seats));
    }

    private static Counter count(Poured poured, Times times) {
        return Counter.ready(poured.clock().ready(), "bare", "soon", "try it", times);
    }

    public boolean empty() {
        return candles.isEmpty() && groups.isEmpty();
    }
}

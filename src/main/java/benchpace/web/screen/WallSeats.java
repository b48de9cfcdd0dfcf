package benchpace.web.screen;

import benchpace.board.CandleClock;
import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
import benchpace.board.ReadyWindow;
import benchpace.board.SeatView;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Each poured seat's own countdown on the wall, by number only: a card a seat while they fit in a size that can be read
 * at 5 m, beyond that one line for all seats that are ready about the same time.
 *
 * @param dense many lines: smaller letters
 */
public record WallSeats(String heading, List<Candle> candles, List<Group> groups, boolean dense) {
    private static final int MOST_CARDS = 8;
    private static final int SEATS_A_LINE = 11;
    private static final int SEATS_A_DENSE_LINE = 13;
    private static final int MOST_LINES = 5;
    private static final int MOST_DENSE_LINES = 6;
    private static final int MOST_STACKED_LINES = 8;
    /** Widths of the groups to try, in minutes, until they fit. */
    private static final List<Integer> WIDTHS = List.of(5, 10, 15, 30, 60);

    /** @param ready a hand test says so */
    public record Candle(int seat, boolean ready, String clock, Counter count) { }

    /** Seats that are ready about the same time. */
    public record Group(boolean ready, String clock, Counter count, List<Integer> seats) { }

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
        boolean beside = WallMain.waits(view) && view.room().cutAway().isPresent();
        if (poured.size() <= MOST_CARDS) {
            List<Candle> candles = poured.stream().map(p -> new Candle(p.seat(), p.ready(),
                    times.briefly(p.clock().ready()), count(p, times))).toList();
            return new WallSeats("Each candle, by seat number, about", candles, List.of(), false);
        }
        List<Group> groups = List.of();
        for (int minutes : WIDTHS) {
            groups = groups(poured, minutes, times);
            if (beside ? stackedLines(groups) <= MOST_STACKED_LINES
                    : lines(groups, SEATS_A_DENSE_LINE) <= MOST_DENSE_LINES) {
                break;
            }
        }
        boolean dense = beside ? stackedLines(groups) > MOST_STACKED_LINES - 2
                : lines(groups, SEATS_A_LINE) > MOST_LINES;
        return new WallSeats("Candles ready about, by seat number", List.of(), groups, dense);
    }

    private static List<Poured> poured(ClassView view) {
        List<Poured> all = view.seats().stream()
                .filter(s -> s.mark() != SeatView.Mark.SHARING && s.mark() != SeatView.Mark.LEFT)
                .flatMap(s -> s.candle().map(c -> new Poured(s.seat(), c)).stream())
                .toList();
        if (WallMain.waits(view)) {
            return all;
        }
        return view.stage() == Stage.FINISHING ? all.stream().filter(p -> !p.ready()).toList() : List.of();
    }

    private static int lines(List<Group> groups, int seatsALine) {
        return groups.stream().mapToInt(g -> (g.seats().size() + seatsALine - 1) / seatsALine).sum();
    }

    /** Beside a drawing a group's time stands above its seats. */
    private static int stackedLines(List<Group> groups) {
        return groups.size() + lines(groups, SEATS_A_LINE);
    }

    private static List<Group> groups(List<Poured> poured, int minutes, Times times) {
        List<Group> groups = new ArrayList<>();
        Map<String, List<Poured>> waiting = poured.stream().filter(p -> !p.ready())
                .sorted(Comparator.comparing(Poured::likely))
                .collect(Collectors.groupingBy(p -> Counter.iso(Times.next(minutes, p.likely())), TreeMap::new,
                        Collectors.toList()));
        List<Poured> ready = poured.stream().filter(Poured::ready).toList();
        if (!ready.isEmpty()) {
            groups.add(group(ready, times));
        }
        waiting.values().forEach(some -> groups.add(group(some, times)));
        return groups;
    }

    /** A group counts to its last candle. */
    private static Group group(List<Poured> some, Times times) {
        Poured last = some.stream().max(Comparator.comparing(Poured::likely)).orElseThrow();
        ReadyWindow window = last.clock().ready();
        Instant from = some.stream().map(p -> p.clock().ready().from()).min(Comparator.naturalOrder()).orElseThrow();
        Instant until = some.stream().map(p -> p.clock().ready().until()).max(Comparator.naturalOrder()).orElseThrow();
        return new Group(last.ready(), times.briefly(new ReadyWindow(from, window.likely(), until, window.basis())),
                count(last, times), some.stream().map(Poured::seat).sorted().toList());
    }

    private static Counter count(Poured poured, Times times) {
        return Counter.ready(poured.clock().ready(), "bare", "soon", "try it", times);
    }

    public boolean empty() {
        return candles.isEmpty() && groups.isEmpty();
    }
}

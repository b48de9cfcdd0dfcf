package benchpace.web.screen;

import benchpace.board.CandleClock;
import benchpace.board.ClassView;
import benchpace.board.ClassView.Stage;
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
    private static final int MOST_CARDS = 12;
    private static final int SEATS_A_LINE = 13;
    private static final int MOST_LARGE_LINES = 4;

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
        if (poured.size() <= MOST_CARDS) {
            List<Candle> candles = poured.stream()
                    .map(p -> new Candle(p.seat(), p.ready(), times.roughly(p.likely()), count(p, times))).toList();
            return new WallSeats("Each candle, by seat number, about", candles, List.of(), false);
        }
        List<Group> groups = groups(poured, times);
        int lines = groups.stream().mapToInt(g -> (g.seats().size() + SEATS_A_LINE - 1) / SEATS_A_LINE).sum();
        return new WallSeats("Candles ready about, by seat number", List.of(), groups, lines > MOST_LARGE_LINES);
    }

    private static List<Poured> poured(ClassView view) {
        List<Poured> all = view.seats().stream()
                .filter(s -> s.mark() != SeatView.Mark.SHARING && s.mark() != SeatView.Mark.LEFT)
                .flatMap(s -> s.candle().map(c -> new Poured(s.seat(), c)).stream())
                .toList();
        boolean finishing = view.stage() == Stage.FINISHING && !all.stream().allMatch(Poured::ready);
        return WallMain.waits(view) || finishing ? all : List.of();
    }

    private static List<Group> groups(List<Poured> poured, Times times) {
        List<Group> groups = new ArrayList<>();
        Map<String, List<Poured>> waiting = poured.stream().filter(p -> !p.ready())
                .sorted(Comparator.comparing(Poured::likely))
                .collect(Collectors.groupingBy(p -> Counter.iso(times.nextFive(p.likely())), TreeMap::new,
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
        return new Group(last.ready(), times.roughly(last.likely()), count(last, times),
                some.stream().map(Poured::seat).sorted().toList());
    }

    private static Counter count(Poured poured, Times times) {
        return Counter.ready(poured.clock().ready(), "bare", "soon", "soon", times);
    }

    public boolean empty() {
        return candles.isEmpty() && groups.isEmpty();
    }
}

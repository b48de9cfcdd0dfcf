package benchpace.web.screen.wall;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.SaidRange;
import benchpace.board.cooling.SaidRange.Phase;
import benchpace.board.view.ClassView;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.SeatView;
import benchpace.plan.StepKind;
import benchpace.web.screen.shell.Counter;
import benchpace.words.CureWords;
import benchpace.words.Phrases;
import benchpace.words.Times;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is said of each poured candle, by seat number only: a line for all seats of which the same is said. Where these
 * lines are too many to be read at 5 m, those before their range become one line that covers them all.
 *
 * @param heading empty where the words above say all
 * @param dense   many lines: smaller letters
 */
public record WallSeats(String heading, List<Group> groups, boolean dense) {

    /** How the candles of a line stand; in the order of the lines. */
    public enum State { SET, TRY_IT, WAITING }

    /**
     * Seats of which the same is said.
     *
     * @param clock "20:10\u201320:25"; past it "try it"
     * @param count says when the range has begun, and when it is past; empty if nothing is waited for
     * @param words "seats 1 to 8"
     */
    public record Group(State state, String clock, Optional<Counter> count, List<Integer> seats, String words) { }

    private record Poured(int seat, CandleClock clock) {
        State state(Instant now) {
            return clock.settled() ? State.SET : clock.phase(now) == Phase.PAST ? State.TRY_IT : State.WAITING;
        }
    }

    public static WallSeats of(ClassView view, Times times) {
        List<Poured> poured = poured(view);
        if (WallMain.waits(view) && view.cure().allPoured()
                && poured.stream().allMatch(p -> p.state(view.now()) == State.WAITING)
                && poured.stream().map(p -> p.clock().said()).distinct().count() <= 1) {
            return new WallSeats("", List.of(), false); // the words above are about all of them
        }
        WallSpace space = WallSpace.of(view, WallPage.calls(view, times).list());
        List<Group> groups = groups(poured, view.now(), times, CandleClock::said);
        if (!space.holdsDense(groups)) {
            groups = groups(poured, view.now(), times, c -> c.said().phase(view.now()));
        }
        boolean dense = !space.holds(groups);
        return new WallSeats("Candles ready about, by seat number",
                space.holdsDense(groups) ? groups : othersUnnamed(groups), dense);
    }

    /** Those tried and those not, in no order at the table: the longest list need not be told. */
    private static List<Group> othersUnnamed(List<Group> groups) {
        Group most = groups.stream().max(Comparator.comparing(g -> g.words().length())).orElseThrow();
        return groups.stream().map(g -> g != most ? g
                : new Group(g.state(), g.clock(), g.count(), g.seats(), groups.size() > 1 ? "all others" : "all"))
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
        return finishing ? all.stream().filter(p -> !p.clock().settled()).toList() : List.of();
    }

    /** Whether a step after the cure was ticked for it: its candle is in hand. */
    private static boolean finishing(ClassView view, SeatView seat) {
        return view.steps().stream().filter(s -> s.kind() == StepKind.FINISH).map(ClassView.StepView::id)
                .anyMatch(seat.finished()::contains);
    }

    /** @param alike what those that wait have in common on a line */
    private static List<Group> groups(List<Poured> poured, Instant now, Times times,
                                      Function<CandleClock, Object> alike) {
        List<Group> groups = new ArrayList<>();
        Map<State, List<Poured>> states = poured.stream()
                .collect(Collectors.groupingBy(p -> p.state(now), TreeMap::new, Collectors.toList()));
        states.forEach((state, some) -> {
            if (state != State.WAITING) {
                groups.add(new Group(state, state == State.SET ? "ready" : CureWords.TRY_IT, Optional.empty(),
                        numbers(some), Phrases.seatRanges(numbers(some))));
            }
        });
        states.getOrDefault(State.WAITING, List.of()).stream()
                .collect(Collectors.groupingBy(p -> alike.apply(p.clock())))
                .values().stream().map(some -> waiting(some, times))
                .sorted(Comparator.comparing((Group g) -> g.clock()).thenComparing(g -> g.seats().get(0)))
                .forEach(groups::add);
        return groups;
    }

    private static Group waiting(List<Poured> some, Times times) {
        SaidRange said = some.stream().map(p -> p.clock().said()).reduce(SaidRange::with).orElseThrow();
        return new Group(State.WAITING, times.briefly(said), Optional.of(Counter.ready(said, "mute", CureWords.MAY_BE,
                CureWords.TRY_IT)), numbers(some), Phrases.seatRanges(numbers(some)));
    }

    private static List<Integer> numbers(List<Poured> some) {
        return some.stream().map(Poured::seat).sorted().toList();
    }

    public boolean empty() {
        return groups.isEmpty();
    }
}

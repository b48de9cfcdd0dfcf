package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.breaks.Presence;
import benchpace.breaks.SeatWait;
import benchpace.breaks.SetJudgement;
import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whose turn it is at the wrapping: first ready, first wrapped, as soon as a place is free, those whose candles are
 * judged set before all others. The turn of a candle still to be tried is a forecast: it comes after the likely ready
 * moment, and after now, by what lies between the hand test and the wrapping. With turns of equal length this order
 * keeps both the sum and the longest of the waits for a place as small as they can be (a textbook result on equal
 * jobs and identical machines, Conway, Maxwell and Miller, Theory of Scheduling, 1967; from memory). Turns that were
 * announced keep their time while they can. Seats that share a candle take one place.
 */
final class WrappingTurns {
    private final Timeline line;
    private final Task wrap;
    private final ActivityRun run;

    /** @param wrap the wrapping, or null when the plan has none or the instructor skipped it */
    WrappingTurns(Timeline line, Task wrap) {
        this.line = line;
        this.wrap = wrap;
        this.run = wrap == null ? ActivityRun.UNTOUCHED : line.problem.run(wrap.activity().id());
    }

    boolean exists() {
        return wrap != null;
    }

    Task task() {
        return wrap;
    }

    boolean alreadyWrapped(SeatWait seat) {
        return line.histories.get(seat.seat()).stream().anyMatch(p -> wraps(seat, p));
    }

    /** Whether a part is the wrapping of a candle; at the wrapping before the hand test one folds the box. */
    boolean wraps(SeatWait seat, Assignment part) {
        return seat.handTest().passedBy(part.from()) && line.problem.activities().stream()
                .anyMatch(a -> a.isWrapping() && a.id().equals(part.activity()));
    }

    /** Whether this seat may be called: its candle is judged set, and it is done with what comes before. */
    boolean mayBeCalled(SeatWait seat) {
        return exists() && callsFrom(run, seat.handTest()).isPresent()
                && (!together() || line.problem.seats().stream().filter(Timeline::isHere)
                        .allMatch(s -> callsFrom(run, s.handTest()).isPresent()));
    }

    /**
     * From when on a seat may be called to this wrapping: after the hand test and what comes before the wrapping, or,
     * when the instructor started it, as soon as its candle is judged set. Empty while it may not be called.
     */
    static Optional<Instant> callsFrom(ActivityRun run, SetJudgement handTest) {
        if (!(handTest instanceof SetJudgement.Given passed)) {
            return Optional.empty();
        }
        return run.openedAt().map(begun -> begun.isAfter(passed.at()) ? begun : passed.at())
                .map(begun -> passed.wrapFrom().filter(from -> from.isBefore(begun)).orElse(begun))
                .or(passed::wrapFrom);
    }

    /** The slot from which on a candle is expected to be tried and then finished; never in the past. */
    int triedFrom(SeatWait seat) {
        return Math.max(line.ceil(seat.ready().p50()), line.freeFrom(seat));
    }

    /** How many slots lie between the hand test and the wrapping of a seat that may not be called yet. */
    int finishing(SeatWait seat) {
        return !exists() || mayBeCalled(seat) ? 0 : Task.minutesUp(seat.handTest().finishing());
    }

    /** Turns given so far, and the places left after them. */
    private record Turns(Map<SeatNumber, Integer> slots, Capacity left) {
        boolean has(List<SeatWait> candle) {
            return candle.stream().anyMatch(s -> slots.containsKey(s.seat()));
        }
    }

    /** The slot in which each seat's turn begins; seats that leave before it have none. */
    Map<SeatNumber, Integer> turns() {
        if (!exists()) {
            return Map.of();
        }
        List<List<SeatWait>> queue = queue();
        int latest = queue.stream().mapToInt(this::earliest).max().orElse(0);
        boolean together = together() && queue.size() <= wrap.places();
        Turns turns = new Turns(Map.of(), capacityNow(latest + (queue.size() + 1) * wrap.length() * 2));
        for (List<SeatWait> candle : queue) {
            int told = toldSlot(candle);
            if (!together && told >= earliest(candle) && turns.left().free(turnAt(told))) {
                turns = given(candle, told, turns);
            }
        }
        for (List<SeatWait> candle : queue) {
            turns = turns.has(candle) ? turns
                    : given(candle, together ? latest : firstFree(earliest(candle), turns.left()), turns);
        }
        return turns.slots();
    }

    private int firstFree(int from, Capacity left) {
        int turn = from;
        while (!left.free(turnAt(turn))) {
            turn++;
        }
        return turn;
    }

    private Booking turnAt(int slot) {
        return Booking.of(0, slot, wrap.length());
    }

    /** Seats whose candles wait for the hand test and who may fold a box meanwhile, as many as there are places. */
    List<SeatNumber> foldingBoxes() {
        if (!exists()) {
            return List.of();
        }
        Map<SeatNumber, Integer> turns = turns();
        List<List<SeatWait>> queue = queue();
        Booking now = Booking.of(0, 0, 1);
        Capacity left = capacityNow(1).less(queue.stream()
                .filter(c -> c.stream().anyMatch(s -> mayBeCalled(s) && turns.getOrDefault(s.seat(), 1) == 0))
                .map(c -> now).toList());
        List<SeatNumber> folding = new ArrayList<>();
        for (List<SeatWait> candle : queue) {
            List<SeatWait> idle = candle.stream().filter(this::mayFold).toList();
            if (!idle.isEmpty() && left.free(now)) {
                idle.forEach(s -> folding.add(s.seat()));
                left = left.less(List.of(now));
            }
        }
        return folding;
    }

    private boolean mayFold(SeatWait seat) {
        boolean due = !seat.ready().p50().isAfter(line.problem.now()) || run.begunBy(line.problem.now());
        return seat.handTest() instanceof SetJudgement.Awaited && due && line.freeFrom(seat) == 0;
    }

    /** Candles still to be wrapped, each with the seats that wait for it, in the order of their turns. */
    private List<List<SeatWait>> queue() {
        Map<SeatNumber, List<SeatWait>> candles = new LinkedHashMap<>();
        line.problem.seats().stream().filter(Timeline::isHere).filter(s -> !alreadyWrapped(s))
                .sorted(Comparator.comparing(SeatWait::seat))
                .forEach(s -> candles.computeIfAbsent(s.candle(), c -> new ArrayList<>()).add(s));
        Comparator<List<SeatWait>> judgedFirst = Comparator.comparing(
                (List<SeatWait> c) -> callsFrom(run, c.get(0).handTest()).orElse(Instant.MAX));
        return candles.values().stream().sorted(judgedFirst.thenComparingInt(this::earliest)
                .thenComparing((List<SeatWait> c) -> c.get(0).ready().p50())
                .thenComparing(c -> c.get(0).seat())).toList();
    }

    private boolean together() {
        return wrap.activity().audience() == Activity.Audience.WHOLE_CLASS;
    }

    private Turns given(List<SeatWait> candle, int turn, Turns before) {
        List<SeatWait> staying = candle.stream().filter(s -> staysFor(s, turn)).toList();
        if (staying.isEmpty()) {
            return before;
        }
        Map<SeatNumber, Integer> slots = new HashMap<>(before.slots());
        staying.forEach(s -> slots.put(s.seat(), turn));
        return new Turns(slots, before.left().less(List.of(turnAt(turn))));
    }

    private boolean staysFor(SeatWait seat, int turn) {
        return !(seat.presence() instanceof Presence.LeavingAt leaving)
                || turn + wrap.length() <= line.floor(leaving.at());
    }

    private Capacity capacityNow(int slots) {
        Map<SeatNumber, Integer> takenUntil = new HashMap<>();
        for (SeatWait seat : line.problem.seats()) {
            line.histories.getOrDefault(seat.seat(), List.of()).stream()
                    .filter(p -> p.status() == Assignment.Status.UNDER_WAY && isTask(p.activity()))
                    .forEach(p -> takenUntil.merge(seat.candle(), line.ceil(p.until()), Math::max));
        }
        return Capacity.of(List.of(wrap), slots)
                .less(takenUntil.values().stream().map(t -> new Booking(0, 0, t)).toList());
    }

    private boolean isTask(ActivityId id) {
        return id.equals(wrap.activity().id());
    }

    private int earliest(List<SeatWait> candle) {
        return candle.stream().mapToInt(this::earliest).max().orElseThrow();
    }

    private int earliest(SeatWait seat) {
        Optional<Instant> called = callsFrom(run, seat.handTest());
        int from = called.isPresent() ? Math.max(line.ceil(called.get()), line.freeFrom(seat))
                : triedFrom(seat) + Task.minutesUp(seat.handTest().finishing());
        return Math.max(from, wrap.notBefore());
    }

    private int toldSlot(List<SeatWait> candle) {
        return line.problem.announced().stream()
                .filter(a -> isTask(a.activity()) && candle.stream().anyMatch(s -> s.seat().equals(a.seat())))
                .mapToInt(a -> line.exactly(a.from())).filter(s -> s >= 0).findFirst().orElse(-1);
    }
}

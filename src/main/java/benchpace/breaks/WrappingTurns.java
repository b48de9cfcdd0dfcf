package benchpace.breaks;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import benchpace.plan.SeatNumber;

/**
 * Whose turn it is at the wrapping: first ready, first wrapped, as soon as a place is free and never before the
 * candle is expected to be ready (as likely as not; the hand test decides). With turns of equal length this order
 * keeps both the sum and the longest of the waits for a place as small as they can be (a textbook result on equal
 * jobs and identical machines, Conway, Maxwell and Miller, Theory of Scheduling, 1967; from memory). Turns that were
 * announced keep their time while they can.
 */
final class WrappingTurns {
    private final Timeline line;
    private final Task wrap;

    /** @param wrap the wrapping, or null when the plan has none or the instructor skipped it */
    WrappingTurns(Timeline line, Task wrap) {
        this.line = line;
        this.wrap = wrap;
    }

    boolean exists() {
        return wrap != null;
    }

    Task task() {
        return wrap;
    }

    boolean alreadyWrapped(SeatNumber seat) {
        Set<Object> wrappings = new HashSet<>();
        line.problem.activities().stream().filter(a -> a.kind() == ActivityKind.WRAPPING)
                .forEach(a -> wrappings.add(a.id()));
        return line.histories.get(seat).stream().anyMatch(p -> wrappings.contains(p.activity()));
    }

    /** The slot in which each seat's turn begins; seats that leave before it have none. */
    Map<SeatNumber, Integer> turns() {
        Map<SeatNumber, Integer> turns = new HashMap<>();
        if (!exists()) {
            return turns;
        }
        List<SeatWait> queue = line.problem.seats().stream().filter(Timeline::isHere)
                .filter(s -> !alreadyWrapped(s.seat()))
                .sorted(Comparator.comparingInt(this::readySlot).thenComparing(SeatWait::seat)).toList();
        int latest = queue.stream().mapToInt(this::readySlot).max().orElse(0);
        boolean together = wrap.activity().audience() == Activity.Audience.WHOLE_CLASS
                && queue.size() <= wrap.places();
        Places places = placesNow(latest + (queue.size() + 1) * wrap.length() * 2);
        for (SeatWait seat : queue) {
            int told = toldSlot(seat);
            if (!together && told >= readySlot(seat) && places.free(0, told, told + wrap.length())
                    && staysFor(seat, told)) {
                give(seat, told, turns, places);
            }
        }
        for (SeatWait seat : queue) {
            int turn = together ? latest : readySlot(seat);
            while (!together && !places.free(0, turn, turn + wrap.length())) {
                turn++;
            }
            if (!turns.containsKey(seat.seat()) && staysFor(seat, turn)) {
                give(seat, turn, turns, places);
            }
        }
        return turns;
    }

    private void give(SeatWait seat, int turn, Map<SeatNumber, Integer> turns, Places places) {
        turns.put(seat.seat(), turn);
        places.add(0, turn, turn + wrap.length(), -1);
    }

    private boolean staysFor(SeatWait seat, int turn) {
        return !(seat.presence() instanceof Presence.LeavingAt leaving)
                || turn + wrap.length() <= line.floor(leaving.at());
    }

    private Places placesNow(int slots) {
        Places places = Places.of(1, slots);
        places.add(0, 0, slots, wrap.places());
        line.histories.values().forEach(parts -> parts.stream()
                .filter(p -> p.progress() == StripPart.Progress.UNDER_WAY
                        && p.activity().equals(wrap.activity().id()))
                .forEach(p -> places.add(0, 0, line.ceil(p.until()), -1)));
        return places;
    }

    private int readySlot(SeatWait seat) {
        int ready = Math.max(line.ceil(seat.ready().p50()), line.freeFrom(seat));
        return Math.max(ready, wrap.notBefore());
    }

    private int toldSlot(SeatWait seat) {
        return line.problem.announced().stream()
                .filter(a -> a.seat().equals(seat.seat()) && a.activity().equals(wrap.activity().id()))
                .mapToInt(a -> line.exactly(a.from())).filter(s -> s >= 0).findFirst().orElse(-1);
    }
}

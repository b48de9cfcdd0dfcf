package benchpace.breaks.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A plan in the making: when the class breaks begin, and the strip of each seat, in the order of the windows. */
record Schedule(List<Integer> breakStarts, List<Strip> strips) {
    Schedule {
        breakStarts = List.copyOf(breakStarts);
        strips = List.copyOf(strips);
    }

    /** Nothing booked yet. */
    static Schedule empty(List<Integer> breakStarts, int seats) {
        return new Schedule(breakStarts, Collections.nCopies(seats, Strip.NOTHING));
    }

    Schedule with(int seat, Strip strip) {
        List<Strip> changed = new ArrayList<>(strips);
        changed.set(seat, strip);
        return new Schedule(breakStarts, changed);
    }

    long cost(int seat) {
        return strips.get(seat).cost();
    }

    Score score() {
        int unplaced = (int) breakStarts.stream().filter(start -> start == BreakTimes.NONE).count();
        return Score.of(unplaced, strips.stream().mapToLong(Strip::cost).toArray());
    }
}

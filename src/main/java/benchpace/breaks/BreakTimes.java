package benchpace.breaks;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

import benchpace.plan.ActivityId;

/**
 * The slots in which the class breaks can begin: everybody who is still waiting takes part, nobody's candle is
 * outlasted, and the break ends by the promised end. A break the instructor gave a time begins then, without the
 * seats that cannot take part.
 */
final class BreakTimes {
    /** The start of a break that finds no time. */
    static final int NONE = -1;

    /** More combinations than this are thinned out. */
    private static final int MOST_COMBINATIONS = 400;

    private final Timeline line;

    BreakTimes(Timeline line) {
        this.line = line;
    }

    /** The seats that are still waiting. */
    private List<SeatWindow> waiting() {
        return line.windows.stream().filter(SeatWindow::waits).toList();
    }

    boolean tooFewPlaces(Task classBreak) {
        return !classBreak.pinned() && classBreak.places() < waiting().size();
    }

    /** The waiting seats that take part in a break beginning in this slot. */
    List<SeatWindow> takingPart(Task classBreak, int start) {
        return waiting().stream().filter(l -> l.allows(classBreak, start)).limit(classBreak.places()).toList();
    }

    /** All slots in which one break could begin, in order. */
    int[] possible(Task classBreak) {
        if (classBreak.pinned()) {
            return takingPart(classBreak, classBreak.notBefore()).isEmpty() ? new int[0]
                    : new int[] {classBreak.notBefore()};
        }
        int everybody = waiting().size();
        if (everybody == 0 || tooFewPlaces(classBreak)) {
            return new int[0];
        }
        return IntStream.rangeClosed(0, line.promisedEnd - classBreak.length())
                .filter(s -> takingPart(classBreak, s).size() == everybody).toArray();
    }

    /**
     * Starts of all breaks together, one array each; every one places as many breaks as can be placed. What was
     * announced and is still possible is the only choice for its break.
     *
     * @param few whether to try only a few spread-out starts of each break
     */
    List<int[]> combinations(boolean few) {
        int breaks = line.classBreaks.size();
        int each = few ? Math.max(3, 8 - 2 * breaks) : Integer.MAX_VALUE;
        List<int[]> found = combine(each);
        return found.size() > MOST_COMBINATIONS ? combine(3) : found;
    }

    /** Whether {@link #combinations} with this choice leaves nothing out. */
    boolean complete(List<int[]> combinations) {
        return combinations.size() == combine(Integer.MAX_VALUE).size();
    }

    private List<int[]> combine(int each) {
        List<int[]> choices = line.classBreaks.stream().map(b -> choices(b, each)).toList();
        List<int[]> found = new ArrayList<>();
        int[] starts = new int[choices.size()];
        for (int leftOut = 0; found.isEmpty() && leftOut <= starts.length; leftOut++) {
            extend(choices, 0, leftOut, starts, found);
        }
        return found;
    }

    private void extend(List<int[]> choices, int next, int mayLeaveOut, int[] starts, List<int[]> found) {
        if (found.size() > 4 * MOST_COMBINATIONS) {
            return;
        }
        if (next == starts.length) {
            found.add(starts.clone());
            return;
        }
        for (int start : choices.get(next)) {
            if (apart(next, start, starts)) {
                starts[next] = start;
                extend(choices, next + 1, mayLeaveOut, starts, found);
            }
        }
        if (mayLeaveOut > 0) {
            starts[next] = NONE;
            extend(choices, next + 1, mayLeaveOut - 1, starts, found);
        }
    }

    private boolean apart(int next, int start, int[] starts) {
        int length = line.classBreaks.get(next).length();
        for (int b = 0; b < next; b++) {
            if (starts[b] != NONE && starts[b] < start + length
                    && start < starts[b] + line.classBreaks.get(b).length()) {
                return false;
            }
        }
        return true;
    }

    private int[] choices(Task classBreak, int most) {
        int[] all = possible(classBreak);
        int told = toldSlot(classBreak.activity().id());
        if (Arrays.binarySearch(all, told) >= 0) {
            return new int[] {told};
        }
        if (all.length <= most) {
            return all;
        }
        TreeSet<Integer> spread = new TreeSet<>();
        for (int i = 0; i < most; i++) {
            spread.add(all[(int) ((long) i * (all.length - 1) / (most - 1))]);
        }
        for (int before : plannedSlots(classBreak.activity().id())) {
            if (Arrays.binarySearch(all, before) >= 0) {
                spread.add(before);
            }
        }
        return spread.stream().mapToInt(Integer::intValue).toArray();
    }

    private int toldSlot(ActivityId id) {
        return line.problem.announced().stream().filter(a -> a.activity().equals(id))
                .mapToInt(a -> line.exactly(a.from())).filter(s -> s >= 0).findFirst().orElse(-1);
    }

    private int[] plannedSlots(ActivityId id) {
        return line.problem.previous().strips().stream().flatMap(s -> s.planned().stream())
                .filter(p -> p.activity().equals(id)).map(StripPart::from).distinct()
                .mapToInt((Instant at) -> line.exactly(at)).filter(s -> s >= 0).toArray();
    }
}

package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.plan.ActivityId;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

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
    /** The seats that are still waiting. */
    private final List<SeatWindow> waiting;

    BreakTimes(Timeline line) {
        this.line = line;
        this.waiting = line.windows.stream().filter(SeatWindow::waits).toList();
    }

    boolean tooFewPlaces(Task classBreak) {
        return !classBreak.pinned() && classBreak.places() < waiting.size();
    }

    /** The waiting seats that take part in a break beginning in this slot. */
    List<SeatWindow> takingPart(Task classBreak, int start) {
        List<SeatWindow> taking = new ArrayList<>();
        for (SeatWindow seat : waiting) {
            if (taking.size() < classBreak.places() && seat.allows(classBreak, start)) {
                taking.add(seat);
            }
        }
        return taking;
    }

    /** All slots in which one break could begin, in order. */
    private List<Integer> possible(Task classBreak) {
        if (classBreak.pinned()) {
            return takingPart(classBreak, classBreak.notBefore()).isEmpty() ? List.of()
                    : List.of(classBreak.notBefore());
        }
        int everybody = waiting.size();
        if (everybody == 0 || tooFewPlaces(classBreak)) {
            return List.of();
        }
        return IntStream.rangeClosed(0, line.promisedEnd - classBreak.length())
                .filter(s -> takingPart(classBreak, s).size() == everybody).boxed().toList();
    }

    /**
     * Starts of all breaks together; every one places as many breaks as can be placed. What was announced and is
     * still possible is the only choice for its break.
     *
     * @param few whether to try only a few spread-out starts of each break
     */
    List<List<Integer>> combinations(boolean few) {
        int breaks = line.classBreaks.size();
        int each = few ? Math.max(3, 8 - 2 * breaks) : Integer.MAX_VALUE;
        List<List<Integer>> found = combine(each);
        return found.size() > MOST_COMBINATIONS ? combine(3) : found;
    }

    private List<List<Integer>> combine(int each) {
        List<List<Integer>> choices = line.classBreaks.stream().map(b -> choices(b, each)).toList();
        List<List<Integer>> found = new ArrayList<>();
        for (int leftOut = 0; found.isEmpty() && leftOut <= choices.size(); leftOut++) {
            extend(choices, List.of(), leftOut, found);
        }
        return found;
    }

    private void extend(List<List<Integer>> choices, List<Integer> starts, int mayLeaveOut,
                        List<List<Integer>> found) {
        if (found.size() > 4 * MOST_COMBINATIONS) {
            return;
        }
        if (starts.size() == choices.size()) {
            found.add(starts);
            return;
        }
        for (int start : choices.get(starts.size())) {
            if (apart(start, starts)) {
                extend(choices, with(starts, start), mayLeaveOut, found);
            }
        }
        if (mayLeaveOut > 0) {
            extend(choices, with(starts, NONE), mayLeaveOut - 1, found);
        }
    }

    private static List<Integer> with(List<Integer> starts, int next) {
        return Stream.concat(starts.stream(), Stream.of(next)).toList();
    }

    private boolean apart(int start, List<Integer> starts) {
        int length = line.classBreaks.get(starts.size()).length();
        return IntStream.range(0, starts.size()).noneMatch(b -> starts.get(b) != NONE && starts.get(b) < start + length
                && start < starts.get(b) + line.classBreaks.get(b).length());
    }

    private List<Integer> choices(Task classBreak, int most) {
        List<Integer> all = possible(classBreak);
        int told = toldSlot(classBreak.activity().id());
        if (all.contains(told)) {
            return List.of(told);
        }
        if (all.size() <= most) {
            return all;
        }
        TreeSet<Integer> spread = new TreeSet<>();
        for (int i = 0; i < most; i++) {
            spread.add(all.get((int) ((long) i * (all.size() - 1) / (most - 1))));
        }
        plannedSlots(classBreak.activity().id()).filter(all::contains).forEach(spread::add);
        return List.copyOf(spread);
    }

    /** By seat and slot, whether a class break, or the hand test and the trim, hold the seat then. */
    boolean[][] blocked(List<Integer> starts) {
        boolean[][] blocked = new boolean[line.windows.size()][line.slots];
        for (int i = 0; i < blocked.length; i++) {
            SeatWindow window = line.windows.get(i);
            int until = Math.min(window.testUntil(), line.slots);
            Arrays.fill(blocked[i], Math.min(window.testFrom(), until), until, true);
        }
        for (int b = 0; b < starts.size(); b++) {
            int from = starts.get(b);
            Task task = line.classBreaks.get(b);
            for (SeatWindow window : from == NONE ? List.<SeatWindow>of() : takingPart(task, from)) {
                Arrays.fill(blocked[line.windows.indexOf(window)], from, from + task.length(), true);
            }
        }
        return blocked;
    }

    private int toldSlot(ActivityId id) {
        return line.problem.announced().stream().filter(a -> a.activity().equals(id))
                .mapToInt(a -> line.exactly(a.from())).filter(s -> s >= 0).findFirst().orElse(-1);
    }

    private IntStream plannedSlots(ActivityId id) {
        return line.problem.previous().strips().stream().flatMap(s -> s.planned().stream())
                .filter(p -> p.activity().equals(id)).map(Assignment::from).distinct()
                .mapToInt((Instant at) -> line.exactly(at)).filter(s -> s >= 0);
    }
}

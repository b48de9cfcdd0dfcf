package benchpace.breaks;

import java.util.Arrays;
import java.util.List;

/** A plan in the making: when the class breaks begin, and each window's strip with its cost. */
final class Schedule {
    final int[] breakStarts;
    final int[][] strips;
    final long[] costs;

    Schedule(int[] breakStarts, int windows) {
        this(breakStarts, new int[windows][0], new long[windows]);
    }

    private Schedule(int[] breakStarts, int[][] strips, long[] costs) {
        this.breakStarts = breakStarts;
        this.strips = strips;
        this.costs = costs;
    }

    Schedule copy() {
        return new Schedule(breakStarts, strips.clone(), costs.clone());
    }

    Score score() {
        int unplaced = 0;
        for (int start : breakStarts) {
            unplaced += start == BreakTimes.NONE ? 1 : 0;
        }
        return Score.of(unplaced, costs);
    }

    /** By window and slot, whether a class break, or the hand test and the trim, hold the seat then. */
    static boolean[][] blocked(Timeline line, BreakTimes times, int[] breakStarts) {
        boolean[][] blocked = new boolean[line.windows.size()][line.slots];
        for (int i = 0; i < blocked.length; i++) {
            SeatWindow window = line.windows.get(i);
            int until = Math.min(window.testUntil(), line.slots);
            Arrays.fill(blocked[i], Math.min(window.testFrom(), until), until, true);
        }
        for (int b = 0; b < breakStarts.length; b++) {
            if (breakStarts[b] == BreakTimes.NONE) {
                continue;
            }
            Task task = line.classBreaks.get(b);
            List<SeatWindow> taking = times.takingPart(task, breakStarts[b]);
            for (SeatWindow window : taking) {
                boolean[] row = blocked[line.windows.indexOf(window)];
                Arrays.fill(row, breakStarts[b], breakStarts[b] + task.length(), true);
            }
        }
        return blocked;
    }
}

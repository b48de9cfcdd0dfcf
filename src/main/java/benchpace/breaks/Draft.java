package benchpace.breaks;

import java.util.Arrays;
import java.util.List;

/** A plan in the making: when the class breaks begin, and each lane's strip with its cost. */
final class Draft {
    final int[] breakStarts;
    final int[][] strips;
    final long[] costs;

    Draft(int[] breakStarts, int lanes) {
        this(breakStarts, new int[lanes][0], new long[lanes]);
    }

    private Draft(int[] breakStarts, int[][] strips, long[] costs) {
        this.breakStarts = breakStarts;
        this.strips = strips;
        this.costs = costs;
    }

    Draft copy() {
        return new Draft(breakStarts, strips.clone(), costs.clone());
    }

    Score score() {
        int unplaced = 0;
        for (int start : breakStarts) {
            unplaced += start == BreakTimes.NONE ? 1 : 0;
        }
        return Score.of(unplaced, costs);
    }

    /** By lane and slot, whether a class break, or the hand test and the trim, hold the seat then. */
    static boolean[][] blocked(Timeline line, BreakTimes times, int[] breakStarts) {
        boolean[][] blocked = new boolean[line.lanes.size()][line.slots];
        for (int i = 0; i < blocked.length; i++) {
            Lane lane = line.lanes.get(i);
            int until = Math.min(lane.testUntil(), line.slots);
            Arrays.fill(blocked[i], Math.min(lane.testFrom(), until), until, true);
        }
        for (int b = 0; b < breakStarts.length; b++) {
            if (breakStarts[b] == BreakTimes.NONE) {
                continue;
            }
            Task task = line.classBreaks.get(b);
            List<Lane> taking = times.takingPart(task, breakStarts[b]);
            for (Lane lane : taking) {
                boolean[] row = blocked[line.lanes.indexOf(lane)];
                Arrays.fill(row, breakStarts[b], breakStarts[b] + task.length(), true);
            }
        }
        return blocked;
    }
}

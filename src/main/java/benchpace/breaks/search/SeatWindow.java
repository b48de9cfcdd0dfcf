package benchpace.breaks.search;

import benchpace.breaks.Assignment;
import benchpace.plan.SeatNumber;
import java.util.List;

/**
 * One seat in whole minutes.
 *
 * @param from      first free slot
 * @param until     first slot after the wait: its turn at the wrapping, its candle, or its leaving
 * @param mustEndBy what cannot be interrupted is over by this slot even at its longest
 * @param wrapFrom  the slot of its turn at the wrapping, or -1
 * @param called    whether it may be called to the wrapping, its candle being judged set
 * @param testFrom  the slot from which on its candle is tried by hand and finished; it does nothing else then
 * @param testUntil the first slot after that
 * @param uses      by task, how often it may still take part
 * @param last      the task it did last, or -1
 * @param told      by task, the slots in which guests were told it begins; still possible ones only
 * @param before    by task, the slots in which the previous plan began it
 * @param history   what it did and does
 */
record SeatWindow(SeatNumber seat, int from, int until, int mustEndBy, int wrapFrom, boolean called,
            int testFrom, int testUntil, int[] uses, int last, int[][] told, int[][] before,
            List<Assignment> history) {

    boolean waits() {
        return until > from;
    }

    int toldCount() {
        int count = 0;
        for (int[] slots : told) {
            count += slots.length;
        }
        return count;
    }

    boolean isTold(int task, int slot) {
        return contains(told[task], slot);
    }

    boolean wasPlanned(int task, int slot) {
        return contains(before[task], slot);
    }

    /** Whether a class break of this length fits into this seat's wait. */
    boolean allows(Task classBreak, int start) {
        return start >= from && start + classBreak.length() <= until
                && (start + classBreak.length() <= testFrom || start >= testUntil)
                && start + classBreak.mustHave() <= latest(classBreak);
    }

    private int latest(Task task) {
        return task.mustHave() == 0 ? Integer.MAX_VALUE : mustEndBy;
    }

    private static boolean contains(int[] slots, int slot) {
        for (int s : slots) {
            if (s == slot) {
                return true;
            }
        }
        return false;
    }
}

package benchpace.pace;

import java.util.HashMap;
import java.util.Map;

/**
 * The little that judging remembers from one half-minute to the next, so that levels don't flicker. A value: the same
 * record of a class always leads to the same memory, see {@link PaceEngine#remember}.
 *
 * @param tick the last half-minute judged, counted from the class's start; -1 before the first
 * @param seats by seat number
 */
public record PaceMemory(long tick, Map<Integer, SeatMemory> seats) {
    /** Before the class. */
    public static final PaceMemory EMPTY = new PaceMemory(-1, Map.of());

    public PaceMemory {
        seats = Map.copyOf(seats);
    }

    SeatMemory seat(int number) {
        return seats.getOrDefault(number, SeatMemory.NOTHING);
    }

    /**
     * What is remembered of one seat.
     *
     * @param step the step it was judged at, -1 when it was not
     * @param level the level shown
     * @param changedTick the half-minute its level last changed
     * @param behindTicks evaluations in a row that called it behind
     * @param slippingTicks evaluations in a row that called it at least slipping
     * @param calmTicks evaluations in a row below what keeps its level up
     */
    public record SeatMemory(int step, Level level, long changedTick, int behindTicks, int slippingTicks,
                             int calmTicks) {
        static final SeatMemory NOTHING = new SeatMemory(-1, Level.NONE, -1000, 0, 0, 0);
        /** No change of level within so many half-minutes of the one before, unless the seat itself moved. */
        private static final int DWELL_TICKS = 2;
        private static final int IN_A_ROW = 2;

        /** One half-minute later: two evaluations in a row raise or lower a level. */
        SeatMemory next(long tick, int judgedStep, Verdict verdict) {
            if (judgedStep < 0) {
                return NOTHING;
            }
            SeatMemory old = judgedStep == step ? this : new SeatMemory(judgedStep, Level.NONE, -1000, 0, 0, 0);
            int behind = verdict.behind() ? old.behindTicks + 1 : 0;
            int slipping = verdict.behind() || verdict.slipping() ? old.slippingTicks + 1 : 0;
            boolean kept = old.level == Level.NONE
                    || (old.level == Level.BEHIND ? verdict.staysBehind() : verdict.staysSlipping());
            int calm = kept ? 0 : old.calmTicks + 1;
            Level level = old.level;
            if (tick - old.changedTick >= DWELL_TICKS) {
                if (behind >= IN_A_ROW) {
                    level = Level.BEHIND;
                } else if (level != Level.BEHIND && slipping >= IN_A_ROW) {
                    level = Level.SLIPPING;
                } else if (calm >= IN_A_ROW) {
                    level = verdict.staysSlipping() && level == Level.BEHIND ? Level.SLIPPING : Level.NONE;
                }
            }
            long changed = level == old.level ? old.changedTick : tick;
            return new SeatMemory(judgedStep, level, changed, behind, slipping, level == old.level ? calm : 0);
        }
    }

    /**
     * One evaluation of one seat, before memory.
     *
     * @param behind over the threshold that raises "behind"
     * @param staysBehind over the one that keeps it
     * @param slipping over the threshold that raises "slipping"
     * @param staysSlipping over the one that keeps it
     */
    record Verdict(boolean behind, boolean staysBehind, boolean slipping, boolean staysSlipping) { }

    PaceMemory with(long at, Map<Integer, SeatMemory> next) {
        return new PaceMemory(at, new HashMap<>(next));
    }
}

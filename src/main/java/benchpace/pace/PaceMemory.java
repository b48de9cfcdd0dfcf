package benchpace.pace;

import java.util.Map;

/**
 * The little that judging remembers from one half minute to the next, so that levels don't flicker. A value: the same
 * record of a class always leads to the same memory, see {@link PaceEngine#remember}.
 *
 * @param tick the last half minute judged, counted from the class's start; -1 before the first
 * @param events how many moments the record held then
 * @param seats by seat number
 */
public record PaceMemory(long tick, int events, Map<Integer, SeatMemory> seats) {
    /** Before the class. */
    public static final PaceMemory EMPTY = new PaceMemory(-1, -1, Map.of());

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
     * @param changedTick the half minute its level last changed
     * @param suspicion probability of a stall; while nothing at all happens it never falls
     * @param behindTicks evaluations in a row that called it behind
     * @param slippingTicks evaluations in a row that called it at least slipping
     * @param calmTicks evaluations in a row below what keeps its level up
     */
    public record SeatMemory(int step, Level level, long changedTick, double suspicion, int behindTicks,
                             int slippingTicks, int calmTicks) {
        private static final long LONG_AGO = -1000;
        static final SeatMemory NOTHING = new SeatMemory(-1, Level.NONE, LONG_AGO, 0, 0, 0, 0);
        /** No change of level within so many half minutes of the one before, unless the seat itself moved. */
        private static final int DWELL_TICKS = 2;
        private static final int IN_A_ROW = 2;

        /**
         * One half minute later.
         *
         * @param judgedStep the step the seat is judged at, -1 when it is not judged
         * @param stalled the probability that it is stuck
         * @param claimed whether a helper went there; somebody having seen it, one evaluation is enough
         * @param overdue whether it is so long over its time that it is asked about whatever explains it
         * @param quiet whether nothing at all was recorded since the evaluation before: mere waiting clears nobody
         * @param silent whether the tablet is silent for all, so that nobody is flagged anew
         */
        SeatMemory next(long tick, int judgedStep, double stalled, boolean claimed, boolean overdue, boolean quiet,
                        boolean silent, PacePriors.Rule rule) {
            if (judgedStep < 0) {
                return NOTHING;
            }
            if (judgedStep != step) {
                return new SeatMemory(judgedStep, Level.NONE, LONG_AGO, 0, 0, 0, 0)
                        .next(tick, judgedStep, stalled, claimed, overdue, false, silent, rule);
            }
            double p = quiet ? Math.max(suspicion, stalled) : stalled;
            int behind = p >= rule.behindStalled() ? behindTicks + 1 : 0;
            int slipping = overdue || p >= rule.slippingStalled() ? slippingTicks + 1 : 0;
            boolean kept = level == Level.NONE || level == Level.SLIPPING && (overdue || quiet)
                    || p >= (level == Level.BEHIND ? rule.behindOff() : rule.slippingOff());
            int calm = kept ? 0 : calmTicks + 1;
            Level shown = level;
            if (tick - changedTick >= DWELL_TICKS) {
                if (behind >= (claimed ? 1 : IN_A_ROW) && !silent) {
                    shown = Level.BEHIND;
                } else if (level == Level.NONE && slipping >= IN_A_ROW && !silent) {
                    shown = Level.SLIPPING;
                } else if (calm >= IN_A_ROW) {
                    shown = level == Level.BEHIND && (overdue || p >= rule.slippingOff()) ? Level.SLIPPING : Level.NONE;
                }
            }
            boolean same = shown == level;
            return new SeatMemory(step, shown, same ? changedTick : tick, p, behind, slipping, same ? calm : 0);
        }
    }
}

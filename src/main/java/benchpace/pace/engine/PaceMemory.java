package benchpace.pace.engine;

import benchpace.pace.Level;
import benchpace.pace.belief.PacePriors;
import java.util.Map;
import java.util.Optional;

/**
 * The little that judging remembers from one half minute to the next, so that levels don't flicker. A value: the same
 * record of a class always leads to the same memory, see {@link PaceEngine#remember}.
 *
 * @param tick the last half minute judged, counted from the class's start; -1 before the first
 * @param events how many moments the record held then
 * @param seats by seat number
 * @param earlier a memory of some minutes before, if there was one, to start from should the past since then change
 */
public record PaceMemory(long tick, int events, Map<Integer, SeatMemory> seats, Optional<PaceMemory> earlier) {
    /** Before the class. */
    public static final PaceMemory EMPTY = new PaceMemory(-1, -1, Map.of(), Optional.empty());
    /** One memory in so many half minutes is kept: few, and an undo is mostly of what was tapped just now. */
    private static final int KEPT_TICKS = 6;

    public PaceMemory {
        seats = Map.copyOf(seats);
    }

    /** What the memory of the next half minute goes back to should the past change. */
    Optional<PaceMemory> toGoBackTo() {
        return tick >= 0 && tick % KEPT_TICKS == 0 ? Optional.of(this) : earlier;
    }

    SeatMemory seat(int number) {
        return seats.getOrDefault(number, SeatMemory.NOTHING);
    }

    /**
     * What one evaluation says of a seat.
     *
     * @param step the step it is judged at, -1 when it is not judged
     * @param stalled the probability that it is stuck
     * @param claimed whether a helper went there; somebody having seen it, one evaluation is enough
     * @param overdue whether it is so long over its time that it is asked about whatever explains it
     * @param alone whether it is, and all others wait for it alone: stuck or done untold, somebody has to go and look
     * @param quiet whether nothing at all was recorded since the evaluation before: mere waiting clears nobody
     * @param silent whether the tablet is silent for all, so that nobody is flagged anew
     */
    record Look(int step, double stalled, boolean claimed, boolean overdue, boolean alone, boolean quiet,
                boolean silent) {
        /** The same for a seat that was at another step before: then something did happen. */
        Look moved() {
            return new Look(step, stalled, claimed, overdue, alone, false, silent);
        }
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
        /** So many half minutes a question stays, that there is time to answer, before an uncertain red follows it. */
        private static final int QUESTION_TICKS = 4;

        /** One half minute later. */
        SeatMemory next(long tick, Look look, PacePriors.Rule rule) {
            if (look.step() < 0) {
                return NOTHING;
            }
            if (look.step() != step) {
                return new SeatMemory(look.step(), Level.NONE, LONG_AGO, 0, 0, 0, 0).next(tick, look.moved(), rule);
            }
            double p = look.quiet() ? Math.max(suspicion, look.stalled()) : look.stalled();
            int behind = look.alone() || p >= rule.behindStalled() ? behindTicks + 1 : 0;
            int slipping = look.overdue() || p >= rule.slippingStalled() ? slippingTicks + 1 : 0;
            boolean kept = level == Level.NONE || level == Level.SLIPPING && (look.overdue() || look.quiet())
                    || look.alone()
                    || p >= (level == Level.BEHIND ? rule.behindOff() : rule.slippingOff());
            int calm = kept ? 0 : calmTicks + 1;
            boolean certain = look.claimed() || look.alone() || p >= rule.certainStalled();
            boolean asked = level == Level.SLIPPING && tick - changedTick >= QUESTION_TICKS;
            Level shown = level;
            if (tick - changedTick >= DWELL_TICKS) {
                if (behind >= (look.claimed() ? 1 : IN_A_ROW) && (asked || certain) && !look.silent()) {
                    shown = Level.BEHIND;
                } else if (level == Level.NONE && slipping >= IN_A_ROW && !look.silent()) {
                    shown = Level.SLIPPING;
                } else if (calm >= IN_A_ROW) {
                    shown = level == Level.BEHIND && (look.overdue() || p >= rule.slippingOff()) ? Level.SLIPPING
                            : Level.NONE;
                }
            }
            boolean same = shown == level;
            return new SeatMemory(step, shown, same ? changedTick : tick, p, behind, slipping, same ? calm : 0);
        }
    }
}

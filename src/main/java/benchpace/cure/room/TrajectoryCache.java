package benchpace.cure.room;

import benchpace.cure.CoolingCase;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keeps the {@link LossTrajectories} of the cases met lately, so that a class with forty alike candles solves one. A
 * pure memo: the same case always has the same answer. Safe for use by many threads, and none waits for another to
 * solve: two that meet the same new case both do.
 */
public final class TrajectoryCache {
    private static final int MOST_CASES = 256;

    private final Map<CoolingCase, LossTrajectories> kept = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<CoolingCase, LossTrajectories> eldest) {
            return size() > MOST_CASES;
        }
    };

    /** The trajectories of a case, solved when it is new. */
    public LossTrajectories of(CoolingCase c) {
        LossTrajectories found = known(c);
        return found == null ? keep(c, LossTrajectories.of(c)) : found;
    }

    private synchronized LossTrajectories known(CoolingCase c) {
        return kept.get(c);
    }

    private synchronized LossTrajectories keep(CoolingCase c, LossTrajectories solved) {
        kept.put(c, solved);
        return solved;
    }
}

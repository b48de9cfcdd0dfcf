package benchpace.cure;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keeps the {@link LossTrajectories} of the cases met lately, so that a class with forty alike candles solves one. A
 * pure memo: the same case always has the same answer. For one thread at a time.
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
        LossTrajectories found = kept.get(c);
        if (found == null) {
            found = LossTrajectories.of(c);
            kept.put(c, found);
        }
        return found;
    }
}

package benchpace.web.plans;

import benchpace.cure.room.TrajectoryCache;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import benchpace.prep.evening.TypicalEvening;
import java.util.LinkedHashMap;
import java.util.Map;

/** So few evenings of a plan that they are gone through at once: for a first guess, and for one that is typical. */
final class FewEvenings {
    private static final int FEW = 101;
    private static final long SEED = 1;
    private static final int MOST_KEPT = 8;

    private final TrajectoryCache candles = new TrajectoryCache();
    private final Map<Setting, Evenings> kept = new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override protected boolean removeEldestEntry(Map.Entry<Setting, Evenings> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** One device at a time: the others type on meanwhile. */
    synchronized Evenings of(Setting setting) {
        Evenings known = kept.get(setting);
        if (known == null) {
            known = Evenings.of(setting, SEED, FEW, candles, Evenings.Progress.UNTOLD);
            kept.put(setting, known);
        }
        return known;
    }

    TypicalEvening typical(Setting setting) {
        return of(setting).typical(candles);
    }
}

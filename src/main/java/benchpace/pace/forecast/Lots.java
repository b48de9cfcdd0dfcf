package benchpace.pace.forecast;

import java.util.SplittableRandom;

/**
 * Chance that hangs on what it is for: the third evening's draw for seat 4 at the wicks is the same whatever else the
 * plan holds, so that two plans are compared on the same evenings (common random numbers; Law, <i>Simulation Modeling
 * and Analysis</i>, ch. 11).
 *
 * @param seed    of all evenings
 * @param evening which, from 0
 */
public record Lots(long seed, int evening) {
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final int CLASS = -1;
    private static final int WHOLE = -1;

    /** For what the whole class shares. */
    public SplittableRandom ofClass() {
        return of(CLASS, WHOLE);
    }

    /** For what the whole class shares at a step. */
    public SplittableRandom ofStep(int step) {
        return of(CLASS, step);
    }

    /** For a guest and a candle. */
    public SplittableRandom ofSeat(int seat) {
        return of(seat, WHOLE);
    }

    /** For a guest at a step. */
    public SplittableRandom of(int seat, int step) {
        long mixed = mixed(seed + GOLDEN_GAMMA * evening);
        mixed = mixed(mixed + GOLDEN_GAMMA * seat);
        return new SplittableRandom(mixed(mixed + GOLDEN_GAMMA * step));
    }

    /** Stafford's variant 13 of the MurmurHash3 finaliser, as SplittableRandom's own. */
    private static long mixed(long z) {
        long a = (z ^ z >>> 30) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ a >>> 27) * 0x94d049bb133111ebL;
        return b ^ b >>> 31;
    }
}

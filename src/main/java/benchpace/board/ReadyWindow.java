package benchpace.board;

import java.time.Instant;

/**
 * When a candle, or the last one of a class, should be firm enough to try: never one instant of certainty.
 *
 * @param from   one candle in ten is ready earlier
 * @param likely half are
 * @param until  nine in ten are
 */
public record ReadyWindow(Instant from, Instant likely, Instant until, Basis basis) {

    /** What the window rests on. */
    public enum Basis {
        /** The fixed figure of the plan. */
        PLAN_FIGURE,
        /** The cooling of this candle in this room, as computed. */
        COMPUTED,
        /** The instructor's hand test. */
        HAND_TEST
    }

    public ReadyWindow {
        if (likely.isBefore(from) || until.isBefore(likely)) {
            throw new IllegalArgumentException("a window runs " + from + " <= " + likely + " <= " + until);
        }
    }
}

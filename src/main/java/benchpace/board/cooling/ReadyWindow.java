package benchpace.board.cooling;

import java.time.Instant;

/**
 * When a candle should be firm enough to try, as reckoned: never one instant of certainty. What screens say of it is
 * its {@link SaidRange}.
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
        /** The hand: the test, or a step after the cure that was tapped. */
        HAND_TEST
    }

    public ReadyWindow {
        if (likely.isBefore(from) || until.isBefore(likely)) {
            throw new IllegalArgumentException("a window runs " + from + " <= " + likely + " <= " + until);
        }
    }

    /** Somebody found it firm. */
    static ReadyWindow byHand(Instant at) {
        return new ReadyWindow(at, at, at, Basis.HAND_TEST);
    }
}

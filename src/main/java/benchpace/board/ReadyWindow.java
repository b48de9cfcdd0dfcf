package benchpace.board;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

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

    /**
     * The window of the last of several candles. They share a room, whose error moves all of them together, so each end
     * is the latest of theirs. Candles that were tried by hand no longer hold it while others wait.
     */
    static Optional<ReadyWindow> last(List<ReadyWindow> all) {
        List<ReadyWindow> waiting = all.stream().filter(w -> w.basis() != Basis.HAND_TEST).toList();
        List<ReadyWindow> some = waiting.isEmpty() ? all : waiting;
        return some.stream().reduce((a, b) -> {
            ReadyWindow later = b.likely.isAfter(a.likely) ? b : a;
            return new ReadyWindow(latest(a.from, b.from), later.likely, latest(a.until, b.until), later.basis);
        });
    }

    private static Instant latest(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}

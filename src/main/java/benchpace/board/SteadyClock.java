package benchpace.board;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.LongSupplier;

/**
 * The board's time: follows the computer's clock forwards, and never goes back. While the computer's clock stands
 * behind, as after being set back in the middle of a class, it goes on by elapsed time; a laptop that slept catches up.
 */
public final class SteadyClock implements InstantSource {
    private final InstantSource wall;
    private final LongSupplier elapsedNanos;
    private Instant last;
    private long lastNanos;

    /** @param notBefore the last instant already written down anywhere; the clock starts no earlier */
    public SteadyClock(InstantSource wall, LongSupplier elapsedNanos, Instant notBefore) {
        this.wall = wall;
        this.elapsedNanos = elapsedNanos;
        this.last = notBefore;
        this.lastNanos = elapsedNanos.getAsLong();
    }

    public static SteadyClock system(Instant notBefore) {
        return new SteadyClock(InstantSource.system(), System::nanoTime, notBefore);
    }

    @Override public synchronized Instant instant() {
        long nanos = elapsedNanos.getAsLong();
        Instant onward = last.plus(Duration.ofNanos(Math.max(0, nanos - lastNanos)));
        Instant told = wall.instant();
        last = told.isAfter(onward) ? told : onward;
        lastNanos = nanos;
        return last;
    }
}

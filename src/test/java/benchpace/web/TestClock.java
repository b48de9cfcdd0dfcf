package benchpace.web;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands still until a test moves it. */
public final class TestClock implements InstantSource {
    /** An evening in the invented loft. */
    public static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    private final AtomicReference<Instant> now = new AtomicReference<>(EVENING);

    @Override public Instant instant() {
        return now.get();
    }

    public void advance(Duration by) {
        now.updateAndGet(t -> t.plus(by));
    }

    public void advanceMinutes(long minutes) {
        advance(Duration.ofMinutes(minutes));
    }
}

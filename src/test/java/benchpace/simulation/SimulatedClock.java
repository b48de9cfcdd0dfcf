package benchpace.simulation;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** The computer's two clocks: the one on the wall, that people set, and the one that only counts. */
final class SimulatedClock implements InstantSource {
    private volatile Instant wall;
    private volatile long nanos;

    SimulatedClock(Instant wall) {
        this.wall = wall;
    }

    @Override public Instant instant() {
        return wall;
    }

    long nanos() {
        return nanos;
    }

    void pass(Duration by) {
        wall = wall.plus(by);
        nanos += by.toNanos();
    }

    void setBy(Duration by) {
        wall = wall.plus(by);
    }
}

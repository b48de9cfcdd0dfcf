package benchpace.simulation;

import benchpace.board.time.LivedTime;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** The computer's two clocks: the one on the wall, that people set, and the one that only counts. */
final class SimulatedClock implements InstantSource, LivedTime {
    private volatile Instant wall;
    private volatile long nanos;

    SimulatedClock(Instant wall) {
        this.wall = wall;
    }

    @Override public Instant instant() {
        return wall;
    }

    @Override public Duration now() {
        return Duration.ofNanos(nanos);
    }

    @Override public boolean countsSleep() {
        return true;
    }

    void pass(Duration by) {
        wall = wall.plus(by);
        nanos += by.toNanos();
    }

    void setBy(Duration by) {
        wall = wall.plus(by);
    }
}

package benchpace.board.playback;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.function.Supplier;

/**
 * The time of an evening that is played back: it goes on so many times as fast as time passes, stands still, and is
 * moved along. It never leaves the evening. Safe for use by many threads.
 */
final class PlaybackTime implements InstantSource {
    /** As the evening went. */
    static final int SLOWEST = 1;
    /** An hour a minute. */
    static final int FASTEST = 60;

    private final Instant from;
    private final Instant until;
    private final Supplier<Duration> passing;
    private Instant base;
    private Duration since;
    private int speed = SLOWEST;
    private boolean paused;
    private long turn = 1;

    /** @param passing passing time, from an arbitrary beginning; never less than before */
    PlaybackTime(Instant from, Instant until, Supplier<Duration> passing) {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("an evening ends after it began");
        }
        this.from = from;
        this.until = until;
        this.passing = passing;
        this.base = from;
        this.since = passing.get();
    }

    /** To the millisecond, as logs keep it. */
    @Override public synchronized Instant instant() {
        return at(passing.get());
    }

    private Instant at(Duration now) {
        Duration passed = now.minus(since);
        Instant at = paused || passed.isNegative() ? base : base.plus(passed.multipliedBy(speed));
        return (at.isAfter(until) ? until : at).truncatedTo(ChronoUnit.MILLIS);
    }

    synchronized void pause(boolean still) {
        turnAt(passing.get());
        paused = still;
    }

    /** @param times from {@value #SLOWEST} to {@value #FASTEST} */
    synchronized void speed(int times) {
        if (times < SLOWEST || times > FASTEST) {
            throw new IllegalArgumentException("the speed is from " + SLOWEST + " to " + FASTEST + ", not " + times);
        }
        turnAt(passing.get());
        speed = times;
    }

    /** @param to between its beginning and its end */
    synchronized void moveTo(Instant to) {
        if (to.isBefore(from) || to.isAfter(until)) {
            throw new IllegalArgumentException("it plays from " + from + " to " + until + ", without " + to);
        }
        turnAt(passing.get());
        base = to;
    }

    /** What went on so far ends here. */
    private void turnAt(Duration now) {
        base = at(now);
        since = now;
        turn++;
    }

    synchronized State state() {
        return new State(instant(), speed, paused, turn);
    }

    Instant from() {
        return from;
    }

    Instant until() {
        return until;
    }

    /** All of one moment. */
    record State(Instant at, int speed, boolean paused, long turn) { }
}

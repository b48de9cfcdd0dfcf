package benchpace.board.time;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.function.Predicate;

/** A computer's clock that can be set, and its count of passing time, which goes by itself. */
public final class SettableClocks implements InstantSource, LivedTime {
    private Instant wall;
    private Duration lived = Duration.ofDays(3);
    private final boolean countsSleep;

    public SettableClocks(Instant wall, boolean countsSleep) {
        this.wall = wall;
        this.countsSleep = countsSleep;
    }

    /** The board's time by these, as after a start. */
    public SteadyClock start() {
        return start(now -> true);
    }

    /** The same, on a board that finds some first times unlikely. */
    public SteadyClock start(Predicate<Instant> likely) {
        return new SteadyClock(this, this, likely);
    }

    /** Time passes, by both alike. */
    public synchronized SettableClocks pass(Duration time) {
        wall = wall.plus(time);
        lived = lived.plus(time);
        return this;
    }

    public SettableClocks passMinutes(long minutes) {
        return pass(Duration.ofMinutes(minutes));
    }

    /** Somebody or something sets the computer's clock. */
    public synchronized SettableClocks jump(Duration by) {
        wall = wall.plus(by);
        return this;
    }

    public synchronized SettableClocks set(Instant to) {
        wall = to;
        return this;
    }

    /** The lid is closed for so long. */
    public synchronized SettableClocks sleep(Duration time) {
        wall = wall.plus(time);
        lived = countsSleep ? lived.plus(time) : lived;
        return this;
    }

    @Override public synchronized Instant instant() {
        return wall;
    }

    @Override public synchronized Duration now() {
        return lived;
    }

    @Override public boolean countsSleep() {
        return countsSleep;
    }
}

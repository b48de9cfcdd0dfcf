package benchpace.board.time;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Counts on while the computer sleeps, where the system tells of it. {@link System#nanoTime} is fine and stands still
 * in a sleep (on Linux it is {@code CLOCK_MONOTONIC}, which "does not count time that the system is suspended",
 * clock_gettime(2)). The first figure of {@code /proc/uptime} is coarse, a hundredth of a second, and goes on ("the
 * uptime of the system (including time spent in suspend)", proc_uptime(5)). What the second has gained on the first was
 * slept. Neither moves when a clock is set.
 *
 * <p>Where there is no such file, as on macOS and Windows, a sleep cannot be told from a clock that was set.
 */
final class AwakeAndAsleep implements LivedTime {
    /** As often as the coarse count is looked at. */
    private static final Duration LOOKS_EVERY = Duration.ofSeconds(1);
    /** Less than this is how coarse the count is. */
    private static final Duration SHORTEST_SLEEP = Duration.ofSeconds(1);
    private static final Path UPTIME = Path.of("/proc/uptime");

    private final LongSupplier awakeNanos;
    private final Supplier<Optional<Duration>> sinceBoot;
    private final long firstNanos;
    private final Optional<Duration> atFirst;
    private Duration asleep = Duration.ZERO;
    private Duration lookedAt = Duration.ZERO;

    /**
     * @param awakeNanos counts while the computer is awake, nanoseconds
     * @param sinceBoot  counts always; empty where it cannot be told
     */
    AwakeAndAsleep(LongSupplier awakeNanos, Supplier<Optional<Duration>> sinceBoot) {
        this.awakeNanos = awakeNanos;
        this.sinceBoot = sinceBoot;
        this.firstNanos = awakeNanos.getAsLong();
        this.atFirst = sinceBoot.get();
    }

    static LivedTime ofThisComputer() {
        return new AwakeAndAsleep(System::nanoTime, AwakeAndAsleep::uptime);
    }

    @Override public synchronized Duration now() {
        Duration awake = Duration.ofNanos(awakeNanos.getAsLong() - firstNanos);
        if (countsSleep() && awake.minus(lookedAt).compareTo(LOOKS_EVERY) >= 0) {
            lookedAt = awake;
            sinceBoot.get().ifPresent(boot -> look(boot.minus(atFirst.orElseThrow()).minus(awake)));
        }
        return awake.plus(asleep);
    }

    private void look(Duration slept) {
        if (slept.minus(asleep).compareTo(SHORTEST_SLEEP) >= 0) {
            asleep = slept;
        }
    }

    @Override public boolean countsSleep() {
        return atFirst.isPresent();
    }

    private static Optional<Duration> uptime() {
        try {
            String seconds = Files.readString(UPTIME).split(" ", 2)[0];
            return Optional.of(Duration.ofMillis(Math.round(Double.parseDouble(seconds) * 1000)));
        } catch (IOException | NumberFormatException | SecurityException e) {
            return Optional.empty();
        }
    }
}

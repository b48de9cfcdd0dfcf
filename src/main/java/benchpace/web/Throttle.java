package benchpace.web;

import benchpace.web.screen.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Slows guessing down: after {@value #FREE} wrong answers from one address each further one costs a wait, 30 s and
 * then twice as long every time, up to an hour; after {@value #MOST} wrong ones from everywhere nobody is let in by PIN
 * until that count has faded: it is halved every full hour. Waits as in NIST SP 800-63B, 5.2.2 ("30 seconds up to an
 * hour", at most 100); the fading is ours, so that guesses from many addresses shut the board for an hour and not for
 * the evening; it leaves a patient guesser about 50 tries an hour.
 *
 * <p>Only the instructor's PIN or link clears an address. A helper's neither clears nor counts: whoever knows it could
 * else guess the instructor's without end.
 */
final class Throttle {
    static final int FREE = 5;
    static final int MOST = 100;
    static final Duration FADES_EVERY = Duration.ofHours(1);
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);
    private static final int REMEMBERED = 10_000;

    private final Map<String, Misses> byAddress = new HashMap<>();
    private int everywhere;
    private Instant fadedAt = Instant.MIN;

    private record Misses(int count, Instant until) { }

    /**
     * What became of a try.
     *
     * @param pause how long this address has to wait before it may try again; then nothing was compared
     * @param role whose PIN it was; empty if it was wrong or not compared
     */
    record Try(Optional<Duration> pause, Optional<Role> role) { }

    /** Looks whether this address may try, compares and counts, all in one step: tries side by side gain nothing. */
    synchronized Try attempt(String address, Instant now, Supplier<Optional<Role>> compare) {
        Optional<Duration> wait = wait(address, now);
        if (wait.isPresent()) {
            return new Try(wait, Optional.empty());
        }
        Optional<Role> role = compare.get();
        if (role.isEmpty()) {
            wrong(address, now);
        } else if (role.get() == Role.INSTRUCTOR) {
            clear(address);
        }
        return new Try(Optional.empty(), role);
    }

    private Optional<Duration> wait(String address, Instant now) {
        fade(now);
        if (everywhere >= MOST) {
            return Optional.of(Duration.between(now, fadedAt.plus(FADES_EVERY)));
        }
        Misses misses = byAddress.get(address);
        return misses == null || !misses.until.isAfter(now)
                ? Optional.empty() : Optional.of(Duration.between(now, misses.until));
    }

    private void fade(Instant now) {
        if (everywhere == 0) {
            fadedAt = now;
            return;
        }
        long hours = Math.max(0, Duration.between(fadedAt, now).dividedBy(FADES_EVERY));
        everywhere = hours > 30 ? 0 : everywhere >> hours;
        fadedAt = fadedAt.plus(FADES_EVERY.multipliedBy(hours));
    }

    private void wrong(String address, Instant now) {
        everywhere++;
        if (byAddress.size() >= REMEMBERED) {
            byAddress.values().removeIf(m -> !m.until.isAfter(now));
        }
        int count = byAddress.getOrDefault(address, new Misses(0, now)).count + 1;
        Duration wait = count < FREE ? Duration.ZERO
                : FIRST_WAIT.multipliedBy(1L << Math.min(count - FREE, 10));
        byAddress.put(address, new Misses(count, now.plus(wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait)));
    }

    /** The instructor is at this address. */
    synchronized void clear(String address) {
        Misses misses = byAddress.remove(address);
        everywhere -= misses == null ? 0 : Math.min(everywhere, misses.count);
    }
}

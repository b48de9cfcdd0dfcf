package benchpace.web;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Slows guessing down: after {@value #FREE} wrong answers in a row from one address each further one costs a wait,
 * 30 s and then twice as long every time, up to an hour; after {@value #MOST} wrong ones from everywhere nobody is let
 * in by PIN until the board is restarted. Waits as in NIST SP 800-63B, 5.2.2 ("30 seconds up to an hour", at most 100).
 */
final class Throttle {
    static final int FREE = 5;
    static final int MOST = 100;
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);
    private static final int REMEMBERED = 10_000;

    private final Map<String, Misses> byAddress = new HashMap<>();
    private int everywhere;

    private record Misses(int count, Instant until) { }

    /** How long this address has to wait before it may try again. */
    synchronized Optional<Duration> wait(String address, Instant now) {
        if (everywhere >= MOST) {
            return Optional.of(LONGEST_WAIT);
        }
        Misses misses = byAddress.get(address);
        return misses == null || !misses.until.isAfter(now)
                ? Optional.empty() : Optional.of(Duration.between(now, misses.until));
    }

    synchronized void wrong(String address, Instant now) {
        everywhere++;
        if (byAddress.size() >= REMEMBERED) {
            byAddress.clear();
        }
        int count = byAddress.getOrDefault(address, new Misses(0, now)).count + 1;
        Duration wait = count < FREE ? Duration.ZERO
                : FIRST_WAIT.multipliedBy(1L << Math.min(count - FREE, 10));
        byAddress.put(address, new Misses(count, now.plus(wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait)));
    }

    synchronized void right(String address) {
        Misses misses = byAddress.remove(address);
        everywhere -= misses == null ? 0 : Math.min(everywhere, misses.count);
    }
}

package benchpace.web.pairing;

import benchpace.web.pairing.Caller.Circle;
import benchpace.web.screen.shell.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Slows guessing down: after {@value #FREE} wrong answers from one caller each further one costs a wait, 30 s and then
 * twice as long every time, up to an hour; after {@value #MOST} wrong ones from all of a {@link Circle} nobody of it is
 * let in by PIN until that count has faded: it is halved every full hour. Waits as in NIST SP 800-63B, 5.2.2 ("30
 * seconds up to an hour", at most 100); the fading is ours, so that guesses from many addresses shut the board for an
 * hour and not for the evening.
 *
 * <p>What that leaves a guesser: of each circle at most 100 tries at once and 50 an hour after that, 250 in an evening
 * of four hours, so that a PIN of six digits falls with odds of 1 in 4,000. On a local network addresses cost nothing,
 * so for strangers the common count is the bound; it shuts out strangers only, and links open all the while.
 *
 * <p>Only the instructor's PIN or link clears a caller. A helper's neither clears nor counts: whoever knows it could
 * else guess the instructor's without end.
 */
public final class Throttle {
    public static final int FREE = 5;
    static final int MOST = 100;
    static final Duration FADES_EVERY = Duration.ofHours(1);
    private static final Duration FIRST_WAIT = Duration.ofSeconds(30);
    private static final Duration LONGEST_WAIT = Duration.ofHours(1);
    private static final int REMEMBERED = 10_000;

    private final Map<String, Misses> byCaller = new HashMap<>();
    private final Map<Circle, Count> counts = new EnumMap<>(Circle.class);
    private final Deque<Miss> lately = new ArrayDeque<>();

    private record Misses(int count, Instant until) { }

    private record Miss(Instant at, Caller caller) { }

    /** Wrong ones of a circle. @param from the beginning of the hour that runs */
    private record Count(int wrong, Instant from) {
        Count fadedBy(Instant now) {
            long hours = Math.max(0, Duration.between(from, now).dividedBy(FADES_EVERY));
            return wrong == 0 ? new Count(0, now)
                    : new Count(hours > 30 ? 0 : wrong >> hours, from.plus(FADES_EVERY.multipliedBy(hours)));
        }

        Optional<Instant> shutUntil() {
            return wrong < MOST ? Optional.empty() : Optional.of(from.plus(FADES_EVERY));
        }
    }

    /**
     * What became of a try.
     *
     * @param pause how long this caller has to wait before it may try again; then nothing was compared
     * @param role  whose PIN it was; empty if it was wrong or not compared
     */
    record Try(Optional<Duration> pause, Optional<Role> role) { }

    /**
     * What people are told about guessing.
     *
     * @param wrong     PINs that were compared and wrong in the last hour
     * @param addresses from so many networks
     * @param shutUntil until when no stranger is let in by PIN
     */
    public record Guesses(int wrong, int addresses, Optional<Instant> shutUntil) { }

    /** Looks whether this caller may try, compares and counts, all in one step: tries side by side gain nothing. */
    synchronized Try attempt(Caller caller, Instant now, Supplier<Optional<Role>> compare) {
        Optional<Duration> wait = wait(caller, now);
        if (wait.isPresent()) {
            return new Try(wait, Optional.empty());
        }
        Optional<Role> role = compare.get();
        if (role.isEmpty()) {
            wrong(caller, now);
        } else if (role.get() == Role.INSTRUCTOR) {
            clear(caller);
        }
        return new Try(Optional.empty(), role);
    }

    private Optional<Duration> wait(Caller caller, Instant now) {
        Optional<Instant> shut = count(caller.circle(), now).shutUntil();
        if (shut.isPresent()) {
            return Optional.of(Duration.between(now, shut.get()));
        }
        Misses misses = byCaller.get(caller.name());
        return misses == null || !misses.until.isAfter(now)
                ? Optional.empty() : Optional.of(Duration.between(now, misses.until));
    }

    private Count count(Circle circle, Instant now) {
        return counts.compute(circle, (c, count) -> count == null ? new Count(0, now) : count.fadedBy(now));
    }

    private void wrong(Caller caller, Instant now) {
        counts.computeIfPresent(caller.circle(), (c, count) -> new Count(count.wrong + 1, count.from));
        forget(now);
        lately.add(new Miss(now, caller));
        if (byCaller.size() >= REMEMBERED) {
            byCaller.values().removeIf(m -> !m.until.isAfter(now));
        }
        int count = byCaller.getOrDefault(caller.name(), new Misses(0, now)).count + 1;
        Duration wait = count < FREE ? Duration.ZERO
                : FIRST_WAIT.multipliedBy(1L << Math.min(count - FREE, 10));
        byCaller.put(caller.name(),
                new Misses(count, now.plus(wait.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : wait)));
    }

    private void forget(Instant now) {
        while (!lately.isEmpty() && !lately.peek().at.plus(Duration.ofHours(1)).isAfter(now)) {
            lately.remove();
        }
    }

    /** The instructor is there. */
    synchronized void clear(Caller caller) {
        lately.removeIf(miss -> miss.caller.equals(caller)); // they mistyped it themselves
        Misses misses = byCaller.remove(caller.name());
        if (misses != null) {
            counts.computeIfPresent(caller.circle(), (c, count) ->
                    new Count(count.wrong - Math.min(count.wrong, misses.count), count.from));
        }
    }

    synchronized Guesses guesses(Instant now) {
        forget(now);
        return new Guesses(lately.size(), (int) lately.stream().map(m -> m.caller.from()).distinct().count(),
                count(Circle.STRANGERS, now).shutUntil());
    }
}

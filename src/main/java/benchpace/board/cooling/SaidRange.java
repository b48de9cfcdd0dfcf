package benchpace.board.cooling;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is said of when a candle is ready: the computed range rounded outward to five minutes, once and here, so that
 * every screen, mark, call, countdown and tap goes by the same two instants. What lies between them and the computed
 * ones is said of nobody. A hand test is said to the second.
 *
 * <p>There are three phases and no other. <i>Before</i> the range nothing can be tried, and a countdown counts to its
 * beginning. <i>Inside</i> it the candle may be ready and no minutes are told. <i>Past</i> it somebody should try it.
 *
 * @param from  a full five minutes, not after the computed beginning
 * @param until a full five minutes, not before the computed end, and later than {@code from}
 */
public record SaidRange(Instant from, Instant until, ReadyWindow.Basis basis) {
    /** An estimate promises no exact minute. */
    private static final Duration STEP = Duration.ofMinutes(5);

    /** Where an instant lies, as seen from a range. */
    public enum Phase { BEFORE, INSIDE, PAST }

    public SaidRange {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("a range runs " + from + " <= " + until);
        }
    }

    /** Of one candle, or of what becomes of it, that stands alone. */
    public static SaidRange of(ReadyWindow window) {
        if (window.basis() == ReadyWindow.Basis.HAND_TEST) {
            return new SaidRange(window.from(), window.until(), window.basis());
        }
        Instant from = earliest(window.from());
        Instant until = latest(window.until());
        return new SaidRange(from, until.isAfter(from) ? until : from.plus(STEP), window.basis());
    }

    /**
     * Of the candles of one class. Ranges that only the rounding parts, by one step at either end, are one range: two
     * candles poured within a minute are not told apart because a full five minutes lies between them.
     */
    static Map<SeatNumber, SaidRange> together(Map<SeatNumber, ReadyWindow> windows) {
        List<SaidRange> groups = new ArrayList<>(windows.values().stream().map(SaidRange::of)
                .filter(r -> r.basis != ReadyWindow.Basis.HAND_TEST).distinct()
                .sorted(Comparator.comparing(SaidRange::from).thenComparing(SaidRange::until)).toList());
        while (joinFirst(groups)) {
            groups.sort(Comparator.comparing(SaidRange::from).thenComparing(SaidRange::until));
        }
        Map<SeatNumber, SaidRange> said = new TreeMap<>();
        windows.forEach((seat, window) -> {
            SaidRange alone = of(window);
            said.put(seat, groups.stream().filter(g -> g.covers(alone)).min(Comparator.comparing(g -> g.beyond(alone)))
                    .filter(g -> alone.basis != ReadyWindow.Basis.HAND_TEST).orElse(alone));
        });
        return Collections.unmodifiableMap(said);
    }

    /** Joins the first two that are alike. @return whether there were any */
    private static boolean joinFirst(List<SaidRange> groups) {
        for (int i = 0; i < groups.size(); i++) {
            for (int j = i + 1; j < groups.size(); j++) {
                if (groups.get(i).isAlike(groups.get(j))) {
                    groups.set(i, groups.get(i).with(groups.remove(j)));
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether not more than the rounding parts them. */
    boolean isAlike(SaidRange other) {
        return apart(from, other.from).compareTo(STEP) <= 0 && apart(until, other.until).compareTo(STEP) <= 0;
    }

    /** From the first beginning to the last end of several candles; empty for none. */
    public static Optional<SaidRange> covering(Collection<SaidRange> some) {
        return some.stream().reduce(SaidRange::with);
    }

    /** From the earlier beginning to the later end. */
    public SaidRange with(SaidRange other) {
        return new SaidRange(from.isBefore(other.from) ? from : other.from, later(until, other.until), basis);
    }

    /** The same, not ending before an instant. */
    public SaidRange notBefore(Instant end) {
        return new SaidRange(from, later(until, latest(end)), basis);
    }

    public boolean covers(SaidRange other) {
        return !from.isAfter(other.from) && !until.isBefore(other.until);
    }

    /** How much longer it is than one that it covers. */
    private Duration beyond(SaidRange other) {
        return apart(from, other.from).plus(apart(until, other.until));
    }

    /** The last instant before the range ends is inside it, the first one is too. */
    public Phase phase(Instant now) {
        return now.isBefore(from) ? Phase.BEFORE : now.isBefore(until) ? Phase.INSIDE : Phase.PAST;
    }

    /** How a beginning that is estimated is said: a full five minutes, not after it. */
    public static Instant earliest(Instant at) {
        return Instant.ofEpochSecond(Math.floorDiv(at.getEpochSecond(), STEP.toSeconds()) * STEP.toSeconds());
    }

    /** How an end that is estimated is said, or one instant alone: a full five minutes, not before it. */
    public static Instant latest(Instant at) {
        Instant below = earliest(at);
        return below.equals(at) ? at : below.plus(STEP);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Duration apart(Instant a, Instant b) {
        return Duration.between(a, b).abs();
    }
}

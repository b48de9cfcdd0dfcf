package benchpace.shelf;

import java.time.Duration;
import java.time.Instant;

/**
 * The shop's rules for its shelf. The standard values are common practice, no source.
 *
 * @param readyMargin      added to the late end of a candle's range before it counts as ready to fetch
 * @param collectWithin    from ready on, how long a candle is kept
 * @param eraseAfter       how long after collection, or after a candle was taken back, name and word are kept
 */
public record ShelfSettings(Duration readyMargin, Duration collectWithin, Duration eraseAfter) {
    /** 30 minutes' margin, two weeks to collect, names and words kept 7 days after collection. */
    public static final ShelfSettings STANDARD =
            new ShelfSettings(Duration.ofMinutes(30), Duration.ofDays(14), Duration.ofDays(7));

    private static final long FIVE_MINUTES = 300;

    public ShelfSettings {
        if (readyMargin.isNegative() || collectWithin.isNegative() || collectWithin.isZero()
                || eraseAfter.isNegative()) {
            throw new IllegalArgumentException("a margin or a time of the shelf is negative");
        }
    }

    /**
     * When a candle may be fetched: the late end of its range (nine in ten are ready) and the margin, up to the next
     * full five minutes. An estimate has no minutes, and every screen and tag shall say the same.
     */
    public Instant readyFrom(Instant lateEndOfRange) {
        long seconds = lateEndOfRange.plus(readyMargin).plusNanos(999_999_999).getEpochSecond();
        return Instant.ofEpochSecond(Math.floorDiv(seconds + FIVE_MINUTES - 1, FIVE_MINUTES) * FIVE_MINUTES);
    }

    public Instant collectBy(Instant readyFrom) {
        return readyFrom.plus(collectWithin);
    }
}

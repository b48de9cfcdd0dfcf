package benchpace.breaks;

import java.time.Instant;

/**
 * When a candle is expected to be ready. A candle already judged ready has three times the same instant.
 *
 * @param p10 one candle in ten is ready before this
 * @param p50 as likely before as after
 * @param p90 nine candles in ten are ready by this
 */
public record ReadyRange(Instant p10, Instant p50, Instant p90) {
    public ReadyRange {
        if (p50.isBefore(p10) || p90.isBefore(p50)) {
            throw new IllegalArgumentException("ready range out of order: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** A candle known to be ready since (or at) one instant. */
    public static ReadyRange exactly(Instant ready) {
        return new ReadyRange(ready, ready, ready);
    }
}

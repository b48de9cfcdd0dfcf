package benchpace.board.pacing;

import benchpace.history.Punctuality;
import benchpace.pace.forecast.FinishTimes;
import java.time.Duration;
import java.time.Instant;
import java.util.function.ToDoubleFunction;

/**
 * What is likely of the promised end, each from 0 to 1.
 *
 * @param kept  P(everyone can go when it was promised, or sooner)
 * @param late  P(everyone goes more than {@link #GRACE} later than that)
 * @param early P(everyone can go more than {@link #GRACE} sooner)
 */
public record HomeOdds(double kept, double late, double early) {
    /** Nobody calls it late, or early, within so much. */
    public static final Duration GRACE = Punctuality.GRACE;
    /** From these odds on a thing is said as if it were so. */
    static final double LIKELY = 0.8;

    /**
     * The odds of a class whose last candle is ready at one of these moments, and that needs {@code rest} after it.
     *
     * @param minute what an instant is in the minutes that the moments count in
     * @param now    nobody goes sooner than {@code rest} from now
     */
    static HomeOdds of(FinishTimes times, ToDoubleFunction<Instant> minute, Duration rest, Instant promised,
                       Instant now) {
        Going going = new Going(times, minute, rest, now);
        return new HomeOdds(1 - going.after(promised), going.after(promised.plus(GRACE)),
                1 - going.after(promised.minus(GRACE)));
    }

    /** Of a moment that is known. */
    static HomeOdds known(Instant home, Instant promised) {
        return new HomeOdds(home.isAfter(promised) ? 0 : 1, home.isAfter(promised.plus(GRACE)) ? 1 : 0,
                home.isAfter(promised.minus(GRACE)) ? 0 : 1);
    }

    private record Going(FinishTimes times, ToDoubleFunction<Instant> minute, Duration rest, Instant now) {
        double after(Instant home) {
            return now.plus(rest).isAfter(home) ? 1 : times.laterThan(minute.applyAsDouble(home.minus(rest)));
        }
    }
}

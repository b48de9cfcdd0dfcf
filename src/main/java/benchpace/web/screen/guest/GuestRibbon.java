package benchpace.web.screen.guest;

import benchpace.board.cooling.SaidRange;
import java.time.Duration;
import java.time.Instant;

/**
 * The time of one candle as a ribbon, in hundredths of its length: poured at its left end, now here, ready somewhere in
 * the band. It says what the words beside it say, and so bears none.
 */
public record GuestRibbon(int now, int bandFrom, int bandTo) {
    /** What is shown behind the band, as a share of all before. */
    private static final double BEHIND = 0.08;

    static GuestRibbon of(Instant poured, SaidRange range, Instant now) {
        Instant from = poured.isBefore(range.from()) ? poured : range.from();
        double all = Duration.between(from, range.until()).toSeconds() * (1 + BEHIND);
        return new GuestRibbon(hundredths(from, now, all), hundredths(from, range.from(), all),
                hundredths(from, range.until(), all));
    }

    private static int hundredths(Instant from, Instant at, double all) {
        return (int) Math.round(100 * Math.max(0, Math.min(1, Duration.between(from, at).toSeconds() / all)));
    }
}

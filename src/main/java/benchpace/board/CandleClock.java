package benchpace.board;

import java.time.Instant;
import java.util.Optional;

/**
 * How a poured candle stands.
 *
 * @param judgedSetAt the instructor's hand test, which overrides every forecast
 * @param detail      skin and firmness, where they are computed
 */
public record CandleClock(Instant pouredAt, ReadyWindow ready, Optional<Instant> judgedSetAt,
                          Optional<CureDetail> detail) {

    /** A clock that knows when the candle is ready and no more. */
    public CandleClock(Instant pouredAt, ReadyWindow ready, Optional<Instant> judgedSetAt) {
        this(pouredAt, ready, judgedSetAt, Optional.empty());
    }

    /** Past the likely end of its window without a hand test: somebody should try it. */
    public boolean tryIt(Instant now) {
        return judgedSetAt.isEmpty() && !now.isBefore(ready.until());
    }

    /** The window has begun, so a hand test may succeed. */
    public boolean mayBeReady(Instant now) {
        return judgedSetAt.isPresent() || !now.isBefore(ready.from());
    }
}

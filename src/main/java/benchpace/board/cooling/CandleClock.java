package benchpace.board.cooling;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a poured candle stands. A forecast ends with the hand: once the candle was tried, or a step after the cure was
 * tapped for it, which nobody does to liquid wax, nothing is computed of it any more.
 *
 * @param ready       as computed, for what is reckoned further; no screen says it
 * @param said        what every screen says, and what decides what a tap on it means
 * @param judgedSetAt the instructor's hand test, which overrides every forecast
 * @param detail      skin and firmness, where they are computed
 */
public record CandleClock(Instant pouredAt, ReadyWindow ready, SaidRange said, Optional<Instant> judgedSetAt,
                          Optional<CureDetail> detail) {

    /** A clock said by itself, as long as it is not said with others of its class. */
    public CandleClock(Instant pouredAt, ReadyWindow ready, Optional<Instant> judgedSetAt,
                       Optional<CureDetail> detail) {
        this(pouredAt, ready, SaidRange.of(ready), judgedSetAt, detail);
    }

    /** The clocks of a class, candles alike with one range. */
    static Map<SeatNumber, CandleClock> saidTogether(Map<SeatNumber, CandleClock> clocks) {
        Map<SeatNumber, ReadyWindow> windows = new TreeMap<>();
        clocks.forEach((seat, clock) -> windows.put(seat, clock.ready));
        Map<SeatNumber, SaidRange> said = SaidRange.together(windows);
        Map<SeatNumber, CandleClock> together = new TreeMap<>();
        clocks.forEach((seat, c) -> together.put(seat,
                new CandleClock(c.pouredAt, c.ready, said.get(seat), c.judgedSetAt, c.detail)));
        return Collections.unmodifiableMap(together);
    }

    /**
     * The same once more was told of it; empty if it would have to be computed anew, as after a hand test taken back.
     *
     * @param judged  the hand test, if it was tried
     * @param settled when a hand decided on it
     */
    Optional<CandleClock> after(Optional<Instant> judged, Optional<Instant> settled) {
        if (settled.isEmpty()) {
            return Optional.of(this).filter(c -> !c.settled());
        }
        return settled.map(at -> new CandleClock(pouredAt, ReadyWindow.byHand(at), judged, detail.map(d ->
                new CureDetail(d.candle(), d.name(), Optional.empty(), Optional.empty()))));
    }

    /** A hand has decided: nothing is forecast of it. */
    public boolean settled() {
        return ready.basis() == ReadyWindow.Basis.HAND_TEST;
    }

    /** Of a candle that no hand has decided on. */
    public SaidRange.Phase phase(Instant now) {
        return said.phase(now);
    }

    /** Past its range without a hand test: somebody should try it. */
    public boolean tryIt(Instant now) {
        return !settled() && phase(now) == SaidRange.Phase.PAST;
    }

    /** Its range has begun, so a hand test may succeed. */
    public boolean mayBeReady(Instant now) {
        return settled() || phase(now) != SaidRange.Phase.BEFORE;
    }

    /** Its range is still to come. */
    public boolean stillSets(Instant now) {
        return !mayBeReady(now);
    }
}

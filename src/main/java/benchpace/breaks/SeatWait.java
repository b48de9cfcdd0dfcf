package benchpace.breaks;

import benchpace.live.Stint;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * One seat's wait: when its hands come free, when its candle is ready, and what it has been doing.
 *
 * @param freeFrom     when its pour was done, or is expected to be
 * @param ready        when its candle is expected to be firm enough
 * @param presence     here, leaving, paused or gone
 * @param tapped       the times it was at activities, as tapped, oldest first; may be empty
 * @param mustBeBackBy when something at the table calls it back before the candle is ready; {@link #NOT_CALLED_BACK}
 *                     when nothing does
 * @param candle       the seat that made its candle: its own, or the one it shares with
 * @param handTest     whether that candle is judged set
 */
public record SeatWait(SeatNumber seat, Instant freeFrom, ReadyRange ready, Presence presence, List<Stint> tapped,
                       Instant mustBeBackBy, SeatNumber candle, SetJudgement handTest) {
    /** Nothing calls the seat back before its candle is ready. */
    public static final Instant NOT_CALLED_BACK = Instant.MAX;

    public SeatWait {
        tapped = List.copyOf(tapped);
        if (mustBeBackBy == null || candle == null || handTest == null) {
            throw new IllegalArgumentException("seat " + seat + ": must be back by, candle or hand test is missing");
        }
    }

    /** A seat with a candle of its own, still to be tried by hand, with nothing to do between that and wrapping. */
    public SeatWait(SeatNumber seat, Instant freeFrom, ReadyRange ready, Presence presence, List<Stint> tapped,
                    Instant mustBeBackBy) {
        this(seat, freeFrom, ready, presence, tapped, mustBeBackBy, seat, new SetJudgement.Awaited(Duration.ZERO));
    }

    /** A seat that is here, with nothing tapped and nothing calling it back. */
    public static SeatWait of(SeatNumber seat, Instant freeFrom, ReadyRange ready) {
        return new SeatWait(seat, freeFrom, ready, new Presence.Here(), List.of(), NOT_CALLED_BACK);
    }

    /** The same seat with another presence. */
    public SeatWait with(Presence other) {
        return new SeatWait(seat, freeFrom, ready, other, tapped, mustBeBackBy, candle, handTest);
    }

    /** The same seat with these taps. */
    public SeatWait with(List<Stint> taps) {
        return new SeatWait(seat, freeFrom, ready, presence, taps, mustBeBackBy, candle, handTest);
    }

    /** The same seat after, or before, the hand test. */
    public SeatWait with(SetJudgement other) {
        return new SeatWait(seat, freeFrom, ready, presence, tapped, mustBeBackBy, candle, other);
    }

    /** The same seat, sharing the candle of another. */
    public SeatWait sharing(SeatNumber owner) {
        return new SeatWait(seat, freeFrom, ready, presence, tapped, mustBeBackBy, owner, handTest);
    }
}

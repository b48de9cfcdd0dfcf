package benchpace.breaks;

import java.time.Instant;
import java.util.List;

import benchpace.plan.SeatNumber;

/**
 * One seat's wait: when its hands come free, when its candle is ready, and what it has been doing.
 *
 * @param freeFrom     when its pour was done, or is expected to be
 * @param ready        when its candle is expected to be firm enough
 * @param presence     here, leaving, paused or gone
 * @param tapped       what was tapped of joining and leaving activities, oldest first; may be empty
 * @param mustBeBackBy when something at the table calls it back before the candle is ready; {@link #NOT_CALLED_BACK}
 *                     when nothing does
 */
public record SeatWait(SeatNumber seat, Instant freeFrom, ReadyRange ready, Presence presence, List<Stint> tapped,
                       Instant mustBeBackBy) {
    /** Nothing calls the seat back before its candle is ready. */
    public static final Instant NOT_CALLED_BACK = Instant.MAX;

    public SeatWait {
        tapped = List.copyOf(tapped);
        if (mustBeBackBy == null) {
            throw new IllegalArgumentException("seat " + seat + ": must be back by is missing");
        }
    }

    /** A seat that is here, with nothing tapped and nothing calling it back. */
    public static SeatWait of(SeatNumber seat, Instant freeFrom, ReadyRange ready) {
        return new SeatWait(seat, freeFrom, ready, new Presence.Here(), List.of(), NOT_CALLED_BACK);
    }

    /** The same seat with another presence. */
    public SeatWait with(Presence other) {
        return new SeatWait(seat, freeFrom, ready, other, tapped, mustBeBackBy);
    }

    /** The same seat with these taps. */
    public SeatWait with(List<Stint> taps) {
        return new SeatWait(seat, freeFrom, ready, presence, taps, mustBeBackBy);
    }
}

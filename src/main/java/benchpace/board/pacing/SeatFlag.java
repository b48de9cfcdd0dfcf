package benchpace.board.pacing;

import benchpace.pace.SeatPace;

/**
 * Why a seat should be looked at.
 *
 * @param seat         its number
 * @param step         what the step it is at is called
 * @param minutesOver  whole minutes over what this table needs, at least 0
 * @param priceMinutes whole minutes by which everyone leaves later if it goes on, at least 0
 */
public record SeatFlag(Level level, int seat, String step, int minutesOver, int priceMinutes) {

    /** How much it presses. */
    public enum Level {
        /** Likely to hold the class; look over. */
        SLIPPING,
        /** Holding the class, or about to; go now. */
        BEHIND
    }

    /** @param level what it is flagged for, or would be */
    static SeatFlag of(SeatPace pace, benchpace.pace.Level level, String step) {
        return new SeatFlag(level == benchpace.pace.Level.BEHIND ? Level.BEHIND : Level.SLIPPING, pace.seat(), step,
                pace.overMinutes(), pace.priceMinutes());
    }
}

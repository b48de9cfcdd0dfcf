package benchpace.board.pacing;

/**
 * Why a seat should be looked at.
 *
 * @param reason       one line a person would say, naming the step and the time
 * @param minutesOver  whole minutes over what this table needs, at least 0
 * @param priceMinutes whole minutes by which everyone leaves later if it goes on, at least 0
 */
public record SeatFlag(Level level, String reason, int minutesOver, int priceMinutes) {

    /** How much it presses. */
    public enum Level {
        /** Likely to hold the class; look over. */
        SLIPPING,
        /** Holding the class, or about to; go now. */
        BEHIND
    }
}

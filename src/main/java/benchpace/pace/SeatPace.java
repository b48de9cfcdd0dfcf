package benchpace.pace;

/**
 * One seat's pace at a moment.
 *
 * @param seat its number
 * @param level how loud it is
 * @param step index of the step it is judged at, -1 when it is not judged (away, paused, waiting, poured)
 * @param stepId that step's id, empty when it is not judged
 * @param stalledProbability that it is stuck
 * @param forgottenProbability that it is done and was not ticked
 * @param minutesInStep time in the step, pauses taken out
 * @param expectedMinutes what this guest at this table usually needs
 * @param priceMinutes how much later the last pour is because of this seat, whole minutes; 0 unless flagged or
 *        eased
 * @param savedMinutes how much sooner the last pour is if somebody walks over now; 0 unless flagged or eased
 * @param helped whether a helper has said "I've got it"
 * @param eased the level that is silent only because a helper has just said "sorted"; {@link Level#NONE} otherwise
 */
public record SeatPace(int seat, Level level, int step, String stepId, double stalledProbability,
                       double forgottenProbability, double minutesInStep, double expectedMinutes, int priceMinutes,
                       double savedMinutes, boolean helped, Level eased) {

    /** Minutes over what this table needs, whole, at least 0. */
    public int overMinutes() {
        return (int) Math.max(0, Math.round(minutesInStep - expectedMinutes));
    }
}

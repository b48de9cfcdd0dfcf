package benchpace.report;

import benchpace.pace.Level;

/**
 * A time during which a seat was flagged at a step, minutes from the class's start.
 *
 * @param step index of the step
 * @param level the loudest it became
 * @param toMinutes when the flag was gone
 * @param answeredMinutes when somebody said "I've got it" or "still at it", or ticked the step; infinite if nobody did
 */
public record FlagSpan(int seat, int step, Level level, double fromMinutes, double toMinutes, double answeredMinutes) {
    public boolean answered() {
        return answeredMinutes < Double.POSITIVE_INFINITY;
    }
}

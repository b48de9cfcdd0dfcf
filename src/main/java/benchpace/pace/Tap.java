package benchpace.pace;

/**
 * Somebody said that a seat has finished a step. Taps that were undone are not handed to this package at all.
 *
 * @param step index of the step in the class's order, from 0
 * @param atMinutes when, in minutes from the class's start
 * @param skipped the seat leaves this step out: it says where the seat is, nothing about how long the step takes
 */
public record Tap(int step, double atMinutes, boolean skipped) {
    public Tap {
        if (step < 0 || Double.isNaN(atMinutes)) {
            throw new IllegalArgumentException("tap of step " + step + " at " + atMinutes);
        }
    }
}

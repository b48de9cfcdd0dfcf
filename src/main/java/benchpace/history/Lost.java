package benchpace.history;

/**
 * By how much earlier the last candle would have been ready had one thing kept to the plan. Such minutes overlap and do
 * not add up ({@link benchpace.report.WhatHeld}).
 *
 * @param step    id of the step; empty where it is no step's
 * @param minutes above 0
 */
public record Lost(Cause cause, String step, double minutes) {
    private static final double LEAST_MINUTES = 0.5;

    public Lost {
        if (!(minutes > 0 && minutes < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("lost minutes must be above 0, not " + minutes);
        }
        if (step.isEmpty() == (cause == Cause.STEP)) {
            throw new IllegalArgumentException("only what a step took has a step, not " + cause + " \"" + step + "\"");
        }
    }

    /** Whether it is half a minute or more: less is told neither of one class nor of many. */
    public boolean counts() {
        return minutes >= LEAST_MINUTES;
    }
}

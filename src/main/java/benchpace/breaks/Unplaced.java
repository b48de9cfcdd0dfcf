package benchpace.breaks;

import benchpace.plan.ActivityId;

/** A class break that finds no time. */
public record Unplaced(ActivityId activity, Reason why) {
    /** Why it finds none. */
    public enum Reason {
        /** It has fewer places than there are seats waiting. */
        TOO_FEW_PLACES,
        /** At no moment is everybody free, with a candle that allows it, before the promised end. */
        NO_COMMON_TIME
    }
}

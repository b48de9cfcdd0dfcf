package benchpace.breaks;

import java.time.Duration;
import java.time.Instant;

import benchpace.plan.ActivityId;

/** What the instructor decided about an activity. The plan follows; a later decision overrules an earlier one. */
public sealed interface BreakDecision {
    ActivityId activity();

    /** When it was decided. */
    Instant at();

    /** It has begun: a class break for everybody who is free; an own-pace activity is open from now on. */
    record Started(ActivityId activity, Instant at) implements BreakDecision { }

    /** It is over: whoever is in it is free, and nobody is sent to it any more. */
    record Ended(ActivityId activity, Instant at) implements BreakDecision { }

    /** It will not happen. */
    record Skipped(ActivityId activity, Instant at) implements BreakDecision { }

    /** It takes longer, for those in it and those to come; several of these add up. */
    record Extended(ActivityId activity, Instant at, Duration by) implements BreakDecision {
        public Extended {
            if (by.isNegative() || by.isZero() || by.compareTo(Duration.ofHours(2)) > 0) {
                throw new IllegalArgumentException("an activity is extended by 1 minute to 2 hours, not " + by);
            }
        }
    }

    /**
     * It is moved to a time. A class break begins then, without the seats that cannot take part; an own-pace
     * activity opens then and not before.
     */
    record MovedTo(ActivityId activity, Instant at, Instant to) implements BreakDecision { }
}

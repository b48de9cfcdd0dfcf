package benchpace.breaks.search;

import benchpace.live.ActivityRun;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.util.stream.IntStream;

/**
 * An activity in whole minutes ("slots").
 *
 * @param length    the typical length, rounded up
 * @param shortest  the least that is worth beginning: half of what may be left and taken up again, else all of it
 * @param longest   what nine seats in ten need at most, rounded up
 * @param notBefore the first slot in which it may begin
 * @param pinned    whether the instructor gave it that slot
 */
record Task(Activity activity, int length, int shortest, int longest, int notBefore, boolean pinned) {
    /** Common practice, no source: a seat may take up refreshments or browsing twice in one wait. */
    static final int TIMES_AGAIN = 2;

    static Task of(Activity activity, ActivityRun run, int notBefore) {
        int length = minutesUp(activity.typical().plus(run.extension()));
        int longest = minutesUp(activity.longest().plus(run.extension()));
        boolean elastic = activity.interruptible() && !activity.kind().onceOnly();
        return new Task(activity, length, elastic ? (length + 1) / 2 : length, longest, notBefore,
                run.move().isPresent());
    }

    /** The lengths that are weighed: all, half and what is between of what may be cut short. */
    int[] lengths() {
        return IntStream.of(length, (length + shortest) / 2, shortest).distinct().toArray();
    }

    int places() {
        return activity.places();
    }

    int uses() {
        return activity.kind().onceOnly() ? 1 : TIMES_AGAIN;
    }

    /** Common practice, no source: every candle gets its label and every place is cleaned; the rest is a treat. */
    boolean expected() {
        return activity.kind() == ActivityKind.LABELS || isCleanUp();
    }

    boolean isCleanUp() {
        return activity.kind() == ActivityKind.CLEAN_UP;
    }

    boolean needsClearTable() {
        return activity.needs().contains(Activity.Need.TABLE_CLEAR);
    }

    /**
     * The slots an uninterruptible activity must have before the earliest likely ready moment; none are asked of what
     * may be left at any time.
     */
    int mustHave() {
        return activity.interruptible() ? 0 : longest;
    }

    static int minutesUp(Duration length) {
        return (int) ((length.getSeconds() + 59) / 60);
    }
}

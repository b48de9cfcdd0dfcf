package benchpace.history;

import java.time.Duration;

/** Whether a class was over when it had been promised. */
public enum Punctuality {
    ON_TIME, LATE;

    /** Nobody calls it late within so much; from judgement. */
    public static final Duration GRACE = Duration.ofMinutes(5);

    /** @param lateMinutes as they are told: whole, by the clock on the wall; below 0 if sooner */
    static Punctuality of(int lateMinutes) {
        return lateMinutes > GRACE.toMinutes() ? LATE : ON_TIME;
    }
}

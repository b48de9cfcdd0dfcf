package benchpace.history;

import java.time.Duration;
import java.time.Instant;

/** Whether a class was over when it had been promised. */
public enum Punctuality {
    ON_TIME, LATE;

    /** Nobody calls it late within so much; from judgement. */
    public static final Duration GRACE = Duration.ofMinutes(5);

    public static Punctuality of(Instant promised, Instant ended) {
        return ended.isAfter(promised.plus(GRACE)) ? LATE : ON_TIME;
    }
}

package benchpace.words;

import benchpace.cure.room.MinuteRange;
import java.time.Duration;

/** How long a candle may take on paper, before it was poured. */
public final class RangeWords {
    private RangeWords() { }

    /** "45 min to 1 h 10 min, likely 55 min". */
    public static String of(MinuteRange range) {
        return minutes(range.p10()) + " to " + minutes(range.p90()) + ", likely " + minutes(range.p50());
    }

    /** "1 h 10 min", to the nearest minute. */
    public static String minutes(double minutes) {
        return Double.isInfinite(minutes) ? "more than a day" : Phrases.length(Duration.ofMinutes(Math.round(minutes)));
    }
}

package benchpace.words.prep;

import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.Timetable;
import benchpace.words.EveningWords;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Says when the steps of a simulated evening end: by the clock for a class, from the beginning on for a plan. */
public final class TimetableWords {
    /** What the columns of times mean. */
    public static final String COLUMNS = "Half of the evenings are through with a step by the first time; the range "
            + "holds on eight evenings in ten. Everybody is taken to be there at the beginning and to stay.";

    private TimetableWords() { }

    /** "Done by 20:15: 72 in 100, give or take 1." @param starts empty for a plan without a date */
    public static String promise(Timetable timetable, Optional<Instant> starts, Times times) {
        return starts.map(s -> "Done by " + times.clock(after(s, timetable.promisedMinutes())) + ": "
                + EveningWords.chance(timetable.onTime()) + ".").orElseGet(() -> EveningWords.onTime(timetable));
    }

    /** "18:42", or "0:42" after the beginning. */
    public static String usually(Quantiles when, Optional<Instant> starts, Times times) {
        return at(when.p50(), starts, times);
    }

    /** "18:38 to 18:50". */
    public static String range(Quantiles when, Optional<Instant> starts, Times times) {
        String early = at(when.p10(), starts, times);
        String late = at(when.p90(), starts, times);
        return early.equals(late) ? early : early + " to " + late;
    }

    private static String at(double minutes, Optional<Instant> starts, Times times) {
        return starts.map(s -> times.clock(after(s, minutes))).orElseGet(() -> minutes(minutes));
    }

    private static Instant after(Instant start, double minutes) {
        return start.plus(Duration.ofSeconds(Math.round(minutes * 60)));
    }

    /** "1:05": hours and minutes from the beginning. */
    private static String minutes(double minutes) {
        long whole = Math.round(minutes);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }
}

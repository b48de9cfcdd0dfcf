package benchpace.words.prep;

import benchpace.prep.evening.Chance;
import benchpace.prep.evening.CureBasis;
import benchpace.prep.evening.Quantiles;
import benchpace.prep.evening.Timetable;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** Says when things should happen on an evening that has not been, and how likely the promise is kept. */
public final class TimetableWords {
    private TimetableWords() { }

    /** "Done by 20:15 on 72 of 100 such evenings, give or take 1." @param starts empty for a plan without a date */
    public static String promise(Timetable timetable, Optional<Instant> starts, Times times) {
        return "Done " + starts.map(s -> "by " + times.clock(after(s, timetable.promisedMinutes())))
                .orElse("within " + minutes(timetable.promisedMinutes())) + " on " + chance(timetable.onTime()) + ".";
    }

    /** "72 of 100 such evenings, give or take 1": the standard error of a count of evenings. */
    public static String chance(Chance chance) {
        long error = (long) Math.ceil(100 * chance.standardError() - 1e-9);
        return Math.round(100 * chance.share()) + " of 100 such evenings" + (error > 0 ? ", give or take " + error : "");
    }

    /** "18:42", or "0:42" after the beginning. */
    public static String usually(Quantiles when, Optional<Instant> starts, Times times) {
        return at(when.p50(), starts, times);
    }

    /** "18:38 to 18:50": in 80 of 100 evenings it is then. */
    public static String range(Quantiles when, Optional<Instant> starts, Times times) {
        String early = at(when.p10(), starts, times);
        String late = at(when.p90(), starts, times);
        return early.equals(late) ? early : early + " to " + late;
    }

    /** What it rests on, and what is assumed. */
    public static String assumed(Timetable timetable) {
        return "Counted on " + timetable.evenings() + " simulated evenings, by the pace and the cure that the table "
                + "itself goes by. It is assumed that every guest is there at the beginning and stays, that led steps "
                + "are opened about when everybody is through, and " + cure(timetable.cure()) + ". The range holds on 80 "
                + "of 100 evenings.";
    }

    private static String cure(CureBasis basis) {
        return switch (basis) {
            case COMPUTED -> "that candles set as computed from vessel, wax and room";
            case PLANNED -> "that candles set in the time that the plan says";
            case NONE -> "that nothing is poured";
        };
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

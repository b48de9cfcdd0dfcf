package benchpace.words;

import benchpace.prep.evening.Chance;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is next to do for a class that has not begun, as its prep page and the start page say it. */
public final class NextWords {
    private NextWords() { }

    /**
     * "switch the melter on at 16:10"; for the middle of a sentence.
     *
     * @param melter its name, if the class uses more than one
     */
    public static String switchOn(Optional<String> melter, Instant at, Instant now, Times times) {
        String the = melter.orElse("the melter");
        String when = times.isDayOf(at, now) ? "at " + times.clock(at) : "on " + times.day(at);
        return at.isAfter(now) ? "switch " + the + " on " + when
                : the + " should be on since " + (times.isDayOf(at, now) ? times.clock(at) : times.day(at));
    }

    /** "Switch it on at 16:10.", seen from the class. */
    public static String on(Instant at, Instant start, Times times) {
        return "Switch it on " + (times.isDayOf(at, start) ? "at " + times.clock(at) : "on " + times.day(at)) + ".";
    }

    /** "switch the melter on 2 h 20 min before the beginning", for a plan without a date. */
    public static String switchOnBefore(Optional<String> melter, double minutesBefore) {
        return "switch " + melter.orElse("the melter") + " on " + PrepFigures.minutes(minutesBefore)
                + " before the beginning";
    }

    /**
     * "3 things to buy", "2 things to put right", "done in time: 72 in 100, give or take 1"; in the order of
     * their weight.
     *
     * @param toBuy  how many are not bought yet
     * @param wrong  how many limits are passed
     * @param chance of being done in time, if that is known
     */
    public static List<String> rest(int toBuy, int wrong, Optional<Chance> chance) {
        List<String> rest = new ArrayList<>();
        if (wrong > 0) {
            rest.add(things(wrong) + " to put right");
        }
        if (toBuy > 0) {
            rest.add(things(toBuy) + " to buy");
        }
        chance.ifPresent(odds -> rest.add("done in time: " + EveningWords.chance(odds)));
        return rest;
    }

    private static String things(int count) {
        return count == 1 ? "1 thing" : count + " things";
    }
}
